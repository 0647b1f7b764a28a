import { Refusal } from '../quantity/index.ts'
import type { Assembly, StandIn } from './assembly.ts'
import type { Choice } from './choice.ts'
import type { Goal } from './goal.ts'
import { neededChoices } from './needed-choices.ts'
import type { PlanRefusal } from './plan-refusal.ts'
import { wholeGoal } from './whole-goal.ts'

/** What must be undone, and why; and what nearly won. @source definition */
export interface NeededActions {
  readonly choice: Choice
  /** Expected minutes of it, there and back. */
  readonly minutes: number
  /** Each joint to open, part to take off and spring to hold, with its reason. */
  readonly reasons: readonly NeededThing[]
  readonly alternative: Alternative | null
}

/** One thing that must be undone. @source definition */
export interface NeededThing {
  readonly id: string
  readonly what: 'open' | 'open on the bench' | 'take off' | 'hold' | 'let down' | 'raise to ride height'
  readonly called: string
  readonly why: string
}

/** The way that nearly won. @source definition */
export interface Alternative {
  readonly choice: Choice
  readonly extraMinutes: number
  /** What it does besides, and what it spares. */
  readonly more: readonly string[]
  readonly less: readonly string[]
}

/**
 * The cheapest complete set of things to undo for a goal, exactly, with the reason for each, and the set that nearly
 * won with what it costs more.
 *
 * @param lacks stand-ins whose tool the kit lacks
 * @throws {Refusal} `nothing-to-do`, `no-such-part`, `no-such-joint`, `no-way`, `too-many-ways`, `no-such-failure`, `no-way-left`
 * @source own derivation: docs/methods/plan.md
 */
export function neededActions(assembly: Assembly, goal: Goal, lacks: readonly StandIn[] = []): NeededActions {
  checkGoal(assembly, wholeGoal(assembly, goal))
  const { best, minutes, second } = neededChoices(assembly, goal, lacks)
  const things = (choice: Choice) => thingsOf(assembly, choice)
  const reasons = things(best)
  const labels = (all: readonly NeededThing[]) => new Set(all.map(({ what, called }) => `${what} ${called}`))
  const mine = labels(reasons)
  const other = second ? labels(things(second.choice)) : new Set<string>()
  return {
    choice: best,
    minutes,
    reasons,
    alternative: second && {
      choice: second.choice,
      extraMinutes: second.minutes - minutes,
      more: [...other].filter((label) => !mine.has(label)),
      less: [...mine].filter((label) => !other.has(label)),
    },
  }
}

function checkGoal(assembly: Assembly, goal: Goal): void {
  const joints = goal.open ?? []
  if (goal.replace.length + joints.length === 0)
    throw new Refusal<PlanRefusal>({
      code: 'nothing-to-do',
      at: 'goal',
      sentence: 'There is no part to replace and no joint to open.',
      remedy: 'Name at least one.',
    })
  const refuse = (code: 'no-such-part' | 'no-such-joint', given: string, what: string) =>
    new Refusal<PlanRefusal>({
      code,
      at: 'goal',
      given,
      sentence: `There is no ${what} “${given}” on this vehicle${given === 'body' ? ' that can be replaced' : ''}.`,
      remedy: `Name one as the corner model does, with axle and side: “front left lower-arm”.`,
    })
  for (const id of goal.replace)
    if (assembly.parts[id] === undefined || assembly.parts[id].kind === 'body')
      throw refuse('no-such-part', id, 'part')
  for (const id of joints) if (assembly.joints[id] === undefined) throw refuse('no-such-joint', id, 'joint')
}

function thingsOf({ joints, parts, holds }: Assembly, choice: Choice): readonly NeededThing[] {
  const why = (id: string) => choice.why[id] ?? 'it is in the goal'
  const thing = (what: NeededThing['what'], id: string, called: string, reason = why(id)): NeededThing => ({
    id,
    what,
    called,
    why: reason,
  })
  return [
    ...[...choice.off].map((id) => thing('take off', id, parts[id]!.called)),
    ...[...choice.open].map((id) => thing('open', id, joints[id]!.called)),
    ...[...choice.bench].map((id) => thing('open on the bench', id, joints[id]!.called)),
    ...Object.entries(choice.standIns).map(([id, standIn]) =>
      thing('hold', id, `${holds[id]!.called}: ${standIn}`, why(`hold ${id}`)),
    ),
    ...[...choice.letDown].map((id) => thing('let down', id, holds[id]!.called, why(`let down ${id}`))),
    ...[...choice.raised].map((where) => thing('raise to ride height', where, where, why(`raised ${where}`))),
  ]
}
