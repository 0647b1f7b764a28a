import { describe, expect, test } from 'vitest'
import type { Corner } from '../../../src/corner/index.ts'
import {
  type Assembly,
  branchesOf,
  type Failure,
  type FailureKind,
  factOf,
  type Goal,
  judgeOrder,
  keys,
  planOf,
  type Rung,
  type State,
} from '../../../src/plan/index.ts'
import { Refusal } from '../../../src/quantity/index.ts'
import { refuses } from '../../support/law.ts'
import { checkFailures } from '../../support/plan-checker/check-failures.ts'
import { checkPlan } from '../../support/plan-checker/check-plan.ts'
import { bus, vehicleNamed, vehicles } from './vehicles.ts'

// What fails, and what the plan makes of it. All that is held here is common practice, no source.

const long = process.env['AXLEWRIGHT_SOAK'] === '1'
const effort = { budget: 1e3 }
const gentler: readonly Rung[] = [
  'soak',
  'lever',
  'clamp',
  'grip',
  'strap',
  'press',
  'impact',
  'puller',
  'extractor',
  'hammer',
  'fork',
  'split',
  'heat',
]

/** What can happen to a joint of each kind, typed from the trade. */
const happens: Readonly<Record<string, readonly FailureKind[]>> = {
  bolt: ['rounded head', 'stripped thread', 'snapped stud', 'hole not round', 'damage found'],
  'eccentric bolt': ['seized sleeve', 'rounded head', 'stripped thread', 'snapped stud', 'hole not round'],
  'slotted bolt': ['rounded head', 'stripped thread', 'snapped stud', 'hole not round'],
  'shackle bolt': ['seized sleeve', 'rounded head', 'stripped thread', 'snapped stud', 'hole not round'],
  'pinch bolt': ['rounded head', 'stripped thread', 'snapped stud'],
  'stud nuts': ['rounded head', 'stripped thread', 'snapped stud', 'stud spins'],
  'tapered stud, castle nut': [
    'taper will not part',
    'stud spins',
    'rounded head',
    'stripped thread',
    'snapped stud',
    'split boot',
    'hole not round',
  ],
  'tapered stud, lock nut': ['taper will not part', 'stud spins', 'rounded head', 'split boot'],
  'thread and lock nut': ['seized sleeve', 'rounded head', 'stripped thread'],
  'wheel nuts': ['rounded head', 'stripped thread', 'snapped stud'],
  'axle nut': ['rounded head', 'stripped thread'],
  'U-bolts': ['rounded head', 'stripped thread', 'snapped stud'],
  'strut top nut': ['rounded head', 'stud spins', 'stripped thread'],
  'hydraulic union': ['rounded head', 'stripped thread'],
  'ball-joint bolts': ['rounded head', 'stripped thread', 'snapped stud'],
  'adjustable taper-roller hub': ['rounded head', 'stripped thread'],
  'anchor bolt': ['rounded head', 'stripped thread', 'snapped stud'],
  clip: ['split boot'],
}

interface Case {
  readonly name: string
  readonly assembly: Assembly
  readonly corner: Corner
  readonly goal: Goal
}

/** Every joint and what can happen to it, the gentlest way and, all of that tried in vain, the roughest. */
function casesOf({ name, assembly, corner }: (typeof vehicles)[number]): readonly Case[] {
  return Object.values(assembly.joints)
    .filter(({ side }) => side !== 'right')
    .flatMap((joint) => {
      const bonded: readonly FailureKind[] =
        joint.kind === 'bolt' && joint.file.bush?.bonded ? ['seized sleeve'] : []
      const boots = joint.joins.some((id) => assembly.parts[id]!.kind === 'boot')
      return [...(happens[joint.kind] ?? []), ...bonded]
        .filter((what) => joint.kind !== 'clip' || what !== 'split boot' || boots)
        .flatMap((what) =>
          [[], gentler].map((tried) => ({
            name: `${name} ${joint.id}: ${what}${tried.length > 0 ? ', all else tried' : ''}`,
            assembly,
            corner,
            goal: { replace: [], failed: [{ what, joint: joint.id, tried }] },
          })),
        )
    })
}

/** One joint of each kind with each failure, from another vehicle each time; in the long form every joint of all. */
function drawn(): readonly Case[] {
  if (long) return vehicles.flatMap(casesOf)
  // Beams and five links take longest to plan: they are for the long form.
  const all = vehicles.filter(({ name }) => !/^(twist-beam|five-link)/.test(name)).map(casesOf)
  // A whole knuckle of many links takes seconds to plan: that is for the long form.
  const isSlow = ({ name, goal }: Case) =>
    goal.failed![0]!.what === 'hole not round' && !/^(bus|van|strut)/.test(name)
  const seen = new Set<string>()
  const mixed = Array.from({ length: Math.max(...all.map(({ length }) => length)) }, (_, i) =>
    all.flatMap((cases, nth) => cases[(i * 7 + nth * 13) % cases.length] ?? []),
  ).flat()
  return mixed.filter((one) => {
    if (isSlow(one)) return false
    const { assembly, goal } = one
    const { failed } = goal
    const { what, joint, tried } = failed![0]!
    const key = `${assembly.joints[joint!]!.kind} ${what} ${tried!.length}`
    if (seen.has(key)) return false
    seen.add(key)
    return true
  })
}

const ordered = (assembly: Assembly, goal: Goal) => {
  const plan = planOf(assembly, goal, undefined, { effort })
  return { plan, actions: plan.bands.flatMap(({ lines }) => lines.map(({ action }) => action)) }
}
/** The parts that an order puts in new: what the checker takes for the goal. */
const comeNew = (actions: ReturnType<typeof ordered>['actions']): Goal => ({
  replace: [
    ...new Set(
      actions
        .flatMap(({ effects }) => Object.entries(effects))
        .filter(([key, value]) => key.startsWith('part ') && value === 'new')
        .map(([key]) => key.slice('part '.length)),
    ),
  ],
})

describe('what can fail', () => {
  test('PL21 has a plan that breaks no rule, and ends closed with what was lost new', () => {
    const wrong: string[] = []
    let planned = 0
    let told = 0
    for (const { name, assembly, corner, goal } of drawn()) {
      const joint = assembly.joints[goal.failed![0]!.joint!]!
      let order: ReturnType<typeof ordered>
      try {
        order = ordered(assembly, goal)
      } catch (refusal) {
        // Nothing is left, or what carries the rest would be lost: told, and never without a way on.
        if (
          refusal instanceof Refusal &&
          refusal.code === 'no-way-left' &&
          /[Mm]ake it safe/.test(refusal.remedy)
        )
          told++
        else wrong.push(`${name}: ${refusal instanceof Error ? refusal.message : refusal}`)
        continue
      }
      planned++
      const { actions, plan } = order
      const { faults, state } = judgeOrder(assembly, goal, actions)
      wrong.push(...faults.map(({ action, would }) => `${name}: judged at ${action}: ${would}`))
      const aim = comeNew(actions)
      wrong.push(
        ...checkPlan([corner], aim, actions).map((one) => `${name}: checked ${one.rule}: ${one.sentence}`),
      )
      wrong.push(...checkFailures([corner], aim, actions).map((one) => `${name}: ${one}`))
      for (const id of Object.keys(assembly.joints))
        if (!['closed', 'final', 'checked'].includes(factOf(state, keys.joint(id))))
          wrong.push(`${name}: ${id} is left`)
      for (const { replaced, off, fastener, mended } of branchesOf(assembly, goal)) {
        for (const id of replaced) {
          if (factOf(state, keys.part(id)) !== 'new') wrong.push(`${name}: the old ${id} is back`)
          if (!plan.shopping.parts.includes(assembly.parts[id]!.called))
            wrong.push(`${name}: ${id} is not on the list`)
        }
        for (const id of off)
          if (
            !actions.some(
              ({ effects }) => effects[keys.part(id)] === 'off' || effects[keys.part(id)] === 'freed',
            )
          )
            wrong.push(`${name}: ${id} never came off`)
        if (fastener && factOf(state, keys.fastener(joint.id)) !== 'new')
          wrong.push(`${name}: its old fastener is back`)
        if (fastener && !plan.shopping.parts.join().includes(joint.called))
          wrong.push(`${name}: its fastener is not on the list`)
        if (
          mended &&
          factOf(state, keys.mending(joint.id)) !== 'mended' &&
          !aim.replace.includes(mended.part)
        )
          wrong.push(`${name}: its ${mended.what} is lost and not new`)
      }
    }
    expect(wrong.slice(0, 20)).toEqual([])
    expect(planned).toBeGreaterThan(80)
    expect(told).toBeGreaterThan(0)
  }, 3_600_000)
})

describe('what fails on the way', () => {
  const assembly = vehicleNamed('bus')
  /** Found out just before an action of the plan. */
  const found: readonly (readonly [before: RegExp, replace: string, Failure])[] = [
    [
      /^free .*ball-joint/,
      'front left coil',
      { what: 'taper will not part', joint: 'front left lower-ball-joint', tried: ['press'] },
    ],
    [
      /^take off front left coil/,
      'front left coil',
      { what: 'seized sleeve', joint: 'front left lower-front-bolt', tried: gentler },
    ],
    [
      /^open front left wheel-nuts/,
      'front left lower-arm',
      { what: 'snapped stud', joint: 'front left wheel-nuts' },
    ],
    [
      /^compare beside/,
      'front left lower-arm',
      { what: 'wrong part in the box', part: 'front left lower-arm' },
    ],
    [
      /^final front left damper-bottom/,
      'front left lower-arm',
      { what: 'stripped thread', joint: 'front left lower-front-bolt' },
    ],
    [/^lower$/, 'front left lower-arm', { what: 'stud spins', joint: 'front left lower-ball-joint' }],
  ]
  for (const [before, replace, failure] of found)
    test(`PL21 ${failure.what}, found out before ${before.source}: the rest is planned from there`, () => {
      const { actions } = ordered(assembly, { replace: [replace] })
      const at = actions.findIndex(({ id }) => before.test(id))
      expect(at).toBeGreaterThan(0)
      const from: State = Object.assign({}, ...actions.slice(0, at).map(({ effects }) => effects))
      const goal: Goal = { replace: [replace], failed: [failure] }
      const plan = planOf(assembly, goal, undefined, { effort, from })
      const rest = plan.bands.flatMap(({ lines }) => lines.map(({ action }) => action))
      const { faults, state } = judgeOrder(assembly, goal, rest, { from })
      expect(faults).toEqual([])
      for (const id of Object.keys(assembly.joints))
        expect(['closed', 'final', 'checked'], id).toContain(factOf(state, keys.joint(id)))
      for (const { fastener, joint, replaced, mended } of branchesOf(assembly, goal)) {
        if (fastener) expect(factOf(state, keys.fastener(joint!.id))).toBe('new')
        if (mended) expect(factOf(state, keys.mending(joint!.id))).toBe('mended')
        for (const id of replaced) expect(factOf(state, keys.part(id)), id).toBe('new')
      }
      if (failure.joint)
        expect(rest.some(({ effects }) => effects[keys.joint(failure.joint!)] === 'open')).toBe(true)
      else {
        const stop = rest.findIndex(({ verb }) => verb === 'wait for part')
        expect(rest.findIndex(({ id }) => id === `fit ${failure.part}`)).toBeGreaterThan(stop)
        expect(stop).toBeGreaterThanOrEqual(0)
      }
    })
})

const wishbone = vehicleNamed('bus')
const strut = vehicleNamed('strut-front')

/** What is lost, typed by hand. */
const costs: readonly (readonly [
  name: string,
  Assembly,
  Failure,
  parts: readonly string[],
  more: readonly RegExp[],
])[] = [
  [
    'a wheel stud',
    wishbone,
    { what: 'snapped stud', joint: 'front left wheel-nuts' },
    [],
    [/^wheel stud of the/, /wheel nuts/],
  ],
  [
    'a rounded head costs its bolt',
    wishbone,
    { what: 'rounded head', joint: 'front left upper-front-bolt' },
    [],
    [/upper front pivot bolt/],
  ],
  [
    'a sawn sleeve costs bush, bolt and eccentric washers',
    wishbone,
    { what: 'seized sleeve', joint: 'front left lower-front-bolt', tried: gentler },
    [],
    [/^bush of the/, /^bolt or stud, and nut/, /^eccentric washers/],
  ],
  [
    'a fork costs the arm whose boot it is',
    wishbone,
    { what: 'taper will not part', joint: 'front left lower-ball-joint', tried: ['press'] },
    ['left lower arm'],
    [],
  ],
  [
    'a stripped stud costs the rod end',
    strut,
    { what: 'stripped thread', joint: 'front left tie-rod-end-stud' },
    ['left tie-rod end'],
    [],
  ],
  [
    'a split boot at a rod end costs the rod end',
    strut,
    { what: 'split boot', joint: 'front left tie-rod-end-stud' },
    ['left tie-rod end'],
    [],
  ],
  [
    'a rack boot is a part of its own',
    strut,
    { what: 'split boot', joint: 'front left boot-inner-clip' },
    ['left boot of the rack'],
    [],
  ],
  [
    'a hole of the knuckle costs the knuckle',
    wishbone,
    { what: 'hole not round', joint: 'front left lower-ball-joint' },
    ['left knuckle'],
    [],
  ],
]

describe('what a failure costs', () => {
  for (const [name, assembly, failure, parts, more] of costs)
    test(`PL22 ${name}`, () => {
      const { plan } = ordered(assembly, { replace: [], failed: [failure] })
      for (const part of parts) expect(plan.shopping.parts).toContain(part)
      for (const line of more) expect(plan.shopping.parts.filter((one) => line.test(one))).not.toEqual([])
    })
  test('PL22 a sawn adjuster bolt obliges to read and set the angles', () => {
    const { plan } = ordered(wishbone, {
      replace: [],
      failed: [{ what: 'seized sleeve', joint: 'front left lower-front-bolt', tried: gentler }],
    })
    expect(plan.consequences.find(({ kind }) => kind === 'angles')?.because).toContain(
      'front left lower-front-bolt',
    )
  })
  test('PL22 a tool for it that the kit has not is told before lifting, one that it has is not', () => {
    const kit = (kind: 'fork' | 'separator') => ({ pullers: { one: { name: kind, kind } } }) as never
    const failed = [
      { what: 'taper will not part', joint: 'front left lower-ball-joint', tried: ['press'] },
    ] as const
    const missing = (kind: 'fork' | 'separator') =>
      planOf(wishbone, { replace: [], failed }, kit(kind), { effort }).missing.map(({ tool }) => tool)
    expect(missing('separator')).toContain('fork')
    expect(missing('fork')).not.toContain('fork')
  })
})

/** The ways that are taken one after the other, each tried in vain before the next. */
function rungs(
  assembly: Assembly,
  failure: Failure,
  replace: readonly string[] = [],
): readonly (Rung | null)[] {
  const tried: Rung[] = []
  for (;;) {
    const [{ rung, next } = { rung: null, next: null }] = branchesOf(assembly, {
      replace,
      failed: [{ ...failure, tried: [...tried] }],
    })
    tried.push(rung!)
    if (next === null) return tried
    const [after] = branchesOf(assembly, { replace, failed: [{ ...failure, tried: [...tried] }] })
    expect(after!.rung, 'what was named as the next').toBe(next)
  }
}

/** The same vehicle where only a jack stands in for its springs. */
const withoutCompressor = (assembly: Assembly): Assembly => ({
  ...assembly,
  holds: Object.fromEntries(
    Object.entries(assembly.holds).map(([id, hold]) => [id, { ...hold, standIns: ['jack under the arm'] }]),
  ),
})

describe('the ladder', () => {
  test('PL23 a sleeve: oil, impact, puller, saw; never a flame beside its rubber', () => {
    const climbed = rungs(wishbone, { what: 'seized sleeve', joint: 'front left lower-front-bolt' })
    expect(climbed).toEqual(['soak', 'impact', 'puller', 'cut'])
    expect(
      rungs(wishbone, { what: 'seized sleeve', joint: 'front left lower-front-bolt' }, [
        'front left lower-arm',
      ]),
    ).toEqual(climbed)
  })
  test('PL23 a taper: pressed and left, forked; the saw only where the spring lets it', () => {
    const failure = { what: 'taper will not part', joint: 'front left tie-rod-end-stud' } as const
    expect(rungs(strut, failure)).toEqual(['press', 'fork', 'cut'])
  })
  test('PL23 a hammer is only for steel that somebody looked at, and for a joint that is scrap', () => {
    const failure = { what: 'taper will not part', joint: 'front left tie-rod-end-stud' } as const
    const end = ['front left tie-rod-end']
    expect(rungs(strut, { ...failure, boss: 'steel' }, end)).toContain('hammer')
    expect(rungs(strut, { ...failure, boss: 'steel' })).not.toContain('hammer')
    expect(rungs(strut, { ...failure, boss: 'aluminium' }, end)).not.toContain('hammer')
    expect(rungs(strut, failure, end)).not.toContain('hammer')
  })
  test('PL23 heat only where both parts are scrap and nothing beside them burns', () => {
    let heated = 0
    for (const { assembly, corner } of vehicles)
      for (const joint of Object.values(assembly.joints))
        for (const replace of [[], [joint.joins[0]], joint.joins.filter((id) => id !== 'body')]) {
          for (const what of ['seized sleeve', 'taper will not part'] as const) {
            let ways: readonly (Rung | null)[]
            try {
              ways = rungs(assembly, { what, joint: joint.id }, replace)
            } catch {
              continue
            }
            if (!ways.includes('heat')) continue
            heated++
            const action = {
              id: 'heat',
              verb: 'open',
              joint: joint.id,
              how: { aid: 'heat' },
              effects: {},
              cautions: ['Goggles'],
              records: ['fire'],
            }
            expect(checkFailures([corner], { replace }, [action as never])).toEqual([])
          }
        }
    expect(heated).toBeGreaterThan(0)
  })
  test('PL23 the saw: never at a piston rod, nor where its own joint must open to let a spring down', () => {
    const bare = withoutCompressor(wishbone)
    expect(rungs(strut, { what: 'rounded head', joint: 'front left strut-top-nut' })).toEqual([
      'grip',
      'split',
    ])
    expect(rungs(wishbone, { what: 'rounded head', joint: 'front left drop-link-bottom-nut' })).toEqual([
      'grip',
      'split',
    ])
    expect(rungs(bare, { what: 'rounded head', joint: 'front left lower-ball-joint' })).toEqual([
      'grip',
      'split',
    ])
  })
  test('PL23 the saw beside a coil: once that is down', () => {
    const assembly = vehicleNamed('semi-trailing-rear')
    const failed = [{ what: 'rounded head', joint: 'rear left carrier-bolts', tried: ['grip'] }] as const
    const { actions } = ordered(assembly, { replace: [], failed })
    const saw = actions.findIndex(({ how }) => how['aid'] === 'cut')
    const down = actions.findIndex(({ effects }) => effects[keys.energy('rear left coil')] === 'let down')
    expect(down).toBeGreaterThan(0)
    expect(saw).toBeGreaterThan(down)
  })
  test('PL23 the next way stands on the line, with its chance and its time', () => {
    const { actions } = ordered(wishbone, {
      replace: [],
      failed: [{ what: 'rounded head', joint: 'front left damper-bottom-bolt' }],
    })
    const line = actions.find(({ how }) => how['aid'] === 'grip')!
    expect(line.why).toMatch(/rounded head.*next:/)
    expect(line.risk!.what).toMatch(/next:/)
    expect(line.risk!.chance).toBeGreaterThan(0)
    expect(line.minutes[2]).toBeGreaterThan(line.minutes[0])
    expect(line.cautions.join()).toMatch(/Goggles/)
    expect(line.records.join()).toMatch(/rounded head/)
  })
})

describe('what cannot be', () => {
  const failed =
    (one: Failure, replace: readonly string[] = []) =>
    () =>
      branchesOf(wishbone, { replace, failed: [one] })
  const cannot: readonly (readonly [Failure, RegExp])[] = [
    [{ what: 'taper will not part', joint: 'front left upper-front-bolt' }, /it has no taper/],
    [{ what: 'seized sleeve', joint: 'front left wheel-nuts' }, /no bolt goes through a sleeve/],
    [{ what: 'stud spins', joint: 'front left upper-front-bolt' }, /no stud that can turn/],
    [{ what: 'rounded head', joint: 'front left nowhere' }, /There is no joint “front left nowhere”/],
    [{ what: 'rounded head', part: 'front left lower-arm' }, /happens at a joint/],
    [{ what: 'split boot', part: 'front left coil' }, /it has no boot/],
    [{ what: 'damage found', part: 'body' }, /no part “body”/],
    [{ what: 'damage found' }, /neither joint nor part/],
    [{ what: 'wrong part in the box', part: 'front left coil' }, /does not come new here/],
  ]
  for (const [one, sentence] of cannot)
    test(`PL24 ${one.what} at ${one.joint ?? one.part ?? 'nothing'} is refused`, () => {
      expect(failed(one)).toThrow(sentence)
      expect(() =>
        planOf(
          wishbone,
          { replace: ['front left coil'].slice(one.what === 'wrong part in the box' ? 1 : 0), failed: [one] },
          undefined,
          { effort },
        ),
      ).toThrow(sentence)
    })
  refuses(
    'no-such-failure',
    () =>
      branchesOf(wishbone, {
        replace: [],
        failed: [{ what: 'taper will not part', joint: 'front left wheel-nuts' }],
      }),
    'goal.failed',
  )
  refuses(
    'no-way-left',
    () =>
      branchesOf(wishbone, {
        replace: [],
        failed: [{ what: 'rounded head', joint: 'front left upper-front-bolt', tried: ['grip', 'cut'] }],
      }),
    'goal.failed',
  )
})

describe('the wrong part in the box', () => {
  const goal: Goal = {
    replace: ['front left lower-arm', 'front left coil'],
    failed: [{ what: 'wrong part in the box', part: 'front left lower-arm' }],
  }
  const { actions, plan } = ordered(wishbone, goal)
  const at = (id: string) => actions.findIndex((action) => action.id === id)
  test('PL25 the plan stops before anything is loosened or lifted, until the right one is there and compared', () => {
    const stop = actions.findIndex(({ verb }) => verb === 'wait for part')
    expect(stop).toBeGreaterThanOrEqual(0)
    expect(at('compare before front left lower-arm')).toBeGreaterThan(stop)
    for (const verb of ['crack', 'jack up', 'lift'] as const)
      expect(
        actions.slice(0, stop).some((action) => action.verb === verb),
        verb,
      ).toBe(false)
    const lines = plan.bands.flatMap((band) => band.lines)
    const first = lines.find(({ action }) => action.verb === 'crack')!
    expect(first.waitsFor.map(({ action }) => action)).toContain('wait for front left lower-arm')
  })
  test('PL25 what does not wait for it goes on', () => {
    const lines = new Map(plan.bands.flatMap((band) => band.lines).map((line) => [line.action.id, line]))
    const waits = (id: string): boolean =>
      id === 'wait for front left lower-arm' || lines.get(id)!.waitsFor.some(({ action }) => waits(action))
    for (const id of ['set pressures', 'record heights', 'compare before front left coil'])
      expect(waits(id), id).toBe(false)
    expect(waits('compare before front left lower-arm')).toBe(true)
  })
  test('PL25 and breaks no rule', () => {
    expect(judgeOrder(wishbone, goal, actions).faults).toEqual([])
    expect(checkPlan([bus], goal, actions)).toEqual([])
  })
})
