import { expect, test } from 'vitest'
import { seededRandom } from '../../../../src/measure/index.ts'
import { ascent } from '../../../../src/plan/order/ascent.ts'
import { cheapestTree } from '../../../../src/plan/order/cheapest-tree.ts'
import { instance } from '../../../../src/plan/order/instance.ts'
import { laterCosts } from '../../../../src/plan/order/later-costs.ts'
import { layeredSearch } from '../../../../src/plan/order/layered-search.ts'
import { treeBound } from '../../../../src/plan/order/tree-bound.ts'
import { worseToGoOnFrom } from '../../../../src/plan/order/worse.ts'
import { anyOrderProblem, type CostKind } from './any-order-problem.ts'
import { leastByBranching } from './branched-order.ts'

const kinds: readonly CostKind[] = ['broken', 'few whole', 'some zero', 'halves', 'kinds']
const goOn = () => true

/** `count` problems of `size` actions over all kinds of cost. */
const drawn = (count: number, size: number, seed: number) =>
  Array.from({ length: count }, (_, k) =>
    anyOrderProblem({
      size,
      density: [0.1, 0.25, 0.5][k % 3]!,
      kind: kinds[k % kinds.length]!,
      seed: seed + k,
    }),
  )

test('PL49 the walk with a short memory never costs more than an order, however much it remembers', () => {
  let reached = 0
  for (const problem of drawn(60, 11, 1000)) {
    const least = leastByBranching(problem)
    const up = ascent(instance(problem))
    const bounds: number[] = []
    for (const next of ['climb', 2, 'track', 4, 'track', 6, 'track'] as const) {
      if (next === 'track') up.track()
      else if (typeof next === 'number') up.grow(next)
      up.climb(40, least, goOn)
      bounds.push(up.bound())
    }
    expect(bounds.at(-1)).toBeLessThanOrEqual(least * (1 + 1e-9) + 1e-9)
    expect(bounds.at(-1)).toBeGreaterThanOrEqual(bounds[0]!)
    if (bounds.at(-1)! >= least * (1 - 1e-6)) reached++
  }
  // The more it remembers the more it is an order.
  expect(reached).toBeGreaterThan(40)
})

test('PL49 what is told to be still to come is never more than what came, at any place of any order', () => {
  const random = seededRandom(5)
  let seen = 0
  for (const problem of drawn(30, 9, 2000)) {
    const inst = instance(problem)
    const { size } = inst
    const up = ascent(inst)
    for (const next of ['climb', 2, 'track', 4, 'track'] as const) {
      if (next === 'track') up.track()
      else if (typeof next === 'number') up.grow(next)
      up.climb(15, leastByBranching(problem), goOn)
    }
    const later = laterCosts(inst, up.footing())
    for (let k = 0; k < 40; k++) {
      const order = drawnOrder(problem.before, size, random)
      let toCome = inst.end[order[size - 1]!]!
      for (let place = size - 1; place >= 0; place--) {
        const i = order[place]!
        const done = new Set(order.slice(0, place))
        const set = later.near[i]!.reduce((bits, m, bit) => (done.has(m) ? bits | (1 << bit) : bits), 0)
        const paid = order.slice(place + 1).reduce((sum, m) => sum + later.price[m]!, 0)
        const told = later.least[place * later.offset[size]! + later.offset[i]! + set]! + paid
        expect(told).toBeLessThanOrEqual(toCome + 1e-6 * (1 + Math.abs(toCome)))
        if (place > 0) toCome += inst.cost[size * order[place - 1]! + i]!
        seen++
      }
    }
  }
  expect(seen).toBe(30 * 40 * 9)
})

test('PL44 a pass ended anywhere in a layer: no order costs less than what was still open', () => {
  let ended = 0
  for (let seed = 5000; seed < 5008; seed++) {
    const problem = anyOrderProblem({ size: 15, density: 0.05, kind: 'broken', seed })
    const inst = instance(problem)
    const least = leastByBranching(problem)
    const up = ascent(inst)
    // A sharp bound, so that few open states lie below the least; a loose limit, so that the layers stay wide.
    for (const most of [0, 2, 4, 6]) {
      if (most > 0) up.grow(most)
      up.climb(60, least, goOn)
    }
    const later = laterCosts(inst, up.footing())
    const search = layeredSearch(inst)
    for (let stopAt = 1; stopAt < 40; stopAt++) {
      let asked = 0
      const { bound, stopped, order } = search.pass(later, {
        limit: 2 * least,
        width: 1e6,
        goOn: () => ++asked < stopAt,
      })
      if (!stopped) {
        expect(order).not.toBeNull()
        break
      }
      ended++
      expect(bound).toBeLessThanOrEqual(least * (1 + 1e-9) + 1e-9)
    }
  }
  expect(ended).toBeGreaterThan(15)
})

test('PL49 trees never cost more than an order', () => {
  for (const problem of drawn(60, 11, 3000)) {
    const least = leastByBranching(problem)
    expect(treeBound(instance(problem), least, goOn)).toBeLessThanOrEqual(least * (1 + 1e-9) + 1e-9)
  }
})

test('PL49 the cheapest tree is the cheapest of all trees', () => {
  const random = seededRandom(9)
  for (let k = 0; k < 400; k++) {
    const nodes = 2 + (k % 5)
    const weight = Float64Array.from({ length: nodes * nodes }, () => {
      const w = k % 2 === 0 ? random() * 10 - 3 : Math.floor(random() * 4)
      return random() < 0.15 ? Number.POSITIVE_INFINITY : w
    })
    const root = k % nodes
    // Every choice of one arc into each node that leads back to the root.
    let least = Number.POSITIVE_INFINITY
    const choose = (j: number, from: number[], sum: number): void => {
      if (j === nodes) {
        const comesFromRoot = from.every((_, v) => {
          let at = v
          for (let n = 0; n < nodes && at !== root; n++) at = from[at]!
          return at === root
        })
        if (comesFromRoot) least = Math.min(least, sum)
        return
      }
      if (j === root) choose(j + 1, [...from, -1], sum)
      else
        for (let i = 0; i < nodes; i++) if (i !== j) choose(j + 1, [...from, i], sum + weight[nodes * i + j]!)
    }
    choose(0, [], 0)
    if (least === Number.POSITIVE_INFINITY) continue
    const from = cheapestTree(nodes, weight, root)
    let sum = 0
    for (let j = 0; j < nodes; j++) if (j !== root) sum += weight[nodes * from[j]! + j]!
    expect(sum).toBeCloseTo(least, 9)
    expect(from[root]).toBe(-1)
  }
})

test('PL49 a last action is put aside only where going on from another costs no more, whatever comes next', () => {
  for (const problem of drawn(30, 7, 4000)) {
    const inst = instance(problem)
    const worse = worseToGoOnFrom(inst)
    for (let a = 0; a < 7; a++)
      for (let b = 0; b < 7; b++)
        for (let j = 0; j < 7; j++) {
          if (a === b || !inst.follows[7 * a + j] || !inst.follows[7 * b + j]) continue
          expect(inst.cost[7 * a + j]!).toBeLessThanOrEqual(inst.cost[7 * b + j]! + worse[7 * a + b]! + 1e-9)
        }
  }
})

/** An order that keeps the pairs, drawn action by action. */
function drawnOrder(
  before: readonly (readonly [number, number])[],
  size: number,
  random: () => number,
): number[] {
  const order: number[] = []
  while (order.length < size) {
    const open = Array.from({ length: size }, (_, j) => j).filter(
      (j) => !order.includes(j) && before.every(([a, b]) => b !== j || order.includes(a)),
    )
    order.push(open[Math.floor(random() * open.length)]!)
  }
  return order
}
