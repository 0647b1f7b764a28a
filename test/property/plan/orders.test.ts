import { describe, expect, test } from 'vitest'
import { seededRandom } from '../../../src/measure/index.ts'
import {
  type Action,
  type Assembly,
  type Goal,
  judgeOrder,
  type Plan,
  planOf,
} from '../../../src/plan/index.ts'
import { vehicleNamed } from './vehicles.ts'

/** Jobs that between them meet coil, torsion bar, strut, leaf, bench, ramps, jack at ride height, both sides. */
const jobs: readonly (readonly [vehicle: string, ...goal: string[]])[] = [
  ['bus', 'front right lower-arm', 'front left coil', 'front right coil'],
  ['van', 'front left lower-arm', 'front right lower-arm'],
  ['strut-front', 'front left coil'],
  ['wishbone-torsion-bar', 'front left lower-arm'],
  ['wishbone-coil-lower', 'front left coil'],
  ['wishbone-coil-upper', 'front left upper-arm'],
  ['five-link-rear', 'rear left spring-link'],
  ['semi-trailing-rear', 'rear left trailing-arm'],
  ['solid-axle-leaf-front', 'front left leaf-spring'],
  ['solid-axle-coil-rear', 'rear left coil'],
  ['twist-beam-rear', 'rear left coil'],
  ['strut-front', 'front rack'],
]

interface Job {
  readonly name: string
  readonly assembly: Assembly
  readonly goal: Goal
  readonly plan: Plan
  readonly actions: readonly Action[]
  readonly waits: readonly (readonly [first: number, next: number, rule: string | null])[]
}

const made: readonly Job[] = jobs.map(([vehicle, ...replace]) => {
  const assembly = vehicleNamed(vehicle)
  const goal = { replace }
  const plan = planOf(assembly, goal, undefined, { effort: { budget: 3e6 } })
  const lines = plan.bands.flatMap((band) => band.lines)
  const actions = lines.map(({ action }) => action)
  const placeOf = new Map(actions.map(({ id }, at) => [id, at]))
  const waits = lines.flatMap((line, next) =>
    line.waitsFor.map(({ action, rule }) => [placeOf.get(action)!, next, rule] as const),
  )
  return { name: `${vehicle}: ${replace.join(', ')}`, assembly, goal, plan, actions, waits }
})

/** Any order that keeps the waits: the next one drawn from those that wait for nothing any more. */
function drawn({ actions, waits }: Job, random: () => number): readonly Action[] {
  const left = actions.map(
    (_, next) => new Set(waits.filter((wait) => wait[1] === next).map((wait) => wait[0])),
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

for (const job of made)
  describe(job.name, () => {
    test('PL4 orders that keep the waits break nothing and cost no less than the bound', () => {
      const { changes } = job.plan
      expect(changes.bound).toBeLessThanOrEqual(changes.minutes + 1e-9)
      const random = seededRandom(20261125)
      for (let run = 0; run < 25; run++) {
        const order = drawn(job, random)
        expect(order.length).toBe(job.actions.length)
        const { faults, minutes } = judgeOrder(job.assembly, job.goal, order)
        expect(faults).toEqual([])
        const { tools, places, sides, axles } = minutes
        const cost = tools + places + sides + axles
        expect(cost).toBeGreaterThanOrEqual(changes.bound - 1e-9)
        if (job.plan.proven) expect(cost).toBeGreaterThanOrEqual(changes.minutes - 1e-9)
      }
    })

    test('PL4 the judge finds the cost that the plan says', () => {
      const { tools, places, sides, axles } = judgeOrder(job.assembly, job.goal, job.actions).minutes
      expect(tools + places + sides + axles).toBeCloseTo(job.plan.changes.minutes, 9)
    })

    test('PL5 an action put before what it waits for by a rule is caught', () => {
      const ruled = job.waits.filter(([, , rule]) => rule !== null)
      expect(ruled.length).toBeGreaterThan(5)
      const missed: string[] = []
      let named = 0
      for (const [first, next, rule] of ruled) {
        const order = [...job.actions]
        const [early] = order.splice(next, 1)
        order.splice(first, 0, early!)
        const { faults } = judgeOrder(job.assembly, job.goal, order)
        if (faults.length === 0) missed.push(`${rule}: ${early!.id} before ${job.actions[first]!.id}`)
        if (faults.some((fault) => fault.rule === rule)) named++
      }
      expect(missed).toEqual([])
      // The others end a state too early that something still needs: told at that thing, or by another rule.
      expect(named).toBeGreaterThan(ruled.length / 4)
    })

    test('PL5 two actions that wait for each other, swapped, are caught', () => {
      const silent = job.waits.filter(([first, next]) => {
        const order = [...job.actions]
        ;[order[first], order[next]] = [order[next]!, order[first]!]
        return judgeOrder(job.assembly, job.goal, order).faults.length === 0
      })
      // What is only customary may be swapped without breaking anything; that is the smaller part.
      expect(silent.length).toBeLessThan(job.waits.length / 3)
    })
  })
