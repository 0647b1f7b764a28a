import type { OrderProblem } from '../../../../src/plan/index.ts'

/**
 * The least cost by branching: deepest first, cheapest step first, cut off by the cheapest step into each action left, and
 * where the same actions were done before at no higher cost with the same last. For up to some 16 actions.
 */
export function leastByBranching({ size, cost, start, end, before }: OrderProblem): number {
  const waits = Array.from({ length: size }, () => 0)
  for (const [a, b] of before) waits[b]! |= 1 << a
  const into = Array.from({ length: size }, (_, j) =>
    Math.min(start?.[j] ?? 0, ...waits.flatMap((_, i) => (i === j ? [] : [cost[size * i + j]!]))),
  )
  const seen = new Map<number, number>()
  const all = 2 ** size - 1
  let least = Number.POSITIVE_INFINITY
  const walk = (done: number, last: number, sum: number, rest: number): void => {
    if (done === all) {
      least = Math.min(least, sum + (end?.[last] ?? 0))
      return
    }
    if (sum + rest >= least) return
    const key = done * 32 + last + 1
    if ((seen.get(key) ?? Number.POSITIVE_INFINITY) <= sum) return
    seen.set(key, sum)
    const open: [number, number][] = []
    for (let j = 0; j < size; j++)
      if (!((done >> j) & 1) && (waits[j]! & ~done) === 0)
        open.push([last < 0 ? (start?.[j] ?? 0) : cost[size * last + j]!, j])
    for (const [step, j] of open.sort((x, y) => x[0] - y[0]))
      walk(done | (1 << j), j, sum + step, rest - into[j]!)
  }
  walk(
    0,
    -1,
    0,
    into.reduce((a, b) => a + b, 0),
  )
  return least
}
