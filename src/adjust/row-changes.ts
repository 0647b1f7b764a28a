import { angleChanges } from './angle-changes.ts'
import { angleOrder } from './angles-at-strokes.ts'
import type { SearchSpace } from './search-space.ts'

/**
 * What strokes do to each row, by the wheels' second-order response.
 *
 * @param strokes m, one per axis
 * @param offsets rad, [wheel · angles + angle]: what an exact pose has added to the polynomial
 * @returns `change` rad per row, `slope` rad/m, [row · axes + axis]
 * @source own derivation: docs/methods/moves.md
 */
export function rowChanges(
  space: SearchSpace,
  strokes: Float64Array,
  offsets: Float64Array,
): { change: Float64Array; slope: Float64Array } {
  const count = space.axes.length
  const change = new Float64Array(space.rows.length)
  const slope = new Float64Array(space.rows.length * count)
  const angles = space.surfaces.map((_, w) => angleChanges(space, w, strokes))
  space.rows.forEach((row, i) => {
    for (const { wheel, angle, by } of row.terms) {
      const start = space.starts[wheel]!
      const n = space.starts[wheel + 1]! - start
      const one = angles[wheel]!
      change[i]! += by * (one.change[angle]! + offsets[wheel * angleOrder.length + angle]!)
      for (let j = 0; j < n; j++) slope[i * count + start + j]! += by * one.slope[angle * n + j]!
    }
  })
  return { change, slope }
}
