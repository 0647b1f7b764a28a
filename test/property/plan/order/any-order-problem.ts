import { seededRandom } from '../../../../src/measure/index.ts'
import type { OrderProblem } from '../../../../src/plan/index.ts'

/** How costs are drawn: broken numbers, few whole ones (many ties), a zero now and then, steps of a half, of kinds as a plan has them. */
export type CostKind = 'broken' | 'few whole' | 'some zero' | 'halves' | 'kinds'

/** A drawn problem; `density` is the chance of a pair, along a drawn order, so that there is no circle. */
export function anyOrderProblem({
  size,
  density,
  kind,
  seed,
}: {
  size: number
  density: number
  kind: CostKind
  seed: number
}): OrderProblem {
  const random = seededRandom(seed)
  const below = (n: number) => Math.floor(random() * n)
  const kinds = Array.from({ length: size }, () => [below(3), below(2)] as const)
  const draw = (i: number, j: number): number => {
    if (kind === 'broken') return random() * 100
    if (kind === 'few whole') return below(4)
    if (kind === 'some zero') return random() < 0.3 ? 0 : random() * 1e6
    if (kind === 'halves') return below(40) / 2
    return (kinds[i]![0] === kinds[j]![0] ? 0 : 30) + (kinds[i]![1] === kinds[j]![1] ? 0 : 7)
  }
  const actions = Array.from({ length: size }, (_, i) => i)
  const place = actions.map((i) => [random(), i] as const).sort((a, b) => a[0] - b[0])
  const along = place.map(([, i]) => i)
  const cost = actions.flatMap((i) => actions.map((j) => draw(i, j)))
  const ends = random() < 0.5
  return {
    size,
    cost,
    ...(ends
      ? { start: actions.map((i) => draw(i, (i + 1) % size)), end: actions.map((i) => draw(i, i)) }
      : {}),
    before: along.flatMap((b, k) =>
      along.slice(0, k).flatMap((a): [number, number][] => (random() < density ? [[a, b]] : [])),
    ),
  }
}

/** What an order costs, reckoned again; NaN when it leaves something out or breaks a pair. */
export function costAgain(
  { size, cost, start, end, before }: OrderProblem,
  order: readonly number[],
): number {
  if (
    order.length !== size ||
    new Set(order).size !== size ||
    before.some(([a, b]) => order.indexOf(a) > order.indexOf(b))
  )
    return Number.NaN
  let sum = size > 0 ? (start?.[order[0]!] ?? 0) + (end?.[order.at(-1)!] ?? 0) : 0
  for (let k = 1; k < size; k++) sum += cost[size * order[k - 1]! + order[k]!]!
  return sum
}
