import type { Action } from './action.ts'
import type { Assembly } from './assembly.ts'
import { type BestSequence, bestSequence } from './best-sequence.ts'
import { changeMinutes } from './change-minutes.ts'
import type { Goal } from './goal.ts'
import { judgeOrder } from './judge-order.ts'
import type { OrderEffort } from './order/best-order.ts'
import type { State } from './state.ts'
import { waitsBetween } from './waits-between.ts'

/**
 * The cheapest order of some actions, done in the head once more: where it breaks a rule that no wait tells, the order
 * as it was built stands instead, and is not called proven.
 *
 * @param built an order that works
 * @param from the state before it
 * @returns null where that breaks a rule as well: such an order is never given
 * @source own derivation: docs/methods/plan.md
 */
export function soundSequence(
  assembly: Assembly,
  goal: Goal,
  built: readonly Action[],
  { from, effort }: { readonly from: State; readonly effort: OrderEffort },
): BestSequence | null {
  const isSound = (actions: readonly Action[]) =>
    judgeOrder(assembly, goal, actions, { from }).faults.length === 0
  const best = bestSequence(built, { from, effort })
  if (isSound(best.actions)) return best
  if (!isSound(built)) return null
  const minutes = built.slice(1).reduce((sum, action, i) => {
    const { tool, place, side, axle } = changeMinutes(built[i]!, action)
    return sum + tool + place + side + axle
  }, 0)
  return { ...best, actions: built, waits: waitsBetween(built, from), minutes, proven: false }
}
