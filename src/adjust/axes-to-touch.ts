import { leastSure } from './candidate.ts'
import type { FewestTask } from './fewest-task.ts'
import { jobOfAxis } from './job-of-axis.ts'
import { rowChanges } from './row-changes.ts'

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
  const { slope } = rowChanges(space, strokes, offsets)
  const jobs = space.axes.map((axis) => jobOfAxis(space, axis))
  const open = judged.filter((i) => {
    const { name } = space.rows[i]!
    const isToe = name.includes('toe') || name === 'thrust'
    return !isToe && leastSure(space, judge, still, { judged: [i], offsets }) < threshold
  })
  return [...space.axes.keys()].filter((j) => {
    const { wheel } = space.axes[j]!
    const hasToeAdjuster = space.axes.some((other, k) => other.wheel === wheel && jobs[k] === 'toe')
    return jobs[j] === 'toe' || !hasToeAdjuster || open.some((i) => slope[i * space.axes.length + j] !== 0)
  })
}
