import { angleOrder } from './angles-at-strokes.ts'
import type { SearchSpace } from './search-space.ts'

/**
 * What strokes do to the angles of one wheel, by its second-order response and what moves have taught.
 *
 * @param w which wheel
 * @param strokes m, one per axis of the whole space
 * @returns `change` rad in `angleOrder`; `slope` rad/m, [angle · adjusters + adjuster]
 * @source own derivation: docs/methods/moves.md
 */
export function angleChanges(
  space: SearchSpace,
  w: number,
  strokes: Float64Array,
): { change: Float64Array; slope: Float64Array } {
  const start = space.starts[w]!
  const surface = space.surfaces[w]!
  const taught = space.taught[w]!
  const n = surface.at.length
  const change = new Float64Array(angleOrder.length)
  const slope = new Float64Array(angleOrder.length * n)
  for (let a = 0; a < angleOrder.length; a++)
    for (let i = 0; i < n; i++) {
      let bent = 0
      for (let j = 0; j < n; j++)
        bent += surface.bend[(a * n + i) * n + j]! * (strokes[start + j]! - surface.at[j]!)
      const straight = surface.slope[a * n + i]! + taught[a * n + i]!
      slope[a * n + i] = straight + bent
      change[a]! += (straight + bent / 2) * (strokes[start + i]! - surface.at[i]!)
    }
  return { change, slope }
}
