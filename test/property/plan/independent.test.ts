import { describe, expect, test } from 'vitest'
import type { Corner } from '../../../src/corner/index.ts'
import { seededRandom } from '../../../src/measure/index.ts'
import { type Action, type Assembly, type Goal, judgeOrder, planOf } from '../../../src/plan/index.ts'
import { brokenOrders } from '../../support/plan-checker/broken-orders.ts'
import { type Broken, checkPlan } from '../../support/plan-checker/check-plan.ts'
import { facts, lowerArmOfTheBus } from '../../support/plan-checker/hand-typed.ts'
import { bus, tipper, vehicles, wholeBus, wholeVan } from './vehicles.ts'

// A separate checker of plans, written from the rules alone, with a state machine of its own.

const long = process.env['AXLEWRIGHT_SOAK'] === '1'
const seed = Number(process.env['AXLEWRIGHT_SEED'] ?? 20261125)
const budget = long ? 1e5 : 2e3
const goal: Goal = { replace: ['front left lower-arm'] }
const rulesOf = (found: readonly Broken[]) => [...new Set(found.map(({ rule }) => rule))]

describe('the checker itself', () => {
  test('PL14 an order of the trade, typed by hand, breaks nothing', () => {
    expect(checkPlan([bus], goal, lowerArmOfTheBus)).toEqual([])
    expect(Object.keys(facts).length).toBeGreaterThan(5)
  })
  for (const { rule, name, corner, aim, order } of brokenOrders)
    test(`PL14 ${rule} ${name}`, () => {
      expect(rulesOf(checkPlan([corner], aim, order))).toContain(rule)
    })
  test('PL14 every rule has an order that breaks it', () => {
    const named = new Set(brokenOrders.map(({ rule }) => rule))
    const all = Array.from({ length: 24 }, (_, i) => `I${i + 1}`)
    expect([...all, 'I7b', 'goal', 'state'].filter((rule) => !named.has(rule))).toEqual([])
  })
})

interface Job {
  readonly name: string
  readonly corners: readonly Corner[]
  readonly assembly: Assembly
  readonly goal: Goal
  readonly actions: readonly Action[]
  readonly waits: readonly (readonly [first: number, next: number])[]
}

interface Subject {
  readonly name: string
  readonly assembly: Assembly
}
const subjects: readonly Subject[] = [
  ...vehicles,
  { name: 'tipper', assembly: tipper },
  { name: 'bus, both axles', assembly: wholeBus },
  { name: 'van, both axles', assembly: wholeVan },
]

/** Each part that wears, on one side, and some (in the long form all) on both; of two axles one part each. */
function goalsOf(assembly: Assembly): readonly (readonly string[])[] {
  const worn = Object.values(assembly.parts).filter(({ file }) => (file.wears ?? []).length > 0)
  if (assembly.axles.length > 1) {
    const of = (axle: string) => worn.filter((one) => one.axle === axle && one.side !== 'right')
    const [front, rear] = [of('front'), of('rear')]
    const size = Math.max(front.length, rear.length)
    return Array.from({ length: size }, (_, i) => [
      front[i % front.length]!.id,
      rear[i % rear.length]!.id,
    ]).filter((_, i) => long || i % 3 === 0)
  }
  const names = [...new Set(worn.map((part) => part.name))]
  return names.flatMap((part, nth) => {
    const ids = worn.filter((one) => one.name === part).map(({ id }) => id)
    const both = long || nth % 4 === 0
    return ids.length > 1 ? [[ids[nth % 2]!], ...(both ? [ids] : [])] : [ids]
  })
}

function jobsOf({ name, assembly }: Subject): readonly Job[] {
  const corners = assembly.axles.map((axle) => assembly.corners[axle]!)
  return goalsOf(assembly).flatMap((replace, nth) => {
    const lifts = ['jack and stands', 'lift'] as const
    return (long ? lifts : [lifts[nth % 2]!]).map((support) => {
      const plan = planOf(assembly, { replace }, undefined, { support, effort: { budget } })
      const lines = plan.bands.flatMap((band) => band.lines)
      const actions = lines.map(({ action }) => action)
      const place = new Map(actions.map(({ id }, at) => [id, at]))
      const waits = lines.flatMap((line, next) =>
        line.waitsFor.map(({ action }) => [place.get(action)!, next] as const),
      )
      return {
        name: `${name}: ${replace.join(', ')}, ${support}`,
        corners,
        assembly,
        goal: { replace },
        actions,
        waits,
      }
    })
  })
}

const told = (actions: readonly Action[]) => (one: Broken) =>
  `${one.rule} at ${actions[one.at]?.id ?? 'the end'}: ${one.sentence}`

for (const vehicle of subjects)
  describe(vehicle.name, () => {
    let known: readonly Job[] | undefined
    const jobs = () => {
      known ??= jobsOf(vehicle)
      return known
    }
    test('PL14 no plan breaks a rule', () => {
      expect(jobs().length).toBeGreaterThan(2)
      const broken = jobs().flatMap((job) =>
        checkPlan(job.corners, job.goal, job.actions)
          .map(told(job.actions))
          .map((one) => `${job.name}: ${one}`),
      )
      expect(broken).toEqual([])
    })
    test('PL14 nor does any order that keeps a plan’s waits', () => {
      const random = seededRandom(seed)
      const broken = jobs().flatMap((job) =>
        Array.from({ length: long ? 200 : 2 }, () => anyOrder(job, random)).flatMap((order) =>
          checkPlan(job.corners, job.goal, order)
            .map(told(order))
            .map((one) => `${job.name}: ${one}`),
        ),
      )
      expect(broken.slice(0, 20)).toEqual([])
    })
    test('PL15 what the checker finds broken in a changed plan is judged broken', () => {
      const random = seededRandom(seed + 1)
      const missed: string[] = []
      let found = 0
      for (const job of jobs())
        for (let run = 0; run < (long ? 400 : 30); run++) {
          const { how, order } = changed(job.actions, random)
          const broken = checkPlan(job.corners, job.goal, order).filter(({ rule }) => rule !== 'goal')
          if (broken.length === 0) continue
          found++
          if (judgeOrder(job.assembly, job.goal, order).faults.length === 0)
            missed.push(`${job.name}: ${how}: ${told(order)(broken[0]!)}`)
        }
      expect(found).toBeGreaterThan(10)
      expect(missed.slice(0, 20)).toEqual([])
    })
  })

/** Any order that keeps the waits: the next one drawn from those that wait for nothing any more. */
function anyOrder({ actions, waits }: Job, random: () => number): readonly Action[] {
  const left = actions.map(
    (_, at) => new Set(waits.filter(([, next]) => next === at).map(([first]) => first)),
  )
  const free = actions.map((_, at) => at).filter((at) => left[at]!.size === 0)
  const order: Action[] = []
  while (free.length > 0) {
    const at = free.splice(Math.floor(random() * free.length), 1)[0]!
    order.push(actions[at]!)
    for (const [next, waiting] of left.entries())
      if (waiting.delete(at) && waiting.size === 0) free.push(next)
  }
  return order
}

/** A plan with two actions swapped, one left out, done twice, or moved near or far. */
function changed(
  actions: readonly Action[],
  random: () => number,
): { readonly how: string; readonly order: readonly Action[] } {
  const order = [...actions]
  const any = () => Math.floor(random() * order.length)
  const kind = Math.floor(random() * 5)
  const at = any()
  if (kind === 0) {
    const to = any()
    ;[order[at], order[to]] = [order[to]!, order[at]!]
    return { how: `“${actions[at]!.id}” and “${actions[to]!.id}” swapped`, order }
  }
  if (kind === 1) {
    order.splice(any(), 0, actions[at]!)
    return { how: `“${actions[at]!.id}” done twice`, order }
  }
  const [one] = order.splice(at, 1)
  if (kind === 2) return { how: `“${one!.id}” left out`, order }
  const to = kind === 3 ? any() : Math.max(0, at + Math.floor(random() * 9) - 4)
  order.splice(to, 0, one!)
  return { how: `“${one!.id}” moved before “${order[to + 1]?.id ?? 'the end'}”`, order }
}
