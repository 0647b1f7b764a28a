import { canBeTold } from './can-be-told.ts'
import { leastSure } from './candidate.ts'
import type { FewestTask } from './fewest-task.ts'
import { isToeRow } from './is-toe-row.ts'
import { isForToe } from './job-of.ts'
import { jobOfAxis } from './job-of-axis.ts'

/**
 * The axes that may be touched at all. Toe is mended by toe adjusters where the wheel has one: an adjuster of
 * camber or caster is there for a reading of those that is not proven inside as it stands and can be brought
 * inside, never for toe alone.
 *
 * @returns places of axes
 * @source common practice, no source (an adjuster is used for its own angle; toe follows)
 */
export function axesToTouch({ space, judge, judged, offsets, threshold }: FewestTask): readonly number[] {
  const strokes = Float64Array.from(space.axes, (axis) => axis.baseStroke)
  const still = { settings: space.axes.map((axis) => axis.base), strokes, cost: 0 }
  const jobs = space.axes.map((_, j) => jobOfAxis(space, j))
  const open = judged.filter((i) => {
    return (
      !isToeRow(space.rows[i]!.name) && leastSure(space, judge, still, { judged: [i], offsets }) < threshold
    )
  })
  return [...space.axes.keys()].filter((j) => {
    if (!canBeTold(space.axes[j]!)) return false
    const fellows = space.groups.filter(({ axes }) => axes.includes(j)).flatMap(({ axes }) => axes)
    const hasToeAdjuster = fellows.some((k) => isForToe(jobs[k]!))
    return isForToe(jobs[j]!) || !hasToeAdjuster || open.some((i) => space.touches[i * space.axes.length + j])
  })
}
