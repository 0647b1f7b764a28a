import type { Footing } from './ascent.ts'
import type { Instance } from './instance.ts'
import { type Relaxation, relaxation } from './relaxation.ts'
import { walkBack } from './walk-back.ts'

/** What is still to come, at the least, seen from what is done: a table over what of `near` is done. */
export interface LaterCosts {
  readonly near: Relaxation['near']
  readonly offset: Int32Array
  /** `least[place · states + offset[i] + set]`: cost still to come, less the prices of all actions not yet done. */
  readonly least: Float64Array
  readonly price: Float64Array
  readonly allPrices: number
}

/** Walks back with these prices, and takes for each set of done actions the least over what may then come later. */
export function laterCosts(inst: Instance, { near, tracked, price }: Footing): LaterCosts {
  const relaxed = relaxation(inst, near, tracked)
  walkBack(inst, relaxed, price)
  const { offset, rest } = relaxed
  const states = offset[inst.size]!
  for (let place = 0; place < inst.size; place++)
    for (let i = 0; i < inst.size; i++) {
      const at = place * states + offset[i]!
      const count = offset[i + 1]! - offset[i]!
      // Least over all subsets, bit by bit; then read by complement: what is not done may come later.
      for (let bit = 1; bit < count; bit <<= 1) {
        if (bit & relaxed.always[i]!) continue
        for (let set = 0; set < count; set++)
          if (set & bit) {
            const without = rest[at + (set ^ bit)]!
            if (without < rest[at + set]!) rest[at + set] = without
          }
      }
      for (let set = 0, other = count - 1; set < other; set++, other--) {
        const held = rest[at + set]!
        rest[at + set] = rest[at + other]!
        rest[at + other] = held
      }
    }
  let allPrices = 0
  for (const p of price) allPrices += p
  return { near, offset, least: rest, price, allPrices }
}
