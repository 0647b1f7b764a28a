import { boltBook, foldJob, type JobState } from '../job/index.ts'
import {
  type Action,
  type Assembly,
  assemblyOf,
  type Failure,
  type Goal,
  judgeOrder,
  type Plan,
  type PlanOptions,
  planOf,
  recordedState,
  type State,
} from '../plan/index.ts'
import { Refusal } from '../quantity/index.ts'
import { planCorner } from './plan-corner.ts'
import { failuresOfJob } from './plan-failures-of-job.ts'
import { goalOfJob } from './plan-goal-of-job.ts'
import { planWrenches } from './plan-wrenches.ts'
import { recordedFacts } from './recorded-facts.ts'
import type { SheetSources } from './sources.ts'

/** What a plan sheet is laid out from. Keep it: an order that is edited by hand is judged against it at once. @source definition */
export interface PlanOfJob {
  /** The vehicle as the log names it. */
  readonly vehicle: string
  readonly assembly: Assembly | null
  readonly goal: Goal | null
  /** What is so already by the log; empty for a plan from the sound vehicle. */
  readonly from: State
  readonly plan: Plan | null
  /** The plan's actions by id: a hand-made order is made of these. */
  readonly actions: Readonly<Record<string, Action>>
  /** Expected minutes of our own order, changes of tool and place included. */
  readonly minutes: number
  /** What each joint must be like when it is done, in words, by the assembly's ids. */
  readonly values: Readonly<Record<string, string>>
  /** Values that no torque wrench of the kit covers, as sentences. */
  readonly wrenches: readonly string[]
  readonly troubles: readonly string[]
}

/** How a job is planned. @source definition */
export interface PlanOfJobOptions extends PlanOptions {
  /** What is replaced and opened, by the assembly's ids; by default what the log says is replaced. */
  readonly goal?: Goal | undefined
  /** What went wrong, besides what the log says and is not put right. */
  readonly failed?: readonly Failure[] | undefined
  /** From the sound vehicle, whatever the log says was done already. */
  readonly afresh?: boolean | undefined
}

/**
 * The plan of a job, before it is laid out: the models that the job names as one assembly, the goal, the order, and
 * the values of the workshop's sheet. This searches, for as long as `effort` lets it; everything after it does not.
 *
 * What cannot be planned is told in `troubles`.
 *
 * @source own derivation: docs/methods/plan.md
 */
export function planOfJob(sources: SheetSources, options: PlanOfJobOptions = {}): PlanOfJob {
  const { goal: given, failed, afresh = false, ...how } = options
  const troubles: string[] = []
  const state = foldJob(sources.job.entries)
  const nothing = {
    vehicle: state.opened?.vehicle ?? 'Vehicle not named',
    assembly: null,
    goal: null,
    from: {},
    plan: null,
    actions: {},
    minutes: 0,
    values: {},
    wrenches: [],
  }
  const tell = (error: unknown) => {
    if (!(error instanceof Refusal)) throw error
    troubles.push(`${error.sentence} ${error.remedy}`)
    return null
  }
  const { corners, spec } = sources
  const models = [corners.front, ...(corners.rear ? [corners.rear] : [])]
  let assembly: Assembly
  try {
    assembly = assemblyOf(models.map((corner) => planCorner(corner, spec)))
  } catch (error) {
    tell(error)
    return { ...nothing, troubles }
  }
  if (!spec) troubles.push('No spec sheet: no joint has a value. Type them from your own information.')
  const said = given ? { goal: given, troubles: [] } : goalOfJob(assembly, state)
  troubles.push(...said.troubles)
  const failures = failuresOfJob(assembly, state, said.goal?.replace ?? [])
  troubles.push(...failures.troubles)
  const goal = withFailures(said.goal, failures.failed, failed)
  if (goal === null) {
    troubles.push(
      `The log names no part that was renewed or agreed to be. Choose what is to be replaced, by its id: “${example(assembly)}”.`,
    )
    return { ...nothing, assembly, troubles }
  }
  try {
    const goesOn = !afresh && (goal.make !== undefined || tellsHow(state))
    const from = how.from ?? (goesOn ? recordedState(assembly, recordedFacts(assembly, state)) : {})
    const plan = planOf(assembly, goal, sources.kit ?? undefined, { ...how, from })
    const order = plan.bands.flatMap(({ lines }) => lines.map(({ action }) => action))
    return {
      vehicle: nothing.vehicle,
      assembly,
      goal,
      from,
      plan,
      actions: Object.fromEntries(order.map((action) => [action.id, action])),
      minutes: judgeOrder(assembly, goal, order, { from }).minutes.all,
      values: valuesOf(assembly, sources, state),
      wrenches: planWrenches(assembly, order, sources),
      troubles: [...troubles, ...plan.troubles],
    }
  } catch (error) {
    tell(error)
    return { ...nothing, assembly, goal: null, troubles }
  }
}

/** What was named stands above what the log says of the same joint or part. */
function withFailures(
  goal: Goal | null,
  logged: readonly Failure[],
  named: readonly Failure[] = goal?.failed ?? [],
): Goal | null {
  const isNamed = ({ what, joint, part }: Failure) =>
    named.some((one) => one.what === what && one.joint === joint && one.part === part)
  const failed = [...logged.filter((one) => !isNamed(one)), ...named]
  return failed.length > 0 ? { replace: [], ...goal, failed } : goal
}

/** Whether a log tells how far things have come apart and what holds them: only from such a one a plan goes on. */
const tellsHow = ({ carried, placed, springs }: JobState): boolean =>
  [carried, placed, springs].some((list) => list.length > 0)

/** A part that wears, to show how one is named. */
const example = ({ parts }: Assembly): string => {
  const all = Object.values(parts)
  const worn = all.filter(({ file }) => file.wears?.length)
  return (
    (worn.find(({ kind }) => kind === 'arm' || kind === 'rod') ?? worn[0] ?? all[0])?.id ?? 'front right arm'
  )
}

function valuesOf(
  assembly: Assembly,
  { corners, spec, kit }: SheetSources,
  state: Parameters<typeof boltBook>[0]['state'],
): Readonly<Record<string, string>> {
  const book = boltBook({ state, corners, spec, kit })
  const found: Record<string, string> = {}
  for (const { id, name, axle, side } of Object.values(assembly.joints)) {
    const wheel = `${axle} ${side ?? 'left'}`
    const line = book.find(({ joint, wheels }) => joint === name && wheels.some((one) => one === wheel))
    if (line) found[id] = line.required.said
  }
  return found
}
