import { angleOrder } from './angles-at-strokes.ts'
import type { ResponseGroup } from './response-group.ts'

/**
 * Adds what inputs do to the angles of a group, by its second-order response and what moves have taught.
 *
 * @param x inputs of the whole space
 * @param shifts rad, [wheel · angles + angle]; added to
 * @param by room for one number per input
 * @param slope when given: filled with rad per input, [angle · inputs + input]
 * @source own derivation: docs/methods/moves.md
 */
export function groupChanges(
  { wheel, inputs, signs, surface, taught }: ResponseGroup,
  x: Float64Array,
  shifts: Float64Array,
  by: Float64Array,
  slope?: Float64Array,
): void {
  const { at, slope: straight, bend, value } = surface
  const n = at.length
  const first = wheel * angleOrder.length
  for (let i = 0; i < n; i++) by[i] = signs[i]! * x[inputs[i]!]! - at[i]!
  for (let a = 0; a < value.length; a++) {
    let change = 0
    for (let i = 0; i < n; i++) {
      const row = a * n + i
      let bent = 0
      for (let j = 0; j < n; j++) bent += bend[row * n + j]! * by[j]!
      const here = straight[row]! + taught[row]!
      if (slope) slope[row] = signs[i]! * (here + bent)
      change += (here + bent / 2) * by[i]!
    }
    shifts[first + a]! += change
  }
}
