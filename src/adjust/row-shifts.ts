import { angleOrder } from './angles-at-strokes.ts'
import type { SearchSpace } from './search-space.ts'

/**
 * What strokes do to each row: `rowChanges` without the slopes, for the many calls that need only this.
 *
 * @returns rad per row
 * @source own derivation: docs/methods/moves.md
 */
export function rowShifts(space: SearchSpace, strokes: Float64Array, offsets: Float64Array): Float64Array {
  const angles = angleOrder.length
  const shifts = Float64Array.from(offsets)
  for (let w = 0; w < space.surfaces.length; w++) {
    const start = space.starts[w]!
    const { at, slope, bend } = space.surfaces[w]!
    const taught = space.taught[w]!
    const n = at.length
    for (let i = 0; i < n; i++) {
      const by = strokes[start + i]! - at[i]!
      if (by === 0) continue
      for (let a = 0; a < angles; a++) {
        const row = a * n + i
        let bent = 0
        for (let j = 0; j < n; j++) bent += bend[row * n + j]! * (strokes[start + j]! - at[j]!)
        shifts[w * angles + a]! += (slope[row]! + taught[row]! + bent / 2) * by
      }
    }
  }
  const out = new Float64Array(space.rows.length)
  for (let i = 0; i < out.length; i++)
    for (const { wheel, angle, by } of space.rows[i]!.terms) out[i]! += by * shifts[wheel * angles + angle]!
  return out
}
