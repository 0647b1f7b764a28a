import { describe, expect, test } from 'vitest'
import { seededRandom } from '../../../src/measure/index.ts'
import {
  type Action,
  afterAction,
  judgeOrder,
  type Plan,
  planOf,
  type State,
} from '../../../src/plan/index.ts'
import { refuses } from '../../support/law.ts'
import { checkPlan } from '../../support/plan-checker/check-plan.ts'
import { madeSafe } from '../../support/plan-checker/made-safe.ts'
import { bus, vehicleNamed, vehicles, wearing } from './vehicles.ts'

const long = process.env['AXLEWRIGHT_SOAK'] === '1'
const random = seededRandom(Number(process.env['AXLEWRIGHT_SEED'] ?? 20261125))
const effort = { budget: 2e3 }
const actionsOf = ({ bands }: Plan): readonly Action[] =>
  bands.flatMap(({ lines }) => lines.map(({ action }) => action))
/** Without a proof an order may have this much more walking about than one that was met: minutes. */
const unproven = 3

const supports = ['jack and stands', 'lift'] as const
const one = vehicleNamed('bus')
const arm = { replace: ['front left lower-arm'] }
const order = actionsOf(planOf(one, arm, undefined, { effort }))
const stateAfter = (count: number): State => order.slice(0, count).reduce(afterAction, {} as State)
const placeOf = (id: string) => order.findIndex((action) => action.id === id)

const armGone: State = {
  ...stateAfter(placeOf('take off front left lower-arm') + 1),
  'part front left lower-arm': 'broken',
}

describe('from any place of a plan', () => {
  for (const { name, corner, assembly } of vehicles) {
    const goals = wearing(assembly)
    // What asks for minutes of search is left to the long form.
    const light = goals.filter(({ replace }) => long || !/beam|bearing|sub-frame/.test(replace[0]!))
    const some = long ? light : [light[Math.floor(random() * light.length)]!]
    for (const goal of some)
      test(`PL17 PL18 ${name}: ${goal.replace.join()}`, () => {
        const support = supports[Math.floor(random() * 2)]!
        const whole = actionsOf(planOf(assembly, goal, undefined, { support, effort }))
        const cuts = long
          ? whole.map((_, at) => at + 1)
          : [1, 3, 5, 7].map((part) => Math.floor(((part + random()) / 9) * whole.length))
        for (const cut of cuts) {
          const before = whole.slice(0, cut)
          const from = before.reduce(afterAction, {} as State)
          const told = `${cut} of ${whole.length}, after ${before.at(-1)?.id}`
          const plan = planOf(assembly, goal, undefined, { support, effort, from })
          const rest = actionsOf(plan)
          expect(checkPlan([corner], goal, [...before, ...rest]), told).toEqual([])
          const judged = judgeOrder(assembly, goal, rest, { from })
          expect(judged.faults, told).toEqual([])
          const old = judgeOrder(assembly, goal, whole.slice(cut), { from }).minutes.all
          expect(judged.minutes.all, told).toBeLessThanOrEqual(old + (plan.proven ? 1e-9 : unproven))
          const done = new Set(before.map(({ id }) => id))
          expect(
            rest
              .filter(({ id, verb }) => done.has(id) && !/^steer|^hold steering/.test(verb))
              .map(({ id }) => id),
          ).toEqual([])
          for (const make of long
            ? (['safe to stand', 'safe to roll'] as const)
            : ([cut % 2 ? 'safe to stand' : 'safe to roll'] as const)) {
            const safe = actionsOf(
              planOf(assembly, { replace: [], make }, undefined, { support, effort, from }),
            )
            expect(judgeOrder(assembly, { replace: [] }, safe, { from }).faults, `${make}: ${told}`).toEqual(
              [],
            )
            expect(madeSafe([corner], goal, [...before, ...safe], make), `${make}: ${told}`).toEqual([])
          }
        }
      })
  }
})

describe('another part, from any place of a plan', () => {
  for (const { name, corner, assembly } of vehicles) {
    const goals = wearing(assembly).filter(({ replace }) => long || !/beam|sub-frame/.test(replace[0]!))
    const first = Math.floor(random() * goals.length)
    for (const [nth, goal] of goals.entries()) {
      if (!long && nth !== first) continue
      const [own] = goal.replace as [string]
      const [beside] = goals[(nth + 4) % goals.length]!.replace as [string]
      const across = assembly.parts[own.replace('left', 'right')]!.id
      const others = [[beside], [own, beside], [across]].filter(
        (replace, i) => i < 2 || replace[0] !== own || long,
      )
      test(`PL20 ${name}: ${own}, then another`, () => {
        const support = supports[nth % 2]!
        const whole = actionsOf(planOf(assembly, goal, undefined, { effort, support }))
        const cuts = (long ? [1, 2, 3, 4, 5, 6, 7, 8] : [2, 4, 7]).map((part) =>
          Math.floor(((part + random()) / 9) * whole.length),
        )
        for (const [place, cut] of cuts.entries())
          for (const replace of long ? others : [others[place % others.length]!]) {
            const before = whole.slice(0, cut)
            const from = before.reduce(afterAction, {} as State)
            const other = { replace }
            const plan = planOf(assembly, other, undefined, { effort, support, from })
            const rest = actionsOf(plan)
            const told = `${cut} of ${whole.length}, after ${before.at(-1)?.id}, then ${replace.join()}`
            expect(judgeOrder(assembly, other, rest, { from }).faults, told).toEqual([])
            const broken = checkPlan([corner], other, [...before, ...rest])
              .filter(({ at }) => at >= cut)
              .filter((one) => !isTold(one, plan))
            expect(broken, told).toEqual([])
          }
      })
    }
  }
})

/** Lost because this part was not asked for when the vehicle was lifted: compared late, at the height of the sheet. */
const isTold = ({ rule, sentence }: { rule: string; sentence: string }, { troubles }: Plan): boolean =>
  rule === 'I16' ||
  (sentence === 'raised to the wrong height: the sheet' &&
    troubles.some((one) => one.startsWith('The heights were not recorded')))

describe('what a state says', () => {
  test('PL16 from the empty state it is the plan that it is without one', () => {
    expect(planOf(one, arm, undefined, { effort, from: {} })).toEqual(planOf(one, arm, undefined, { effort }))
  })
  test('PL17 a finished job leaves nothing to do', () => {
    const plan = planOf(one, arm, undefined, { effort, from: stateAfter(order.length) })
    expect(plan.bands).toEqual([])
    expect(plan.done.length).toBeGreaterThan(30)
  })
  test('PL17 what is done is told', () => {
    const plan = planOf(one, arm, undefined, { effort, from: stateAfter(20) })
    expect(plan.done).toEqual(expect.arrayContaining([order[10]!.words]))
    expect(actionsOf(plan).map(({ words }) => words)).not.toContain(order[10]!.words)
  })
  test('PL19 a mark that was never taken is told, and asked for no more', () => {
    const marks = Object.keys(stateAfter(order.length)).filter((key) =>
      /^mark .*pivot|^mark .*lower-/.test(key),
    )
    expect(marks.length).toBeGreaterThan(0)
    const cut = placeOf('take off front left lower-arm') + 1
    const from = Object.fromEntries(Object.entries(stateAfter(cut)).filter(([key]) => !marks.includes(key)))
    const plan = planOf(one, arm, undefined, { effort, from })
    expect(plan.troubles.join(' ')).toMatch(/was disturbed before its mark was recorded/)
    expect(judgeOrder(one, arm, actionsOf(plan), { from }).faults).toEqual([])
    expect(actionsOf(plan).filter(({ verb, id }) => verb === 'mark' && marks.includes(id))).toEqual([])
  })
  test('PL19 heights that were never recorded are those of the sheet', () => {
    const { heights: _, ...from } = stateAfter(placeOf('take off front left lower-arm') + 1)
    const { troubles } = planOf(one, arm, undefined, { effort, from })
    expect(troubles.join(' ')).toMatch(/heights were not recorded/)
  })
  test('PL19 a wheel off over stands that nobody saw loaded: that comes first', () => {
    const from = { ...stateAfter(placeOf('take off front left lower-arm') + 1), 'support front': 'on stands' }
    const plan = planOf(one, arm, undefined, { effort, from })
    expect(plan.troubles[0]).toMatch(/nobody has seen it carried/)
    expect(actionsOf(plan)[0]!.verb).toBe('see loaded')
  })
  refuses('contradiction', () =>
    planOf(one, arm, undefined, { effort, from: { 'part body': 'off', 'support front': 'on a jack' } }),
  )
  refuses('part-missing', () =>
    planOf(one, { replace: [], make: 'safe to roll' }, undefined, { effort, from: armGone }),
  )
  test('PL18 a broken part that is off: it stands, it does not roll', () => {
    const from = armGone
    const safe = actionsOf(planOf(one, { replace: [], make: 'safe to stand' }, undefined, { effort, from }))
    expect(safe.at(-1)!.verb).toBe('tag')
    expect(safe.length).toBeLessThan(8)
  })
  test('PL18 a vehicle on a jack alone is set down on stands first', () => {
    const from = stateAfter(placeOf('jack up front') + 1)
    const verbs = actionsOf(
      planOf(one, { replace: [], make: 'safe to stand' }, undefined, { effort, from }),
    ).map(({ verb }) => verb)
    expect(verbs.slice(0, 3)).toEqual(['stands', 'see loaded', 'tag'])
  })
  test('PL18 an open line is capped, and bled before it rolls', () => {
    const union = 'front left brake-hose-union'
    const from = {
      ...stateAfter(placeOf('take off front left wheel') + 1),
      [`joint ${union}`]: 'open',
      [`line ${union}`]: 'open',
    }
    const made = (make: 'safe to stand' | 'safe to roll') =>
      actionsOf(planOf(one, { replace: [], make }, undefined, { effort, from })).map(({ id }) => id)
    expect(made('safe to stand')).toContain(`cap ${union}`)
    expect(made('safe to roll')).toEqual(expect.arrayContaining([`close ${union}`, 'bleed', 'tag']))
  })
  test('PL18 the separate list of what is unsafe speaks', () => {
    const cut = placeOf('take off front left lower-arm') + 1
    expect(madeSafe([bus], arm, order.slice(0, cut), 'safe to roll').length).toBeGreaterThan(5)
    expect(madeSafe([bus], arm, order.slice(0, placeOf('jack up front') + 1), 'safe to stand').length).toBe(2)
  })
})

test('PL19 a mark that goes with its part is told once the part is to be replaced as well', () => {
  const assembly = vehicleNamed('semi-trailing-rear')
  const [trailing, shaft] = ['rear left trailing-arm', 'rear left drive-shaft'] as const
  const strip = actionsOf(planOf(assembly, { replace: [trailing] }, undefined, { effort }))
  const until = strip.findIndex(({ id }) => id === `take off ${trailing}`)
  const from = strip.slice(0, until + 1).reduce(afterAction, {} as State)
  const told = (replace: readonly string[]) =>
    planOf(assembly, { replace }, undefined, { effort, from }).troubles.filter((one) =>
      one.includes('on a part that goes'),
    )
  expect(told([trailing])).toEqual([])
  expect(told([trailing, shaft]).length).toBeGreaterThan(0)
})
