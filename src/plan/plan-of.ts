import type { Kit } from '../kit/index.ts'
import { Refusal } from '../quantity/index.ts'
import type { Action } from './action.ts'
import { afterAction } from './after-action.ts'
import type { Assembly, Side, StandIn } from './assembly.ts'
import type { BestSequence } from './best-sequence.ts'
import { checkState } from './check-state.ts'
import { consequencesOf } from './consequences-of.ts'
import { factOf } from './fact-of.ts'
import type { Goal } from './goal.ts'
import { keys } from './keys.ts'
import { neededActions } from './needed-actions.ts'
import type { OrderEffort } from './order/best-order.ts'
import type { Plan, PlanBand, PlanLine } from './plan.ts'
import type { PlanRefusal } from './plan-refusal.ts'
import { sequenceOf } from './sequence-of.ts'
import { shoppingOf } from './shopping-of.ts'
import { soundSequence } from './sound-sequence.ts'
import type { State } from './state.ts'
import { stateAsFailed } from './state-as-failed.ts'
import { stationOf } from './station-of.ts'
import { toolsAgainstKit } from './tools-against-kit.ts'
import { totalMinutes } from './total-minutes.ts'
import { waysOn } from './ways-on.ts'
import { waysToSafety } from './ways-to-safety.ts'
import type { Work } from './work.ts'
import { workOf } from './work-of.ts'

/** What the workshop may choose. @source definition */
export interface PlanOptions {
  /** What carries the vehicle; by default a lift where the kit has one, else jack and stands. */
  readonly support?: 'jack and stands' | 'lift'
  /** Who takes the second look. */
  readonly checker?: Work['checker']
  /** How much may be searched; the same budget gives the same plan anywhere. */
  readonly effort?: OrderEffort
  /** What is so already; without it a sound vehicle on its wheels. What is done is not in the plan. */
  readonly from?: State
}

const usualBudget = 2e7

/**
 * The plan for a goal: the cheapest set of things to undo, the actions for it and for its reverse, in the cheapest
 * order that keeps all precedences, in bands of one station each; with time, what follows from it, what to have, and
 * what the kit lacks.
 *
 * @param goal parts to replace and joints to open, by the assembly's ids
 * @param kit what the workshop owns; without it nothing is missing
 * @throws {Refusal} `nothing-to-do`, `no-such-part`, `no-such-joint`, `no-way`, `too-many-ways`, `contradiction`, `part-missing`
 * @source own derivation: docs/methods/plan.md
 */
export function planOf(
  assembly: Assembly,
  goal: Goal,
  kit?: Kit,
  {
    support,
    checker = 'another person',
    effort = { budget: usualBudget },
    from: recorded = {},
  }: PlanOptions = {},
): Plan {
  const from = stateAsFailed(assembly, goal, recorded)
  const supports = Object.values(kit?.supports ?? {}).map(({ kind }) => kind)
  const held = heldNow(assembly, from) ?? support ?? (supports.includes('lift') ? 'lift' : 'jack and stands')
  const jacks = Math.max(1, supports.filter((kind) => kind === 'jack').length, jacksNow(assembly, from))
  const orders = (work: Work) => sideOrders(work).map((sides) => ({ support: held, jacks, sides }))
  const lacks = kit ? lackedBy(kit) : []
  checkState(assembly, from)
  const isFresh = Object.keys(from).length === 0
  const { make } = goal
  const { needed, work, ways, troubles } = make
    ? waysToSafety(assembly, { ...goal, make }, from, { lacks, checker, orders })
    : isFresh
      ? freshWays(assembly, goal, { lacks, checker, orders })
      : waysOn(assembly, goal, from, { lacks, checker, orders })
  const sound = ways.flatMap((rest) => {
    const best = soundSequence(assembly, goal, rest.actions, { from: rest.from, effort })
    return best ? [{ rest, best }] : []
  })
  if (sound.length === 0) throw unsound(isFresh)
  const { best, rest } = sound.reduce((least, one) =>
    one.best.minutes < least.best.minutes - 1e-9 ? one : least,
  )
  const { p50, p90 } = totalMinutes(best.actions, best.minutes)
  const set = best.actions
    .filter(({ verb }) => verb === 'set toe' || verb === 'set camber and caster')
    .flatMap(({ effects }) => Object.keys(effects))
    .filter((key) => key.startsWith('joint '))
    .map((key) => key.slice('joint '.length))
  return {
    bands: bandsOf(assembly, best, rest.from),
    needed,
    minutes: { p50, p90 },
    changes: { minutes: best.minutes, bound: best.bound },
    proven: best.proven,
    consequences: make ? [] : consequencesOf(work),
    shopping: shoppingOf(isFresh && !make ? work : workLeft(work, best.actions), set),
    missing: kit ? toolsAgainstKit(assembly, best.actions, kit) : [],
    done: rest.done,
    troubles,
  }
}

/** No order is given rather than one that breaks a rule. */
const unsound = (isFresh: boolean) =>
  new Refusal<PlanRefusal>({
    code: 'contradiction',
    at: isFresh ? 'goal' : 'from',
    sentence: 'Every order that was found breaks a rule, so none is given.',
    remedy: isFresh
      ? 'Plan each part by itself, or look at the corner model for what makes it so.'
      : 'Make the vehicle safe to stand or to roll first, then plan again; or plan each part by itself.',
  })

function freshWays(
  assembly: Assembly,
  goal: Goal,
  { lacks, checker, orders }: Parameters<typeof waysOn>[3],
): ReturnType<typeof waysOn> {
  const needed = neededActions(assembly, goal, lacks)
  const work = workOf(assembly, goal, needed.choice, checker)
  const ways = orders(work).map((options) => ({
    actions: sequenceOf(work, needed.choice, options),
    from: {},
    done: [],
  }))
  return { needed, work, ways, troubles: [] }
}

/** What holds the vehicle up already is kept. */
function heldNow(assembly: Assembly, state: State): PlanOptions['support'] {
  const held = assembly.axles.map((axle) => factOf(state, keys.support(axle)))
  if (held.some((one) => one.startsWith('on the lift'))) return 'lift'
  return held.some((one) => /^on (a jack|stands)/.test(one)) ? 'jack and stands' : undefined
}

const jacksNow = (assembly: Assembly, state: State): number =>
  Object.entries(state).filter(([key, is]) => key.startsWith('arm ') && /jack under|raised/.test(is)).length +
  assembly.axles.filter((axle) => factOf(state, keys.support(axle)) === 'on a jack').length

/** The work that is still to be shopped for: parts not in yet, joints not done up yet. */
function workLeft(work: Work, actions: readonly Action[]): Work {
  const joints = new Set(
    actions.flatMap(({ verb, joint }) => (joint && verb !== 'second check' ? [joint] : [])),
  )
  const parts = new Set(
    actions.flatMap(({ effects }) =>
      Object.entries(effects).flatMap(([key, is]) =>
        is === 'new' && key.startsWith('part ') ? [key.slice(5)] : [],
      ),
    ),
  )
  const kept = (ids: ReadonlySet<string>) => new Set([...ids].filter((id) => joints.has(id)))
  return { ...work, open: kept(work.open), bench: kept(work.bench), renewed: parts }
}

/** Where one jack or one steering lock serves both sides, either side may go first. */
function sideOrders({ open, assembly }: Work): readonly (readonly Side[])[] {
  const sides = new Set([...open].map((id) => assembly.joints[id]!.side))
  const both = sides.has('left') && sides.has('right')
  return both
    ? [
        ['left', 'right'],
        ['right', 'left'],
      ]
    : [['left', 'right']]
}

function lackedBy(kit: Kit): readonly StandIn[] {
  const pullers = Object.values(kit.pullers ?? {}).map(({ kind }) => kind)
  const supports = Object.values(kit.supports ?? {}).map(({ kind }) => kind)
  const lacks: StandIn[] = []
  if (!pullers.includes('spring compressor')) lacks.push('spring compressor')
  if (!supports.includes('jack')) lacks.push('jack under the arm')
  if (!supports.includes('stand')) lacks.push('axle on stands')
  return lacks
}

/** Lines in bands: a band ends where an action changes how the vehicle stands. */
function bandsOf(assembly: Assembly, { actions, waits }: BestSequence, from: State): readonly PlanBand[] {
  const bands: { station: string; lines: PlanLine[] }[] = []
  let state = from
  actions.forEach((action, at) => {
    const station = stationOf(assembly, state)
    const last = bands.at(-1)
    const line = lineOf(assembly, action, {
      waitsFor: waits
        .filter(({ next }) => next === at)
        .map(({ first, why, rule }) => ({ action: actions[first]!.id, why, rule: rule ?? null })),
      waitedForBy: waits.filter(({ first }) => first === at).map(({ next }) => actions[next]!.id),
    })
    if (last && (last.station === station || isPassing(station))) last.lines.push(line)
    else bands.push({ station, lines: [line] })
    state = afterAction(state, action)
  })
  return bands
}

/** On the way up: it belongs to where it came from. */
const isPassing = (station: string) => /on a jack|on stands$|on the lift$/.test(station)

const lineOf = (
  assembly: Assembly,
  action: Action,
  waits: Pick<PlanLine, 'waitsFor' | 'waitedForBy'>,
): PlanLine => ({
  action,
  letter: action.joint === undefined ? null : (assembly.joints[action.joint]?.letter ?? null),
  tool: action.tool,
  place: action.place,
  value:
    action.verb === 'final' && action.effects[keys.joint(action.joint!)] === 'final' ? action.joint! : null,
  cautions: action.cautions,
  why: action.why,
  ...waits,
})
