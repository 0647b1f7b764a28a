import type { OrderProblem } from '../../../../src/plan/index.ts'

/** The least cost over all orders that keep the pairs, each one walked through. ∞ when there is none. */
export function leastOfEveryOrder({ size, cost, start, end, before }: OrderProblem): number {
  const done = new Set<number>()
  let least = Number.POSITIVE_INFINITY
  const walk = (last: number, sum: number): void => {
    if (done.size === size) {
      least = Math.min(least, sum + (last < 0 ? 0 : (end?.[last] ?? 0)))
      return
    }
    for (let j = 0; j < size; j++) {
      if (done.has(j) || before.some(([a, b]) => b === j && !done.has(a))) continue
      done.add(j)
      walk(j, sum + (last < 0 ? (start?.[j] ?? 0) : cost[size * last + j]!))
      done.delete(j)
    }
  }
  walk(-1, 0)
  return least
}
