import { type Action, judgeOrder, type Plan, type PlanLine, totalMinutes } from '../plan/index.ts'
import { planAlternatives } from './plan-alternatives.ts'
import { planBands } from './plan-bands.ts'
import { planBranches } from './plan-branches.ts'
import { planChoices } from './plan-choices.ts'
import { planConsequences } from './plan-consequences.ts'
import { planLine } from './plan-line.ts'
import { planMissing } from './plan-missing.ts'
import { type PlanOfJob, type PlanOfJobOptions, planOfJob } from './plan-of-job.ts'
import { orderOfIds } from './plan-order-of-ids.ts'
import type { PlanSheet } from './plan-sheet.ts'
import { planTimeWords } from './plan-time-words.ts'
import type { SheetSources } from './sources.ts'

/** How a plan sheet is made. @source definition */
export interface PlanSheetOptions extends PlanOfJobOptions {
  /** Ids of actions in an order made by hand; by default our own order. */
  readonly order?: readonly string[] | undefined
  /** A plan of this job made before, by `planOfJob`; nothing is searched then, and `goal` and the like do not count. */
  readonly planned?: PlanOfJob | undefined
}

/**
 * The plan of a job as one plain value: bands, lines, values of the workshop's sheet, time, shopping, what follows.
 * With an order made by hand: its lines as they stand, each broken rule at its line, its cost against our own.
 *
 * What cannot be planned is told in `troubles`; what may be chosen stands all the same.
 *
 * @source own derivation: docs/methods/plan.md
 */
export function planSheetFrom(sources: SheetSources, options: PlanSheetOptions = {}): PlanSheet {
  const { order, planned: before, ...how } = options
  const planned = before ?? planOfJob(sources, how)
  const { assembly, goal, plan, troubles } = planned
  const title = planTitle(sources, planned.vehicle)
  if (!assembly || !goal || !plan)
    return { ...empty, title, choices: assembly ? planChoices(assembly, goal) : [], troubles: [...troubles] }
  const lines: Record<string, PlanLine> = Object.fromEntries(
    plan.bands.flatMap((band) => band.lines.map((line) => [line.action.id, line])),
  )
  const byHand = order ? orderOfIds(planned.actions, order) : null
  const actions = byHand?.actions ?? Object.values(planned.actions)
  const judged = judgeOrder(assembly, goal, actions, { from: planned.from })
  const placeOf = new Map(actions.map((action, at) => [action, at]))
  const bands = planBands(assembly, actions, planned.from).map((band) => ({
    station: band.station,
    lines: band.actions.map((action) => {
      const at = placeOf.get(action)
      const faults = judged.faults.filter((fault) => fault.at === at)
      return planLine(planned, lines[action.id]!, faults)
    }),
  }))
  const { tools, places, sides, axles } = judged.minutes
  const branches = planBranches(assembly, goal)
  return {
    title,
    goal: [
      ...(goal.make ? [`make it ${goal.make}`] : []),
      ...goal.replace.map((id) => assembly.parts[id]!.called),
      ...(goal.open ?? []).map((id) => assembly.joints[id]!.called),
      ...branches.map(({ because }) => because),
    ],
    choices: planChoices(assembly, goal),
    bands,
    size: `${counted(actions.length, 'action')}, ${counted(bands.length, 'station')}`,
    done: doneOf(plan, actions.length),
    time: timeOf(actions, tools + places + sides + axles),
    proof: byHand ? '' : proofOf(plan),
    against: byHand
      ? against(judged.minutes.all - planned.minutes, byHand.leftOut, judged.faults.length)
      : '',
    brokenLines: new Set(judged.faults.map(({ at }) => at)).size,
    shopping: [
      { heading: 'Parts', items: plan.shopping.parts },
      { heading: 'Used once', items: plan.shopping.singleUse },
      { heading: 'Used up', items: plan.shopping.consumables },
    ].filter(({ items }) => items.length > 0),
    missing: [...planMissing(plan.missing), ...planned.wrenches],
    consequences: planConsequences(assembly, plan.consequences),
    branches,
    alternatives: planAlternatives(plan),
    cautions,
    troubles: [...troubles, ...(byHand?.troubles ?? [])],
  }
}

function planTitle({ job, spec }: SheetSources, vehicle: string): PlanSheet['title'] {
  return { vehicle, job: job.job, workshop: job.workshop, source: spec?.source ?? '' }
}

const empty: Omit<PlanSheet, 'title'> = {
  goal: [],
  choices: [],
  bands: [],
  size: '',
  done: '',
  time: '',
  proof: '',
  against: '',
  brokenLines: 0,
  shopping: [],
  missing: [],
  consequences: [],
  branches: [],
  alternatives: [],
  cautions: [],
  troubles: [],
}

/** @source common practice, no source; who may be under a vehicle: docs/methods/plan.md, I1 */
const cautions: readonly string[] = [
  'Never get under a vehicle that a jack alone carries: on its wheels, on ramps, in a pit, or on stands that you have seen take the load.',
  'A spring stores enough to kill: what holds it in comes apart only where this plan says so, and with its stand-in in place.',
  'The plan knows the corner model, not this vehicle. The maker’s information, local law and what you see stand above it.',
]

const counted = (count: number, what: string) => `${count} ${what}${count === 1 ? '' : 's'}`

function doneOf({ done }: Plan, left: number): string {
  if (done.length === 0) return ''
  return `${counted(done.length, 'action')} ${done.length === 1 ? 'is' : 'are'} done by the record, ${left} ${left === 1 ? 'is' : 'are'} left`
}

function timeOf(actions: readonly Action[], changes: number): string {
  if (actions.length === 0) return ''
  const { p50, p90 } = totalMinutes(actions, changes)
  return `half of such jobs take less than ${planTimeWords(p50)}, nine of ten less than ${planTimeWords(p90)}`
}

function proofOf({ proven, changes }: Plan): string {
  if (proven) return 'Proven: no order of these actions has less walking about.'
  if (changes.bound < 0.5)
    return 'Not proven: an order with less walking about was not found, and not ruled out.'
  const least = planTimeWords(Math.max(changes.minutes - changes.bound, 0))
  return `Not proven: of ${planTimeWords(changes.minutes)} of changing tool and place another order might save up to ${least}.`
}

/** An order that leaves something out is not compared: it does less. */
function against(more: number, leftOut: number, faults: number): string {
  if (leftOut > 0) return ''
  if (Math.abs(more) < 0.5) return 'No longer than our own order'
  if (more > 0) return `${planTimeWords(more)} more than our own order`
  const less = `${planTimeWords(-more)} less than our own order`
  return faults > 0 ? `${less}, by breaking rules` : less
}
