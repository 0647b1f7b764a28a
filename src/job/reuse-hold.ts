import type { JointCase, ToDo } from './to-do.ts'

/**
 * I8: a fastener that is used once is new before final, and once it has been final it is used.
 *
 * @source own derivation: docs/methods/bolt-book.md
 */
export function reuseHold({ called, required, record }: JointCase): readonly ToDo[] {
  const { final, fastener, usedUp, runUp, started } = record
  const told = final ?? runUp ?? started
  if (required.fastener !== 'new' || fastener === 'new' || !told) return []
  return [
    {
      rule: 'I8',
      holdsAt: 'run up',
      mend: final ? 'begin anew' : 'tighten',
      entries: usedUp === null ? [told.entry] : [usedUp, told.entry],
      sentence:
        fastener === 'used again'
          ? `${called}: the fastener is used once, and it was used again.`
          : usedUp === null
            ? `${called}: the fastener is used once; nobody wrote down that a new one was fitted.`
            : `${called}: the fastener was final once already, so it is used.`,
      remedy: 'Fit a new fastener, tighten it and write down that it is new.',
    },
  ]
}
