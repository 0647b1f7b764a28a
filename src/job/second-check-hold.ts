import type { JointCase, ToDo } from './to-do.ts'

const sign = (hand: string) => hand.trim().toLowerCase()

/**
 * I21: a joint of the red list is looked at once more after everything else of it is done: by another person, or by
 * the same person later, recorded as that. A check that failed holds until it is tightened anew or decided on.
 *
 * @source own derivation: docs/methods/bolt-book.md
 */
export function secondCheckHold({ called, required, record }: JointCase): readonly ToDo[] {
  const { final, pin, checks } = record
  if (!final) return []
  const since = Math.max(final.entry, pin?.entry ?? -1)
  const counts = checks.filter(({ entry }) => entry > since)
  const once = required.pin !== null || required.procedure === 'torque then angle'
  const anew = once ? 'begin anew' : 'tighten'
  const hold = (
    holdsAt: 'run up' | 'final',
    entries: readonly number[],
    sentence: string,
    remedy: string,
  ): readonly ToDo[] => [
    { rule: 'I21', holdsAt, mend: holdsAt === 'final' ? 'look' : anew, entries, sentence, remedy },
  ]
  const failed = counts.find(({ passed }) => !passed)
  if (failed)
    return hold(
      'run up',
      [failed.entry],
      `${called}: the second look did not pass${failed.remark ? `: ${failed.remark}` : ''}.`,
      'Put it right, tighten it again and look at it once more.',
    )
  if (!required.secondCheck) return []
  const last = counts.at(-1)
  if (!last) {
    const stale = checks.at(-1)
    return hold(
      'final',
      stale ? [stale.entry, since] : [final.entry],
      stale
        ? `${called}: the second look (entry ${stale.entry}) came before its last tightening or pin (entry ${since}), so it no longer counts.`
        : `${called}: what can drop a wheel or the steering is looked at a second time, and nobody did.`,
      'Have another person look at it; if you are alone, look at it again later and write it down as that.',
    )
  }
  if (last.by === 'another person' && sign(last.hand) === sign(final.hand))
    return hold(
      'final',
      [final.entry, last.entry],
      `${called}: the second look is said to be another person’s, but both hands are “${final.hand}”.`,
      'Write it down as the same person’s later look, or have another person look.',
    )
  if (required.procedure === 'torque then angle' && last.how === 'pulled again')
    return hold(
      'final',
      [last.entry],
      `${called}: tightened by angle; pulling it again proves nothing and turns it further.`,
      'Check it by its mark and its record.',
    )
  return []
}
