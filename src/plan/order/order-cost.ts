import type { Instance } from './instance.ts'

/** What an order costs from its start to its end. */
export function orderCost({ size, cost, start, end }: Instance, order: ArrayLike<number>): number {
  if (size === 0) return 0
  let sum = start[order[0]!]!
  for (let k = 1; k < size; k++) sum += cost[order[k - 1]! * size + order[k]!]!
  return sum + end[order[size - 1]!]!
}
