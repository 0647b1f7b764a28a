import type { JointCase, ToDo } from './to-do.ts'

/**
 * I9: a castle nut is closed when its pin is in, after the last tightening, new where it must be, its legs bent.
 *
 * @source own derivation: docs/methods/bolt-book.md
 */
export function pinHold({ called, required, record }: JointCase): readonly ToDo[] {
  const { final, pin } = record
  if (!final || required.pin === null) return []
  const hold = (entries: readonly number[], sentence: string, remedy: string): readonly ToDo[] => [
    { rule: 'I9', holdsAt: 'run up', mend: 'pin', entries, sentence, remedy },
  ]
  if (!pin)
    return hold(
      [final.entry],
      `${called}: no pin on record; the nut can come off.`,
      'Fit the pin: forward to the next slot if none lines up, never back, never past the high figure; bend its legs and write it down.',
    )
  if (pin.entry < final.entry)
    return hold(
      [pin.entry, final.entry],
      `${called}: tightened again after its pin was recorded.`,
      'Fit a new pin and write it down.',
    )
  if (required.pin === 'new' && pin.pin !== 'new')
    return hold(
      [pin.entry],
      `${called}: its pin was used again, and breaks where it was bent.`,
      'Fit a new pin and write it down.',
    )
  if (!pin.legsBent)
    return hold([pin.entry], `${called}: the legs of its pin are not bent.`, 'Bend them and write it down.')
  return []
}
