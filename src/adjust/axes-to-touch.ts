import { canBeTold } from './can-be-told.ts'
import { leastSure } from './candidate.ts'
import type { FewestTask } from './fewest-task.ts'
import { isToeRow } from './is-toe-row.ts'
import { isForToe } from './job-of.ts'

/**
 * The axes that may be touched at all. Toe is mended by toe adjusters where the wheel has one: an adjuster of
 * camber or caster is there for a reading of those that is not proven inside as it stands and can be brought
 * inside, never for toe alone. A rear adjuster is there for rear readings and the thrust line: front toe is brought to
 * that line in front, where there is something to do it with.
 *
 * @returns places of axes
 * @source common practice, no source (an adjuster is used for its own angle; toe follows; rear before front)
 */
export function axesToTouch({ space, judge, judged, offsets, threshold }: FewestTask): readonly number[] {
  const { axes, jobs, rows, ends, touches } = space
  const strokes = Float64Array.from(axes, (axis) => axis.baseStroke)
  const still = { settings: axes.map((axis) => axis.base), strokes, cost: 0 }
  const open = judged.filter((i) => leastSure(space, judge, still, { judged: [i], offsets }) < threshold)
  const leans = open.filter((i) => !isToeRow(rows[i]!.name))
  const behind = open.some((i) => rows[i]!.terms.every(({ wheel }) => ends[wheel >> 1] === 'rear'))
  const toeInFront = axes.some((axis, j) => ends[axis.axle] === 'front' && isForToe(jobs[j]!))
  return [...axes.keys()].filter((j) => {
    const axis = axes[j]!
    if (!canBeTold(axis)) return false
    if (ends[axis.axle] === 'rear' && toeInFront && !behind) return false
    const fellows = space.groups.filter((group) => group.axes.includes(j)).flatMap((group) => group.axes)
    const hasToeAdjuster = fellows.some((k) => isForToe(jobs[k]!))
    return isForToe(jobs[j]!) || !hasToeAdjuster || leans.some((i) => touches[i * axes.length + j])
  })
}
