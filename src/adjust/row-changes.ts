import { angleOrder } from './angles-at-strokes.ts'
import { groupChanges } from './group-changes.ts'
import { inputsAt } from './inputs-at.ts'
import type { SearchSpace } from './search-space.ts'

/**
 * What strokes do to each row, by the groups' second-order response.
 *
 * @param strokes m or rad, one per axis
 * @param offsets rad, [wheel · angles + angle]: what an exact pose has added to the polynomial
 * @returns `change` rad per row, `slope` rad per stroke, [row · axes + axis]
 * @source own derivation: docs/methods/moves.md
 */
export function rowChanges(
  space: SearchSpace,
  strokes: Float64Array,
  offsets: Float64Array,
): { change: Float64Array; slope: Float64Array } {
  const { axes, rows, wheels, room, groups } = space
  const { shifts } = room
  shifts.set(offsets)
  const x = inputsAt(space, strokes)
  // rad per stroke, [(wheel · angles + angle) · axes + axis]
  const perAxis = new Float64Array(wheels.length * angleOrder.length * axes.length)
  for (const group of groups) {
    const n = group.inputs.length
    const angles = group.surface.value.length
    const slope = new Float64Array(angles * n)
    groupChanges(group, x, shifts, room.by, slope)
    let k = 0
    for (const j of group.axes) {
      const { adjuster } = axes[j]!
      const sleeve = adjuster.kind === 'offset sleeve' ? adjuster.tilt : null
      for (let a = 0; a < angles; a++) {
        const to = (group.wheel * angleOrder.length + a) * axes.length + j
        perAxis[to] =
          sleeve === null
            ? slope[a * n + k]!
            : sleeve *
              (slope[a * n + k + 1]! * Math.cos(strokes[j]!) - slope[a * n + k]! * Math.sin(strokes[j]!))
      }
      k += sleeve === null ? 1 : 2
    }
  }
  const change = new Float64Array(rows.length)
  const slope = new Float64Array(rows.length * axes.length)
  for (let i = 0; i < rows.length; i++)
    for (const { wheel, angle, by } of rows[i]!.terms) {
      const place = wheel * angleOrder.length + angle
      change[i]! += by * shifts[place]!
      const movers = space.groupOf[wheel]!.axes
      for (let k = 0; k < movers.length; k++) {
        const j = movers[k]!
        slope[i * axes.length + j]! += by * perAxis[place * axes.length + j]!
      }
    }
  return { change, slope }
}
