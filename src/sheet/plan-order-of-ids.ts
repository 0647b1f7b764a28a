import type { Action } from '../plan/index.ts'

/**
 * The actions that an order made by hand means, and what is wrong with it as a list: ids that the plan has not, ids
 * that stand twice (the first place counts), actions that it leaves out.
 *
 * @source own choice
 */
export function orderOfIds(
  actions: Readonly<Record<string, Action>>,
  order: readonly string[],
): { readonly actions: readonly Action[]; readonly leftOut: number; readonly troubles: readonly string[] } {
  const troubles: string[] = []
  const found = new Set<Action>()
  for (const [at, id] of order.entries()) {
    const action = Object.hasOwn(actions, id) ? actions[id] : undefined
    if (!action)
      troubles.push(
        `Place ${at + 1} of the order: this plan has no action “${id}”. It was passed over; take the ids as the plan prints them.`,
      )
    else if (found.has(action))
      troubles.push(
        `Place ${at + 1} of the order: “${action.words}” stands there a second time. Only the first counts; take one out.`,
      )
    else found.add(action)
  }
  const missing = Object.values(actions).filter((action) => !found.has(action))
  for (const action of missing)
    troubles.push(`The order leaves out “${action.words}”. Put “${action.id}” back where it belongs.`)
  return { actions: [...found], leftOut: missing.length, troubles }
}
