import { clearedBy } from './cleared-by.ts'
import type { JointCase, ToDo } from './to-do.ts'
import type { Touched } from './touched-joints.ts'

/**
 * What keeps a joint from being final before anything of its final is looked at: it is open, nobody has recorded
 * how it was closed, it is only run up, something about it is not put right, or a later entry took its final away.
 *
 * @param touched why it must have been opened
 * @source own derivation: docs/methods/bolt-book.md
 */
export function openHold(
  { wheels, joint, called, required, record, state, adjuster }: JointCase,
  touched: Touched | null,
): readonly ToDo[] {
  const { undone, moved, started, runUp, stages, final, fell } = record
  const hold = (rule: ToDo['rule'], entries: readonly number[], sentence: string, remedy: string): ToDo => ({
    rule,
    holdsAt: 'run up',
    mend: rule === 'deviation' ? 'elsewhere' : 'tighten',
    entries,
    sentence,
    remedy,
  })
  const found: ToDo[] = state.deviations
    .filter(
      (deviation) =>
        deviation.joint === joint &&
        (deviation.wheel === undefined || wheels.includes(deviation.wheel)) &&
        clearedBy(state, deviation.entry) === null,
    )
    .map(({ entry, what, remark }) =>
      hold(
        'deviation',
        [entry],
        `${called}: ${what}${remark ? `, ${remark}` : ''}; not put right yet.`,
        'Put it right, and clear the deviation with how it was done.',
      ),
    )
  if (final) return found
  const value =
    required.procedure === 'none'
      ? 'Bring it home, see that it is locked or seated, and write that down.'
      : required.procedure === 'hand snug'
        ? `Make it ${required.said}.`
        : `Tighten it to ${required.said}.`
  if (fell)
    found.push(
      hold(
        'fell',
        [fell.entry, fell.by],
        `${called}: ${fell.was === 'checked' ? 'tightened and checked' : 'made final'} once, and opened again since, so that no longer counts.`,
        `${value} Then record it${required.secondCheck ? ' and have it looked at again' : ''}.`,
      ),
    )
  else if (moved ?? runUp ?? stages.at(-1) ?? started) {
    const last = [moved, runUp, started, ...stages].reduce(
      (most, fact) => Math.max(most, fact?.entry ?? -1),
      -1,
    )
    found.push(
      hold(
        'not final',
        [last],
        adjuster
          ? `${called}: carries an adjuster, so it stays run up until the last move.`
          : `${called}: ${runUp || stages.length > 0 ? 'run up' : 'started'}, not final. Run down is not tight.`,
        adjuster
          ? `After the last move: ${value.toLowerCase().slice(0, 1)}${value.slice(1)} Then read again.`
          : value,
      ),
    )
  } else if (undone)
    found.push(
      hold(
        'not closed',
        [undone.entry],
        `${called}: undone (${undone.to}), and no closing is recorded.`,
        value,
      ),
    )
  else if (touched)
    found.push(
      hold(
        'not closed',
        [touched.entry],
        `${called}: ${touched.sentence}, and no closing is recorded.`,
        `${value} Or write down how it was closed.`,
      ),
    )
  return found
}
