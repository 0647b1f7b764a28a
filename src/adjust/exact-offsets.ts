import { angleChanges } from './angle-changes.ts'
import { angleOrder, anglesAtStrokes } from './angles-at-strokes.ts'
import type { SearchSpace } from './search-space.ts'

/**
 * What exact poses add to the polynomial at these strokes: added to it, changes are exact there (plus what
 * recorded moves have taught).
 *
 * @returns rad, [wheel · angles + angle]
 * @source own derivation: docs/methods/moves.md
 */
export function exactOffsets(space: SearchSpace, strokes: Float64Array): Float64Array {
  const offsets = new Float64Array(angleOrder.length * space.wheels.length)
  space.wheels.forEach((wheel, w) => {
    const [start, end] = [space.starts[w]!, space.starts[w + 1]!]
    const own = strokes.subarray(start, end)
    const surface = space.surfaces[w]!
    if (own.every((stroke, i) => stroke === surface.at[i])) return
    const exact = anglesAtStrokes(wheel, own)
    const { change } = angleChanges(space, w, strokes)
    const taught = space.taught[w]!
    for (let a = 0; a < angleOrder.length; a++) {
      let by = exact[a]! - surface.value[a]! - change[a]!
      for (let i = 0; i < own.length; i++) by += taught[a * own.length + i]! * (own[i]! - surface.at[i]!)
      offsets[w * angleOrder.length + a] = by
    }
  })
  return offsets
}
