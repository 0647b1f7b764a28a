import type { Action } from './action.ts'
import { keys } from './keys.ts'

/**
 * The most jacks that an order has in use at the same time.
 *
 * @source definition
 */
export function jacksAtOnce(actions: readonly Pick<Action, 'effects'>[]): number {
  const inUse = new Set<string>()
  let again = 0
  let most = 0
  for (const { effects } of actions)
    for (const [key, value] of Object.entries(effects)) {
      if (!key.startsWith(keys.jack)) continue
      // One key for all corners: taken twice before it is given back, it is two jacks.
      if (value === 'in use' && inUse.has(key)) again++
      else if (value === 'in use') inUse.add(key)
      else if (again > 0) again--
      else inUse.delete(key)
      most = Math.max(most, inUse.size + again)
    }
  return most
}
