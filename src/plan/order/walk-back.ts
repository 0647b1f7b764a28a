import type { Instance } from './instance.ts'
import { forbidden, type Relaxation } from './relaxation.ts'

/** The cheapest walk. */
export interface Walk {
  /** Its cost less the prices paid on the way, plus all prices: a bound for every order. */
  readonly bound: number
  readonly actions: Int32Array
  /** Work done: steps looked at. */
  readonly looked: number
}

/**
 * Fills `rest` and `next` of a relaxation from the last place to the first.
 *
 * @param price what a walk is paid for each coming to an action
 * @returns the cheapest walk, or null where none exists
 */
export function walkBack(inst: Instance, relaxed: Relaxation, price: Float64Array): Walk | null {
  const { size, cost, start, end, earlierCount, laterCount } = inst
  const { offset, rest, next, remember } = relaxed
  const { first, from, table } = relaxed.arcs
  const states = offset[size]!
  rest.fill(Number.POSITIVE_INFINITY)
  for (let i = 0; i < size; i++) if (laterCount[i] === 0) rest[(size - 1) * states + offset[i]!] = end[i]!
  const most = Math.max(...relaxed.near.map((all) => 1 << all.length))
  const sets = new Int32Array(most)
  const values = new Float64Array(most)
  let looked = 0
  for (let place = size - 1; place > 0; place--) {
    const here = place * states
    const before = here - states
    for (let j = 0; j < size; j++) {
      if (place < earlierCount[j]! || place > size - 1 - laterCount[j]!) continue
      const base = offset[j]!
      const count = offset[j + 1]! - base
      let live = 0
      for (let set = 0; set < count; set++) {
        const value = rest[here + base + set]!
        if (value < Number.POSITIVE_INFINITY) {
          sets[live] = set
          values[live++] = value
        }
      }
      if (live === 0) continue
      for (let k = first[j]!; k < first[j + 1]!; k++) {
        const i = from[k]!
        if (place - 1 < earlierCount[i]! || place - 1 > size - 1 - laterCount[i]!) continue
        const w = cost[i * size + j]! - price[j]!
        const at = table[k]!
        const to = before + offset[i]!
        looked += live
        for (let s = 0; s < live; s++) {
          const set = remember[at + sets[s]!]!
          if (set === forbidden) continue
          const value = values[s]! + w
          if (value < rest[to + set]!) {
            rest[to + set] = value
            next[to + set] = base + sets[s]!
          }
        }
      }
    }
  }
  let state = -1
  let least = Number.POSITIVE_INFINITY
  let total = 0
  for (let i = 0; i < size; i++) {
    total += price[i]!
    if (earlierCount[i] !== 0) continue
    for (let s = offset[i]!; s < offset[i + 1]!; s++) {
      if (((s - offset[i]!) & relaxed.always[i]!) !== relaxed.always[i]!) continue
      const value = rest[s]! + start[i]! - price[i]!
      if (value < least) {
        least = value
        state = s
      }
    }
  }
  if (state < 0) return null
  const actions = new Int32Array(size)
  const owner = new Int32Array(states)
  for (let i = 0; i < size; i++) owner.fill(i, offset[i]!, offset[i + 1]!)
  for (let place = 0; place < size; place++) {
    actions[place] = owner[state]!
    state = next[place * states + state]!
  }
  return { bound: least + total, actions, looked }
}
