import type { Action } from './action.ts'
import { keys } from './keys.ts'

/**
 * The most jacks that an order has in use at the same time.
 *
 * @source definition
 */
export function jacksAtOnce(actions: readonly Action[]): number {
  let now = 0
  let most = 0
  for (const { effects } of actions) {
    if (effects[keys.jack] === 'in use') now++
    else if (effects[keys.jack] === 'free') now--
    most = Math.max(most, now)
  }
  return most
}
