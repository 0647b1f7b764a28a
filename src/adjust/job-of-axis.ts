import { angleOrder } from './angles-at-strokes.ts'
import type { Axis } from './axis.ts'
import { inputCount } from './inputs-of.ts'
import { type Job, jobOf } from './job-of.ts'
import type { ResponseGroup } from './response-group.ts'

/** What the adjuster of an axis is there for, among the adjusters that move its first wheel. */
export function jobOfAxis(
  { axes, groups }: { readonly axes: readonly Axis[]; readonly groups: readonly ResponseGroup[] },
  j: number,
): Job {
  const group = groups.find((one) => one.axes.includes(j))!
  const n = group.inputs.length
  let column = 0
  for (const k of group.axes) {
    if (k === j) break
    column += inputCount(axes[k]!.adjuster)
  }
  const first =
    axes[j]!.on === 'right' && group.surface.value.length > angleOrder.length ? angleOrder.length : 0
  const slope = angleOrder.map((_, a) => group.surface.slope[(first + a) * n + column]!)
  return jobOf(
    axes[j]!.adjuster,
    slope,
    group.axes.map((k) => axes[k]!.adjuster),
  )
}
