import type { Spec } from '../spec/index.ts'
import type { JointCase, ToDo } from './to-do.ts'

/**
 * I22: a wheel that was off needs an appointment to be tightened again. It holds nothing back; it is still due.
 *
 * @param spec for the distance that the workshop's sheet says
 * @source own derivation: docs/methods/bolt-book.md
 */
export function reTightenHold(
  { kind, called, wheels, record, state }: JointCase,
  spec: Spec | null,
): readonly ToDo[] {
  const { final } = record
  if (kind !== 'wheel nuts' || !final) return []
  const agreed = state.followUps.some(
    (one) =>
      one.what === 'wheel nuts again' && wheels.every((wheel) => (one.wheels ?? wheels).includes(wheel)),
  )
  if (agreed) return []
  const after = spec?.reTighten?.find(({ what }) => /wheel/i.test(what))?.after.text
  return [
    {
      rule: 'I22',
      holdsAt: null,
      mend: 'elsewhere',
      entries: [final.entry],
      sentence: `${called}: a wheel settles on its first distance, so they are tightened again${after ? ` after ${after}` : ''}; no appointment is recorded.`,
      remedy:
        'Agree a day or a distance, hand a card to whoever drives the vehicle, and write the follow-up down.',
    },
  ]
}
