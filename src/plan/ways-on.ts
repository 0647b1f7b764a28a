import { Refusal } from '../quantity/index.ts'
import type { Action } from './action.ts'
import { afterAction } from './after-action.ts'
import type { Assembly, StandIn } from './assembly.ts'
import type { Choice } from './choice.ts'
import { choiceIn } from './choice-in.ts'
import { consequencesOf } from './consequences-of.ts'
import { factOf } from './fact-of.ts'
import type { Goal } from './goal.ts'
import { interlocks } from './interlocks-table.ts'
import { isDone } from './is-done.ts'
import { isUndone } from './is-undone.ts'
import { jointStageOf } from './joint-stage-of.ts'
import { jointsOf } from './joints-of.ts'
import { keys } from './keys.ts'
import { liesLoose } from './lies-loose.ts'
import { lostForGood } from './lost-for-good.ts'
import { neededActions } from './needed-actions.ts'
import { neededChoices } from './needed-choices.ts'
import type { PlanRefusal } from './plan-refusal.ts'
import { type Rest, restOf } from './rest-of.ts'
import { type SequenceOptions, sequenceOf } from './sequence-of.ts'
import type { State } from './state.ts'
import type { WaysOn } from './ways.ts'
import { waysToSafety } from './ways-to-safety.ts'
import { whatIsLeft } from './what-is-left.ts'
import { wholeFrom } from './whole-from.ts'
import { wholeGoal } from './whole-goal.ts'
import type { Work } from './work.ts'
import { workOf } from './work-of.ts'

/**
 * The ways to go on from a state to the end of a job: with what would have been undone from the sound vehicle where
 * that covers what is undone, else with the cheapest set that has in it what is undone.
 *
 * @param orders for each, how the vehicle is held and which side goes first
 * @param isTurned what is undone was put back already
 * @throws {Refusal} `contradiction` when none works
 * @source own derivation: docs/methods/plan.md
 */
export function waysOn(
  assembly: Assembly,
  goal: Goal,
  state: State,
  {
    lacks,
    checker,
    orders,
  }: {
    readonly lacks: readonly StandIn[]
    readonly checker: Work['checker']
    readonly orders: (work: Work) => readonly SequenceOptions[]
  },
  isTurned = false,
): WaysOn {
  const needed = neededActions(assembly, goal, lacks)
  const fresh = needed.choice
  const full = wholeGoal(assembly, goal)
  const left: Goal = {
    replace: full.replace.filter((id) => !isOut(assembly, state, id)),
    open: (full.open ?? []).filter((id) => factOf(state, keys.joint(id)) === 'closed'),
  }
  const touched = choiceIn(assembly, state, fresh, [1, 7])
  const undone = choiceIn(assembly, state, fresh, [1, 4])
  const isMore = left.replace.length + left.open!.length > 0
  const isWhole =
    left.replace.length === full.replace.length && left.open!.length === (full.open ?? []).length
  // The cheapest of all that has in it what is undone is the cheapest of those that have.
  const more =
    isWhole && covers(assembly, fresh, undone)
      ? fresh
      : isMore
        ? neededChoices(assembly, left, lacks, undone).best
        : undone
  const again = new Set([
    ...[...more.open, ...more.bench].filter(
      (id) => !isUndone(undone, id) && jointStageOf(factOf(state, keys.joint(id))) > 3,
    ),
    ...[...more.off].filter((id) => factOf(state, keys.part(id)) === 'new'),
  ])
  const wanted = new Set([...more.open, ...more.bench, ...more.off])
  const stays = (id: string) => !isUndone(more, id)
  const candidates = [
    () => (covers(assembly, fresh, touched) ? fresh : null),
    () => neededChoices(assembly, left, lacks, joined(touched, more)).best,
  ]
  for (const candidate of candidates) {
    const choice = candidate()
    if (!choice) continue
    const work = workOf(assembly, withNew(assembly, goal, state), choice, checker)
    const axles = consequencesOf(work).flatMap(({ kind, axle }) => (kind === 'angles' && axle ? [axle] : []))
    const ways = orders(work).flatMap((options) => {
      const whole = wholeFrom(work, sequenceOf(work, choice, options), state)
      const isEnd = (end: State) => whatIsLeft(assembly, full, end, axles).length === 0
      const rest = restOf(assembly, whole, state, { isReached: isEnd, again, wanted, stays })
      if (!rest || breaks(work, rest)) return []
      return [{ ...rest, done: behind(whole, rest, state) }]
    })
    if (ways.length > 0)
      return {
        needed: choice === fresh ? needed : { ...needed, choice, alternative: null },
        work,
        ways,
        troubles: lostForGood(work, state),
      }
  }
  const later = isTurned ? null : afterPutBack(assembly, goal, state, { lacks, checker, orders })
  if (later) return later
  throw new Refusal<PlanRefusal>({
    code: 'contradiction',
    at: 'from',
    sentence: 'No order was found that goes on from the state as recorded.',
    remedy:
      'Look whether what is recorded is so: a part that is off while a joint of it is told to be done up.',
  })
}

/** What came new before the goal was this one has its consequences too, until the vehicle is handed over. */
const withNew = ({ parts }: Assembly, goal: Goal, state: State): Goal =>
  factOf(state, keys.handover) === 'done'
    ? goal
    : {
        ...goal,
        replace: [
          ...new Set([
            ...goal.replace,
            ...Object.keys(parts).filter((id) => factOf(state, keys.part(id)) === 'new'),
          ]),
        ],
      }

/** Whether a rule is broken in it, or a part that was put back lies loose meanwhile. */
function breaks({ assembly, renewed }: Work, { actions, from }: Rest): boolean {
  let state = from
  const loose = liesLoose(assembly, from)
  for (const action of actions) {
    if (Object.values(interlocks).some((rule) => rule({ assembly, state, action, renewed }))) return true
    if (loose(state, action)) return true
    state = afterAction(state, action)
  }
  return false
}

/** Put back first, down onto its wheels, and then on as from there: where wheel nuts must be cracked on the ground. */
function afterPutBack(
  assembly: Assembly,
  goal: Goal,
  state: State,
  how: Parameters<typeof waysOn>[3],
): WaysOn | null {
  const back = putBack(assembly, state, how)
  if (!back) return null
  const first = back.actions
    .filter(({ verb }) => verb !== 'tag')
    .map((action) => ({ ...action, id: `${action.id}, put back` }))
  if (first.length === 0) return null
  const on = waysOn(assembly, goal, first.reduce(afterAction, back.from), how, true)
  const ways = on.ways.map(({ actions, done }) => ({
    actions: [...first, ...actions],
    from: back.from,
    done,
  }))
  return { ...on, ways }
}

/** As if it were to be rolled; null where that cannot be. */
function putBack(assembly: Assembly, state: State, how: Parameters<typeof waysOn>[3]) {
  try {
    return waysToSafety(assembly, { replace: [], make: 'safe to roll' }, state, how).ways[0]!
  } catch (error) {
    if (error instanceof Refusal) return null
    throw error
  }
}

/** What of a whole order the state has behind it, in words. */
const behind = (whole: readonly Action[], { actions }: Rest, state: State): readonly string[] => {
  const left = new Set(actions.map(({ id }) => id))
  return whole
    .filter((action) => !left.has(action.id) && isDone(action, state))
    .filter(({ effects }) => Object.keys(effects).some((key) => state[key] !== undefined))
    .map(({ words }) => words)
}

/** New, laid beside the new one, or off and free of all that it was joined to. */
function isOut(assembly: Assembly, state: State, id: string): boolean {
  const is = factOf(state, keys.part(id))
  if (is === 'new' || factOf(state, keys.compared(id)) === 'beside the old') return true
  return (
    is !== 'fitted' && jointsOf(assembly, id).every((joint) => factOf(state, keys.joint(joint.id)) === 'open')
  )
}

/** Whether a choice has in it all that is undone, held by the same. A lock nut that was slackened to set is set again. */
const covers = ({ joints }: Assembly, choice: Choice, undone: Choice): boolean =>
  [...undone.open].every((id) => choice.open.has(id) || joints[id]!.adjusts) &&
  [...undone.bench].every((id) => choice.bench.has(id)) &&
  [...undone.off].every((id) => choice.off.has(id)) &&
  [...undone.letDown].every((id) => choice.letDown.has(id)) &&
  [...undone.raised].every((where) => choice.raised.has(where)) &&
  Object.entries(undone.standIns).every(([hold, standIn]) => choice.standIns[hold] === standIn)

const joined = (a: Choice, b: Choice): Choice => ({
  open: new Set([...a.open, ...b.open]),
  bench: new Set([...a.bench, ...b.bench].filter((id) => !a.open.has(id) && !b.open.has(id))),
  off: new Set([...a.off, ...b.off]),
  standIns: { ...b.standIns, ...a.standIns },
  letDown: new Set([...a.letDown, ...b.letDown]),
  raised: new Set([...a.raised, ...b.raised]),
  why: { ...b.why, ...a.why },
})
