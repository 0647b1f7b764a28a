import { angleOrder } from './angles-at-strokes.ts'
import { groupChanges } from './group-changes.ts'
import { inputsAt } from './inputs-at.ts'
import type { ResponseGroup } from './response-group.ts'
import type { SearchSpace } from './search-space.ts'

/**
 * What exact poses add to the polynomial at these strokes: added to it, changes are exact there (plus what
 * recorded moves have taught).
 *
 * @param known offsets at other strokes: groups that did not move since keep them
 * @returns rad, [wheel · angles + angle]
 * @source own derivation: docs/methods/moves.md
 */
export function exactOffsets(
  space: SearchSpace,
  strokes: Float64Array,
  known?: { readonly strokes: Float64Array; readonly offsets: Float64Array },
): Float64Array {
  const offsets = new Float64Array(angleOrder.length * space.wheels.length)
  const x = inputsAt(space, strokes)
  for (const group of space.groups) {
    const { surface, taught, anglesAt } = group
    const own = Float64Array.from(group.inputs, (i, k) => group.signs[k]! * x[i]!)
    if (own.every((by, i) => by === surface.at[i])) continue
    if (known && group.axes.every((j) => known.strokes[j] === strokes[j])) {
      const first = group.wheel * angleOrder.length
      offsets.set(known.offsets.subarray(first, first + surface.value.length), first)
      continue
    }
    const exact = anglesAt(own)
    const change = changeOf(space, group, x)
    const n = own.length
    for (let a = 0; a < exact.length; a++) {
      const place = group.wheel * angleOrder.length + a
      let by = exact[a]! - surface.value[a]! - change[place]!
      for (let i = 0; i < n; i++) by += taught[a * n + i]! * (own[i]! - surface.at[i]!)
      offsets[place] = by
    }
  }
  return offsets
}

function changeOf({ room }: SearchSpace, group: ResponseGroup, x: Float64Array): Float64Array {
  const shifts = new Float64Array(room.shifts.length)
  groupChanges(group, x, shifts, room.by)
  return shifts
}
