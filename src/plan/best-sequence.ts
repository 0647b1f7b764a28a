import type { Action } from './action.ts'
import { changeMinutes } from './change-minutes.ts'
import { type BestOrder, bestOrder, type OrderEffort } from './order/best-order.ts'
import type { State } from './state.ts'
import { type Wait, waitsBetween } from './waits-between.ts'

/** The cheapest order of some actions, and what waits for what in it. @source definition */
export interface BestSequence {
  readonly actions: readonly Action[]
  /** By places in `actions`. */
  readonly waits: readonly Wait[]
  /** Minutes of changing tool, place, side and axle. */
  readonly minutes: number
  readonly bound: number
  readonly proven: boolean
  readonly endedBy: BestOrder['endedBy']
}

/**
 * The cheapest order of actions that keeps what waits for what, from one order that works.
 *
 * @param working an order that works
 * @param from the state before it
 * @source own derivation: docs/methods/plan.md
 */
export function bestSequence(
  working: readonly Action[],
  { from = {}, effort = {} }: { readonly from?: State; readonly effort?: OrderEffort } = {},
): BestSequence {
  const size = working.length
  const waits = waitsBetween(working, from)
  const cost = new Float64Array(size * size)
  for (let i = 0; i < size; i++)
    for (let j = 0; j < size; j++) {
      const { tool, place, side, axle } = changeMinutes(working[i]!, working[j]!)
      cost[size * i + j] = tool + place + side + axle
    }
  const best = bestOrder(
    {
      size,
      cost,
      before: waits.map(({ first, next }) => [first, next] as const),
      names: working.map(({ id }) => id),
    },
    effort,
  )
  const placeOf = new Array<number>(size)
  best.order.forEach((was, place) => {
    placeOf[was] = place
  })
  return {
    actions: best.order.map((was) => working[was]!),
    waits: waits.map((wait) => ({ ...wait, first: placeOf[wait.first]!, next: placeOf[wait.next]! })),
    minutes: best.cost,
    bound: best.lowerBound,
    proven: best.proven,
    endedBy: best.endedBy,
  }
}
