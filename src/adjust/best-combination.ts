import type { Aim } from './aim.ts'
import { costOfChange, costOfMoving } from './cost-of.ts'
import { rowShifts } from './row-shifts.ts'
import type { SearchSpace } from './search-space.ts'

/**
 * Of one or two strokes for each of some axes the combination of least cost. Steps are small, so what they do to the
 * readings is added up, one after the other; all combinations are gone through so that each differs from the last
 * by one axis.
 *
 * @param at the other axes' strokes; those of `touched` do not count
 * @param choices one or two strokes per touched axis
 * @returns 0 or 1 per touched axis
 * @source Gray's code; own derivation: docs/methods/moves.md
 */
export function bestCombination(
  space: SearchSpace,
  aims: readonly (Aim | null)[],
  offsets: Float64Array,
  {
    at,
    touched,
    choices,
  }: {
    readonly at: Float64Array
    readonly touched: readonly number[]
    readonly choices: readonly (readonly number[])[]
  },
): Uint8Array {
  const strokes = at.slice()
  touched.forEach((j, k) => {
    strokes[j] = choices[k]![0]!
  })
  const change = rowShifts(space, strokes, offsets)
  const open = choices.flatMap((choice, k) => (choice.length > 1 ? [k] : []))
  const deltas = open.map((k) => {
    const j = touched[k]!
    const there = strokes.slice()
    there[j] = choices[k]![1]!
    const shifted = rowShifts(space, there, offsets)
    for (let i = 0; i < shifted.length; i++) shifted[i]! -= change[i]!
    return shifted
  })
  const extra = open.map((k) => {
    const axis = space.axes[touched[k]!]!
    return costOfMoving(axis, choices[k]![1]!) - costOfMoving(axis, choices[k]![0]!)
  })
  const chosen = new Uint8Array(touched.length)
  const trial = new Uint8Array(open.length)
  let moved = 0
  let best = costOfChange(space, aims, change)
  for (let code = 1; code < 2 ** open.length; code++) {
    // the lowest bit that is set says which axis changes over
    const o = 31 - Math.clz32(code & -code)
    const sign = trial[o] === 0 ? 1 : -1
    trial[o] = trial[o] === 0 ? 1 : 0
    moved += sign * extra[o]!
    const delta = deltas[o]!
    for (let i = 0; i < change.length; i++) change[i]! += sign * delta[i]!
    const there = costOfChange(space, aims, change) + moved
    if (there < best) {
      best = there
      for (let p = 0; p < open.length; p++) chosen[open[p]!] = trial[p]!
    }
  }
  return chosen
}
