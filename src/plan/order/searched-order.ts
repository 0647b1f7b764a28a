import { seededRandom } from '../../measure/index.ts'
import { exchanger } from './exchanger.ts'
import { greedyOrder } from './greedy-order.ts'
import type { Instance } from './instance.ts'
import { orderCost } from './order-cost.ts'

/** A search for good orders that can be asked for more. */
export interface Searched {
  /** The cheapest so far. */
  readonly order: () => Int32Array
  readonly cost: () => number
  /** This many more shakes, each followed by exchanges. @returns whether a cheaper order was found */
  readonly more: (shakes: number) => boolean
  /** Takes an order found elsewhere, and improves it. */
  readonly offer: (order: ArrayLike<number>) => void
}

const restartAfter = 400

/** Greedy order, exchanges, then shakes and exchanges; from time to time anew from a blurred greedy order or the best. */
export function searchedOrder(inst: Instance, seed: number): Searched {
  const { size } = inst
  const { improve, shake } = exchanger(inst)
  const random = seededRandom(seed).uniform
  const best = new Int32Array(size + 2)
  const here = new Int32Array(size + 2)
  const trial = new Int32Array(size + 2)
  best[size + 1] = size + 1
  here[size + 1] = size + 1
  let leastCost = Number.POSITIVE_INFINITY
  let hereCost = Number.POSITIVE_INFINITY
  let since = 0
  const actions = (places: Int32Array) => places.subarray(1, size + 1).map((k) => k - 1)
  const costOf = (places: Int32Array) => orderCost(inst, actions(places))

  function begin(order: ArrayLike<number>): void {
    for (let k = 0; k < size; k++) here[k + 1] = order[k]! + 1
    if (size > 1) improve(here)
    hereCost = costOf(here)
    since = 0
    keep()
  }
  function keep(): boolean {
    if (leastCost - hereCost <= 1e-9 * hereCost) return false
    best.set(here)
    leastCost = costOf(here)
    return true
  }

  function more(shakes: number): boolean {
    if (size < 3) return false
    let found = false
    for (let k = 0; k < shakes; k++) {
      if (since++ > restartAfter) {
        if (random() < 0.5) begin(greedyOrder(inst, () => 1 + random() * 2))
        else begin(actions(best))
      }
      trial.set(here)
      let change = shake(trial, random)
      if (random() < 0.5) change += shake(trial, random)
      change -= improve(trial)
      // A little dearer is taken now and then, so that the search moves on.
      const allowed = random() < 0.1 ? 0.002 * hereCost : 0
      if (change <= allowed) {
        if (change < -1e-9) since = 0
        here.set(trial)
        hereCost += change
        if (keep()) found = true
      }
    }
    return found
  }

  begin(greedyOrder(inst))
  return { order: () => actions(best), cost: () => leastCost, more, offer: begin }
}
