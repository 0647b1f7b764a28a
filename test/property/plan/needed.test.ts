import { describe, expect, test } from 'vitest'
import { choiceMinutes } from '../../../src/plan/choice-minutes.ts'
import { type Assembly, type Choice, type Goal, neededActions, planOf } from '../../../src/plan/index.ts'
import { nextNeed } from '../../../src/plan/next-need.ts'
import { wholeGoal } from '../../../src/plan/whole-goal.ts'
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
