import type { Action } from './action.ts'
import { agrees } from './agrees.ts'
import type { Assembly, PartNode } from './assembly.ts'
import { changeMinutes } from './change-minutes.ts'
import { factOf } from './fact-of.ts'
import type { Goal } from './goal.ts'
import type { Moment } from './interlocks/moment.ts'
import { interlocks } from './interlocks-table.ts'
import { keyWords } from './key-words.ts'
import { liesLoose } from './lies-loose.ts'
import { meanMinutes } from './mean-minutes.ts'
import type { RuleId } from './rule-id.ts'
import type { State } from './state.ts'
import { wholeGoal } from './whole-goal.ts'

/** What an order breaks, where. @source definition */
export interface OrderFault {
  /** Place of the action in the order, from 0. */
  readonly at: number
  readonly action: string
  /** An interlock, or that it cannot be done yet. */
  readonly rule: RuleId | 'not yet'
  readonly would: string
  readonly instead: string
}

/** What an order breaks and costs. @source definition */
export interface JudgedOrder {
  readonly faults: readonly OrderFault[]
  /** Expected minutes of the work itself, and of changing tool, place, side and axle. */
  readonly minutes: {
    readonly work: number
    readonly tools: number
    readonly places: number
    readonly sides: number
    readonly axles: number
    readonly all: number
  }
  readonly changes: { readonly tools: number; readonly stations: number; readonly sides: number }
  /** The state after it. */
  readonly state: State
}

/**
 * Does an order in the head, action by action, and tells every rule it breaks at its place: what would happen, what
 * to do instead; and what the order costs. An action that breaks a rule is taken as done all the same.
 *
 * @param from the state before the first action
 * @throws {Refusal} `no-such-failure`, `no-way-left`
 * @source own derivation: docs/methods/plan.md
 */
export function judgeOrder(
  assembly: Assembly,
  goal: Goal,
  actions: readonly Action[],
  { from = {} }: { readonly from?: State } = {},
): JudgedOrder {
  const renewed = new Set(wholeGoal(assembly, goal).replace)
  const faults: OrderFault[] = []
  const sums = { work: 0, tools: 0, places: 0, sides: 0, axles: 0 }
  const changes = { tools: 0, stations: 0, sides: 0 }
  const state: Record<string, string> = { ...from }
  const looseAt = liesLoose(assembly, from)
  actions.forEach((action, at) => {
    for (const fault of faultsOf({ assembly, state, action, renewed }, looseAt(state, action)))
      faults.push({ at, action: action.id, ...fault })
    sums.work += meanMinutes(action.minutes)
    const before = actions[at - 1]
    if (before) {
      const change = changeMinutes(before, action)
      sums.tools += change.tool
      sums.places += change.place
      sums.sides += change.side
      sums.axles += change.axle
      if (change.tool > 0) changes.tools++
      if (change.side > 0) changes.sides++
    }
    if (Object.keys(action.effects).some((key) => key.startsWith('support ') || key.startsWith('arm ')))
      changes.stations++
    Object.assign(state, action.effects)
  })
  const all = sums.work + sums.tools + sums.places + sums.sides + sums.axles
  return { faults, minutes: { ...sums, all }, changes, state }
}

/** What one action breaks: the interlocks first; then each need that none of them has told already. */
function faultsOf(moment: Moment, loose: PartNode | null): readonly Omit<OrderFault, 'at' | 'action'>[] {
  const { assembly, state, action } = moment
  const faults: Omit<OrderFault, 'at' | 'action'>[] = []
  for (const rule of rules) {
    const broken = rule(moment)
    if (broken) faults.push(broken)
  }
  for (const need of action.needs) {
    if (need.custom) continue
    const is = factOf(state, need.key)
    if (need.is.includes(is) || (need.rule && faults.some(({ rule }) => rule === need.rule))) continue
    faults.push({
      rule: need.rule ?? 'not yet',
      would: `It cannot be done yet: ${keyWords(assembly, need.key)} ${agrees(keyWords(assembly, need.key), 'is', 'are')} ${is}.`,
      instead: `It must first be ${anyOf(need.is)}: ${need.why}.`,
    })
  }
  if (loose)
    faults.push({
      rule: 'not yet',
      would: `The ${loose.called} ${agrees(loose.called, 'was', 'were')} put back, held by nothing: it falls out meanwhile.`,
      instead: `Undo the rest of its corner first, or fasten the ${loose.called}.`,
    })
  return faults
}

const rules = Object.values(interlocks)

/** "off, hung or freed" */
const anyOf = (values: readonly string[]): string =>
  values.length < 2 ? values.join() : `${values.slice(0, -1).join(', ')} or ${values.at(-1)}`
