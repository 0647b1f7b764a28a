import type { Axis } from './axis.ts'
import { jobOf } from './job-of.ts'
import type { SearchSpace } from './search-space.ts'

/** What the adjuster of an axis is there for, among the adjusters of its wheel. */
export function jobOfAxis(space: SearchSpace, axis: Axis): ReturnType<typeof jobOf> {
  const fellows = space.axes.filter((other) => other.wheel === axis.wheel).map((other) => other.adjuster)
  return jobOf(axis.adjuster, space.surfaces[axis.wheel]!, axis.column, fellows)
}
