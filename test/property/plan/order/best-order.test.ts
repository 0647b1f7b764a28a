import { describe, expect, test } from 'vitest'
import { inventedWork } from '../../../../bench/invented-work.ts'
import { bestOrder, type OrderProblem, type OrderProgress } from '../../../../src/plan/index.ts'
import { Refusal } from '../../../../src/quantity/index.ts'
import { near, refuses } from '../../../support/law.ts'
import { anyOrderProblem, type CostKind, costAgain } from './any-order-problem.ts'
import { leastByBranching } from './branched-order.ts'
import { leastOfEveryOrder } from './every-order.ts'

const kinds: readonly CostKind[] = ['broken', 'few whole', 'some zero', 'halves', 'kinds']
const densities = [0, 0.1, 0.3, 0.6]

/** As many problems as asked, over all kinds of costs and densities. */
function* problems(count: number, size: (k: number) => number, from = 0): Generator<OrderProblem> {
  for (let k = 0; k < count; k++)
    yield anyOrderProblem({
      size: size(k),
      density: densities[k % densities.length]!,
      kind: kinds[k % kinds.length]!,
      seed: from + k,
    })
}

/** Every answer, whatever ended it. */
function isSound(problem: OrderProblem, answer: ReturnType<typeof bestOrder>, least: number): void {
  near(costAgain(problem, answer.order), answer.cost, { rel: 1e-12, abs: 1e-12 })
  expect(answer.lowerBound).toBeLessThanOrEqual(least * (1 + 1e-9))
  expect(answer.cost).toBeGreaterThanOrEqual(least * (1 - 1e-9))
  if (answer.proven) near(answer.cost, least, { rel: 2e-9, abs: 1e-9 })
}

describe('PL40 PL41 against every order there is', () => {
  for (const [count, least, most] of [
    [2000, 1, 6],
    [240, 7, 7],
    [60, 8, 8],
    [10, 9, 9],
  ] as const)
    test(`PL41 ${count} problems of ${least} to ${most} actions: the least cost, proven`, () => {
      let ran = 0
      for (const problem of problems(
        count,
        (k) => least + (Math.floor(k / 20) % (most - least + 1)),
        1000 * most,
      )) {
        const answer = bestOrder(problem)
        expect(answer.proven).toBe(true)
        expect(answer.endedBy).toBe('proof')
        isSound(problem, answer, leastOfEveryOrder(problem))
        ran++
      }
      expect(ran).toBe(count)
    })
})

test('PL42 120 problems of 10 to 15 actions: the same as branching with remembered states', () => {
  for (const problem of problems(120, (k) => 10 + (Math.floor(k / 20) % 6), 50_000)) {
    const answer = bestOrder(problem)
    expect(answer.proven).toBe(true)
    isSound(problem, answer, leastByBranching(problem))
  }
})

test('PL42 branching and walking through every order agree', () => {
  for (const problem of problems(200, (k) => 1 + (k % 7), 60_000))
    near(leastByBranching(problem), leastOfEveryOrder(problem), { rel: 1e-12, abs: 1e-12 })
})

describe('PL43 the same answer', () => {
  const problem = inventedWork({ actions: 40, seed: 3 })
  test('PL43 by the same budget', () => {
    for (const budget of [2e4, 2e5, 2e6]) {
      const once = bestOrder(problem, { budget })
      expect(bestOrder(problem, { budget })).toEqual(once)
      expect(once.steps).toBeLessThan(budget + 1e6)
    }
  })
  test('PL43 keepGoing, asked but never refusing, changes nothing', () => {
    let asked = 0
    const keepGoing = () => {
      asked++
      return true
    }
    expect(bestOrder(problem, { keepGoing })).toEqual(bestOrder(problem))
    expect(asked).toBeGreaterThan(10)
  })
  test('PL43 another seed: the same cost where it is proven', () => {
    expect(bestOrder(problem, { seed: 77 }).cost).toBe(bestOrder(problem).cost)
  })
})

describe('PL44 ended early', () => {
  test('PL44 by a budget or by keepGoing at any moment: an order that keeps the pairs, a bound that holds', () => {
    let unproven = 0
    for (const problem of problems(40, () => 13, 70_000)) {
      const least = leastByBranching(problem)
      for (const budget of [1, 1e3, 1e4, 3e4, 1e5]) {
        const answer = bestOrder(problem, { budget, widest: 100 })
        isSound(problem, answer, least)
        if (!answer.proven) unproven++
        expect(answer.endedBy).not.toBe('asked')
      }
      for (const stopAt of [1, 2, 5, 15, 40]) {
        let asked = 0
        const answer = bestOrder(problem, { keepGoing: () => ++asked < stopAt })
        isSound(problem, answer, least)
        expect(asked).toBeLessThanOrEqual(stopAt)
        if (!answer.proven) expect(answer.endedBy).toBe('asked')
      }
    }
    expect(unproven).toBeGreaterThan(20)
  })
  test('PL44 in the middle of a layer: the bound holds', () => {
    const problem = inventedWork({ actions: 60, seed: 5 })
    const { cost, proven } = bestOrder(problem)
    expect(proven).toBe(true)
    const bounds = [4e5, 7e5, 9e5, 1.2e6, 2e6, 4e6].map((budget) => {
      const answer = bestOrder(problem, { budget })
      expect(answer.endedBy).toBe('budget')
      expect(answer.lowerBound).toBeLessThanOrEqual(cost)
      expect(answer.cost).toBeGreaterThanOrEqual(cost)
      expect(costAgain(problem, answer.order)).toBe(answer.cost)
      return answer.lowerBound
    })
    expect(bounds.at(-1)).toBeGreaterThan(0.6 * cost)
  })
  test('PL44 with layers too narrow for a proof: it ends, and the bound holds', () => {
    for (const problem of problems(15, () => 12, 80_000)) {
      const answer = bestOrder(problem, { widest: 1 })
      isSound(problem, answer, leastByBranching(problem))
      expect(['proof', 'width']).toContain(answer.endedBy)
    }
  })
  test('PL44 progress: the cost never rises, the bound never falls, and they end where the answer does', () => {
    const told: OrderProgress[] = []
    const answer = bestOrder(inventedWork({ actions: 60, seed: 6 }), { onProgress: (p) => told.push(p) })
    expect(told.length).toBeGreaterThan(3)
    for (const [k, p] of told.entries()) {
      expect(p.lowerBound).toBeLessThanOrEqual(p.cost)
      if (k === 0) continue
      expect(p.cost).toBeLessThanOrEqual(told[k - 1]!.cost)
      expect(p.lowerBound).toBeGreaterThanOrEqual(told[k - 1]!.lowerBound)
      expect(p.steps).toBeGreaterThanOrEqual(told[k - 1]!.steps)
    }
    expect(told.at(-1)).toMatchObject({ cost: answer.cost, lowerBound: answer.lowerBound })
  })
})

describe('PL45 what cannot be ordered', () => {
  const two = { size: 2, cost: [0, 1, 1, 0], before: [] }
  const circle: OrderProblem = {
    size: 5,
    cost: new Float64Array(25),
    before: [
      [0, 1],
      [1, 2],
      [2, 3],
      [3, 1],
      [3, 4],
    ],
    names: ['crack', 'lift', 'off', 'on', 'lower'],
  }
  refuses('circle', () => bestOrder(circle), 'before')
  refuses('circle', () => bestOrder({ ...two, before: [[1, 1]] }))
  test('PL45 the circle is named, and only it', () => {
    expect(() => bestOrder(circle)).toThrow(
      /: (lift → off → on → lift|off → on → lift → off|on → lift → off → on)\./,
    )
    let given = ''
    try {
      bestOrder({ ...circle, names: [] })
    } catch (error) {
      given = (error as Refusal).given
      expect(error).toBeInstanceOf(Refusal)
    }
    const walked = given.split(' → ').map(Number)
    expect(walked[0]).toBe(walked.at(-1))
    for (let k = 1; k < walked.length; k++) expect(circle.before).toContainEqual([walked[k - 1], walked[k]])
  })
  refuses('not-a-cost', () => bestOrder({ ...two, cost: [0, -1, 1, 0] }), 'cost[1]')
  refuses('not-a-cost', () => bestOrder({ ...two, cost: [0, 1, Number.NaN, 0] }), 'cost[2]')
  refuses('not-a-cost', () => bestOrder({ ...two, cost: [0, Number.POSITIVE_INFINITY, 1, 0] }))
  refuses('not-a-cost', () => bestOrder({ ...two, start: [0, -2] }), 'start[1]')
  refuses('not-a-cost', () => bestOrder({ ...two, end: [Number.NaN, 0] }), 'end[0]')
  refuses('wrong-size', () => bestOrder({ ...two, cost: [0, 1, 1] }), 'cost')
  refuses('wrong-size', () => bestOrder({ ...two, start: [0] }), 'start')
  refuses('wrong-size', () => bestOrder({ ...two, size: 1.5 }), 'size')
  refuses('wrong-size', () => bestOrder({ ...two, size: -1 }), 'size')
  refuses('no-such-action', () => bestOrder({ ...two, before: [[0, 2]] }), 'before[0]')
  refuses(
    'no-such-action',
    () =>
      bestOrder({
        ...two,
        before: [
          [0, 1],
          [-1, 0],
        ],
      }),
    'before[1]',
  )
  test('PL45 the diagonal is not read, and nothing to do is an order', () => {
    expect(bestOrder({ ...two, cost: [-5, 1, 2, Number.NaN] }).cost).toBe(1)
    expect(bestOrder({ size: 0, cost: [], before: [] })).toMatchObject({ order: [], cost: 0, proven: true })
    expect(bestOrder({ size: 1, cost: [0], start: [3], end: [4], before: [] })).toMatchObject({
      order: [0],
      cost: 7,
      proven: true,
    })
    expect(
      bestOrder({
        size: 4,
        cost: new Float64Array(16),
        before: [
          [3, 0],
          [3, 0],
        ],
      }),
    ).toMatchObject({ cost: 0, proven: true })
  })
})

describe('PL46 what must not matter', () => {
  test('PL46 the problem turned round costs the same', () => {
    for (const problem of problems(60, () => 12, 90_000)) {
      const { size, cost, start, end, before } = problem
      const turned = Array.from(
        { length: size * size },
        (_, k) => cost[size * (k % size) + Math.floor(k / size)]!,
      )
      const answer = bestOrder({
        size,
        cost: turned,
        ...(end ? { start: end } : {}),
        ...(start ? { end: start } : {}),
        before: before.map(([a, b]) => [b, a] as const),
      })
      near(answer.cost, bestOrder(problem).cost, { rel: 2e-9, abs: 1e-9 })
    }
  })
  test('PL46 other numbers for the actions, and pairs said that follow from others: the same cost', () => {
    for (const problem of problems(60, () => 12, 91_000)) {
      const { size, cost, start, end, before } = problem
      const renamed = (i: number) => (5 * i + 3) % size
      const back = Array.from({ length: size }, (_, i) => i).sort((a, b) => renamed(a) - renamed(b))
      const followed = before.flatMap(([a, b]) =>
        before.flatMap(([c, d]): [number, number][] => (b === c ? [[a, d]] : [])),
      )
      const answer = bestOrder({
        size,
        cost: back.flatMap((i) => back.map((j) => cost[size * i + j]!)),
        ...(start ? { start: back.map((i) => start[i]!) } : {}),
        ...(end ? { end: back.map((i) => end[i]!) } : {}),
        before: [...before, ...followed].map(([a, b]) => [renamed(a), renamed(b)] as const),
      })
      near(answer.cost, bestOrder(problem).cost, { rel: 2e-9, abs: 1e-9 })
    }
  })
  test('PL46 a price on coming to an action adds to every order alike; one more pair never makes it cheaper', () => {
    for (const problem of problems(60, () => 11, 92_000)) {
      const { size, cost, before } = problem
      const plain = bestOrder(problem)
      const start = Array.from({ length: size }, (_, j) => (problem.start?.[j] ?? 0) + j)
      const priced = bestOrder({ ...problem, start, cost: Array.from(cost, (c, k) => c + (k % size)) })
      near(priced.cost, plain.cost + (size * (size - 1)) / 2, { rel: 2e-9, abs: 1e-9 })
      const more = bestOrder({
        ...problem,
        before: [
          ...before,
          [plain.order.at(-1)!, plain.order.at(-1)! === plain.order[0] ? 1 : plain.order[0]!],
        ].slice(0, before.length + (canFollow(problem, plain.order) ? 1 : 0)) as [number, number][],
      })
      expect(more.cost).toBeGreaterThanOrEqual(plain.cost * (1 - 2e-9))
    }
  })
})

/** Whether the last of an order may also come before its first. */
function canFollow({ before }: OrderProblem, order: readonly number[]): boolean {
  const reached = new Set([order[0]!])
  for (const i of order) if (before.some(([a, b]) => b === i && reached.has(a))) reached.add(i)
  return !reached.has(order.at(-1)!)
}

test('PL47 invented two-sided work of 60 actions is proven within 25 million steps', () => {
  for (let seed = 1; seed <= 10; seed++) {
    const problem = inventedWork({ actions: 60, seed })
    const answer = bestOrder(problem, { budget: 2.5e7 })
    expect(answer.endedBy, `seed ${seed}`).toBe('proof')
    expect(costAgain(problem, answer.order)).toBe(answer.cost)
  }
})
