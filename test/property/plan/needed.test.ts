import { describe, expect, test } from 'vitest'
import { choiceMinutes } from '../../../src/plan/choice-minutes.ts'
import { choicesUnited } from '../../../src/plan/choices-united.ts'
import {
  type Assembly,
  type Choice,
  type Goal,
  judgeOrder,
  neededActions,
  planOf,
} from '../../../src/plan/index.ts'
import { neededChoices } from '../../../src/plan/needed-choices.ts'
import { nextNeed } from '../../../src/plan/next-need.ts'
import { wholeGoal } from '../../../src/plan/whole-goal.ts'
import { refuses } from '../../support/law.ts'
import { checkPlan } from '../../support/plan-checker/check-plan.ts'
import { vehicleNamed, vehicles, wearing } from './vehicles.ts'

/** Goals that hold no stored energy, whose complete sets can all be tried. */
const small: readonly (readonly [vehicle: string, part: string])[] = [
  ['van', 'front left tie-rod'],
  ['van', 'front left drop-link'],
  ['van', 'front left disc'],
  ['bus', 'front left tie-rod'],
  ['strut-front', 'front left drop-link'],
  ['strut-front', 'front left brake-pads'],
]

/**
 * The least minutes over every set of parts that may come off with the goal, by the definition alone: each joint
 * between what is off and what stays is open, the goal's own joints are undone, and what those joints need to be
 * reached is off or open too. Sets in which something else is lacking, such as a knuckle let loose, are dearer.
 */
function leastOfAll(assembly: Assembly, goal: string): number {
  const { axle, side } = assembly.parts[goal]!
  const may = Object.values(assembly.parts).filter(
    (part) =>
      part.id !== goal &&
      part.axle === axle &&
      part.side === side &&
      [
        'tie-rod',
        'drop-link',
        'wheel',
        'caliper',
        'disc',
        'hub',
        'brake-carrier',
        'brake-pads',
        'tie-rod-end',
        'arch-liner',
      ].includes(part.name),
  )
  const price = choiceMinutes(assembly)
  let least = Number.POSITIVE_INFINITY
  for (let bits = 0; bits < 2 ** may.length; bits++) {
    const off = new Set([goal, ...may.filter((_, i) => (bits >> i) & 1).map(({ id }) => id)])
    const open = new Set<string>()
    const bench = new Set<string>()
    for (const joint of Object.values(assembly.joints)) {
      const outside = joint.joins.filter((part) => !off.has(part))
      const hung = joint.joins.some(
        (part) => assembly.parts[part]!.kind === 'caliper' && off.has(part) && part !== goal,
      )
      const flexible = joint.joins.some((part) => ['hose', 'lead'].includes(assembly.parts[part]!.kind))
      if (outside.length === 1 && !(hung && flexible)) open.add(joint.id)
      else if (outside.length === 0 && joint.joins.includes(goal)) bench.add(joint.id)
    }
    const choice: Choice = { open, bench, off, standIns: {}, letDown: new Set(), raised: new Set(), why: {} }
    const reached = [...open].every((id) =>
      (assembly.joints[id]!.file.access ?? []).every((access) => {
        const named = (
          all: Readonly<
            Record<
              string,
              { readonly id: string; readonly name: string; readonly side: unknown; readonly axle: unknown }
            >
          >,
          name: string,
        ) =>
          Object.values(all).find(
            (one) => one.name === name && one.axle === axle && (one.side === side || one.side === null),
          )!.id
        return (
          (access.partOff === undefined || off.has(named(assembly.parts, access.partOff))) &&
          (access.jointOpen === undefined || open.has(named(assembly.joints, access.jointOpen)))
        )
      }),
    )
    const loose = [...open].some((id) => assembly.joints[id]!.locates)
    if (reached && !loose) least = Math.min(least, price(choice))
  }
  return least
}

/** A choice on the other side. */
function mirrored(choice: Choice): Choice {
  const swapped = (id: string) => id.replace(/left|right/, (side) => (side === 'left' ? 'right' : 'left'))
  const all = (ids: ReadonlySet<string>) => new Set([...ids].map(swapped))
  return {
    ...choice,
    open: all(choice.open),
    bench: all(choice.bench),
    off: all(choice.off),
    letDown: all(choice.letDown),
    raised: all(choice.raised),
    standIns: Object.fromEntries(Object.entries(choice.standIns).map(([id, by]) => [swapped(id), by])),
  }
}

describe('PL6 the needed set', () => {
  for (const [vehicle, part] of small)
    test(`PL6 ${vehicle}: ${part}: as cheap as the cheapest of all sets tried one by one`, () => {
      const assembly = vehicleNamed(vehicle)
      const { minutes } = neededActions(assembly, { replace: [part] })
      expect(minutes).toBeCloseTo(leastOfAll(assembly, part), 9)
    })

  /** Every complete set that the ways to supply what is lacking lead to, without cutting any. */
  function every(assembly: Assembly, goal: Goal): number {
    const price = choiceMinutes(assembly)
    const seen = new Set<string>()
    let least = Number.POSITIVE_INFINITY
    const walk = (choice: Choice): void => {
      const key = JSON.stringify([
        ...(['open', 'bench', 'off', 'letDown', 'raised'] as const).map((of) => [...choice[of]].sort()),
        choice.standIns,
      ])
      if (seen.has(key)) return
      seen.add(key)
      const lacking = nextNeed(assembly, wholeGoal(assembly, goal), choice)
      if (!lacking) least = Math.min(least, price(choice))
      for (const add of lacking ?? [])
        walk({
          ...choice,
          open: new Set([...choice.open, ...(add.open ?? [])]),
          bench: new Set([...choice.bench, ...(add.bench ?? [])].filter((id) => !add.open?.includes(id))),
          off: new Set([...choice.off, ...(add.off ?? [])]),
          letDown: new Set([...choice.letDown, ...(add.letDown ? [add.letDown] : [])]),
          raised: new Set([...choice.raised, ...(add.raised ? [add.raised] : [])]),
          standIns: add.standIn ? { ...choice.standIns, [add.standIn[0]]: add.standIn[1] } : choice.standIns,
        })
    }
    walk({
      open: new Set(),
      bench: new Set(),
      off: new Set(),
      standIns: {},
      letDown: new Set(),
      raised: new Set(),
      why: {},
    })
    return least
  }
  for (const [vehicle, ...parts] of [
    ['solid-axle-leaf-front', 'front left shackle'],
    ['solid-axle-coil-rear', 'rear left coil'],
    ['twist-beam-rear', 'rear left coil'],
    ['van', 'front left strut'],
  ] as const)
    test(`PL6 ${vehicle}: ${parts.join()}: cutting branches loses nothing`, () => {
      const assembly = vehicleNamed(vehicle)
      const goal = { replace: parts }
      expect(neededActions(assembly, goal).minutes).toBeCloseTo(every(assembly, goal), 9)
    })

  const bothSides: readonly (readonly [vehicle: string, part: string])[] = [
    ['wishbone-coil-lower', 'tie-rod-end'],
    ['strut-front', 'tie-rod-end'],
    ['wishbone-torsion-bar', 'tie-rod'],
    ['van', 'lower-arm'],
  ]
  for (const [vehicle, part] of bothSides)
    test(`PL6 ${vehicle}: ${part} on both sides: no way of one side, done on both, is cheaper`, () => {
      const assembly = vehicleNamed(vehicle)
      const goal = { replace: [`front left ${part}`, `front right ${part}`] }
      const { minutes, best } = neededChoices(assembly, goal)
      expect(nextNeed(assembly, wholeGoal(assembly, goal), best)).toBeNull()
      const one = neededActions(assembly, { replace: [goal.replace[0]!] })
      const ways = [one.choice, ...(one.alternative ? [one.alternative.choice] : [])]
      const both = ways
        .map((way) => choicesUnited(way, mirrored(way)))
        .filter((way) => !nextNeed(assembly, wholeGoal(assembly, goal), way))
        .map(choiceMinutes(assembly))
      expect(both.length).toBeGreaterThan(0)
      for (const other of both) expect(minutes).toBeLessThan(other + 1e-9)
    })

  test('PL6 solid-axle-leaf-front: a tie rod that lets go at both ends has come off: corners searched at once', () => {
    const assembly = vehicleNamed('solid-axle-leaf-front')
    const goal = { replace: [], open: ['front left tie-rod-clamp', 'front right tie-rod-clamp'] }
    const { best, minutes } = neededChoices(assembly, goal)
    expect(best.off.has('front tie-rod')).toBe(true)
    expect(nextNeed(assembly, wholeGoal(assembly, goal), best)).toBeNull()
    expect(minutes).toBeCloseTo(every(assembly, goal), 9)
  })

  test('PL6 what both sides ask for once is paid once: lock nuts on both sides, angles read once', () => {
    const ends = (...replace: string[]) => neededActions(vehicleNamed('strut-front'), { replace })
    const [left, both] = [
      ends('front left tie-rod-end'),
      ends('front left tie-rod-end', 'front right tie-rod-end'),
    ]
    expect(both.minutes).toBeLessThan(2 * left.minutes - 10)
    expect(both.choice.open.has('front left tie-rod-lock-nut')).toBe(true)
    expect(both.choice.open.has('front right tie-rod-lock-nut')).toBe(true)
  })

  for (const [vehicle, part] of [
    ['five-link-rear', 'rear sub-frame'],
    ['solid-axle-coil-rear', 'rear axle-beam'],
  ] as const)
    test(`PL2 PL6 PL14 ${vehicle}: a new ${part}: complete, both sides alike, no rule broken`, () => {
      const assembly = vehicleNamed(vehicle)
      const goal = { replace: [part] }
      const { best, minutes } = neededChoices(assembly, goal)
      expect(nextNeed(assembly, wholeGoal(assembly, goal), best)).toBeNull()
      expect(choiceMinutes(assembly)(mirrored(best))).toBeCloseTo(minutes, 9)
      const plan = planOf(assembly, goal, undefined, { effort: { budget: 2e3 } })
      const actions = plan.bands.flatMap(({ lines }) => lines.map(({ action }) => action))
      expect(judgeOrder(assembly, goal, actions).faults).toEqual([])
      expect(checkPlan(Object.values(assembly.corners), goal, actions)).toEqual([])
    })
  refuses('too-many-ways', () =>
    neededChoices(vehicleNamed('five-link-rear'), { replace: ['rear sub-frame'] }, [], undefined, 500),
  )

  test('PL6 each thing has its reason, and the second costs more and is another way', () => {
    let seconds = 0
    for (const { assembly } of vehicles)
      for (const goal of wearing(assembly).slice(0, 3)) {
        const { reasons, alternative, choice } = neededActions(assembly, goal)
        expect(reasons.length).toBeGreaterThan(choice.off.size)
        for (const { why, called } of reasons) {
          expect(why.length, called).toBeGreaterThan(8)
          expect(called.length).toBeGreaterThan(2)
        }
        if (!alternative) continue
        seconds++
        expect(alternative.extraMinutes).toBeGreaterThanOrEqual(0)
        expect(alternative.more.length).toBeGreaterThan(0)
      }
    expect(seconds).toBeGreaterThan(5)
  })

  test('PL6 why the hose bracket: because the knuckle moves further than it reaches', () => {
    const { reasons } = neededActions(vehicleNamed('bus'), { replace: ['front right lower-arm'] })
    const hose = reasons.find(({ id }) => id === 'front right brake-hose-bracket')
    expect(hose?.why).toMatch(/knuckle moves further than the right brake hose reaches \(\d+ mm\)/)
  })
})

describe('PL8 PL12 the same question, and its mirror image', () => {
  const effort = { budget: 1e6 }
  const of = (...replace: string[]) => planOf(vehicleNamed('bus'), { replace }, undefined, { effort })
  test('PL8 twice the same', () => expect(of('front left lower-arm')).toEqual(of('front left lower-arm')))
  test('PL12 the other side: the same actions there, the same time', () => {
    const [left, right] = [of('front left tie-rod'), of('front right tie-rod')]
    const ids = (plan: typeof left) =>
      plan.bands.flatMap(({ lines }) => lines.map(({ action }) => action.id)).sort()
    const swapped = ids(left)
      .map((id) => id.replace(/left|right/g, (side) => (side === 'left' ? 'right' : 'left')))
      .sort()
    expect(swapped).toEqual(ids(right))
    expect([left.proven, right.proven]).toEqual([true, true])
    expect(left.minutes.p50).toBeCloseTo(right.minutes.p50, 6)
    expect(left.changes.minutes).toBeCloseTo(right.changes.minutes, 9)
  })
})
