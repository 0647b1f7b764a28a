import { angleOrder } from './angles-at-strokes.ts'
import { groupChanges } from './group-changes.ts'
import { inputsAt } from './inputs-at.ts'
import type { SearchSpace } from './search-space.ts'

/**
 * What strokes do to each row: `rowChanges` without the slopes, for the many calls that need only this.
 *
 * @returns rad per row
 * @source own derivation: docs/methods/moves.md
 */
export function rowShifts(space: SearchSpace, strokes: Float64Array, offsets: Float64Array): Float64Array {
  const { shifts, by: room } = space.room
  shifts.set(offsets)
  const x = inputsAt(space, strokes)
  for (const group of space.groups) groupChanges(group, x, shifts, room)
  const out = new Float64Array(space.rows.length)
  for (let i = 0; i < out.length; i++)
    for (const { wheel, angle, by } of space.rows[i]!.terms)
      out[i]! += by * shifts[wheel * angleOrder.length + angle]!
  return out
}
