import { clearedBy, type JobState, type WheelName, wheelPlace } from '../job/index.ts'
import { type Assembly, branchesOf, type Failure, type FailureKind, type Goal } from '../plan/index.ts'
import { Refusal } from '../quantity/index.ts'

type Deviation = JobState['deviations'][number]
/** What the log can tell that changes no plan by itself. */
const without: readonly string[] = ['done out of order', 'other']

/**
 * What a job's log says has failed and is not put right yet, by the assembly's ids; each held against the vehicle, so
 * that one that cannot be so does not spoil the plan of the rest.
 *
 * @param replace parts that come new
 * @source own derivation: docs/methods/plan.md
 */
export function failuresOfJob(
  assembly: Assembly,
  state: JobState,
  replace: Goal['replace'],
): { readonly failed: readonly Failure[]; readonly troubles: readonly string[] } {
  const failed: Failure[] = []
  const troubles: string[] = []
  for (const deviation of state.deviations) {
    if (without.includes(deviation.what) || clearedBy(state, deviation.entry) !== null) continue
    const failure = failureOf(assembly, deviation)
    if (!failure) {
      troubles.push(
        `The log tells “${deviation.what}” of ${named(deviation)}, and no corner model has it there. The plan leaves it out; name joint or part, and the wheel.`,
      )
      continue
    }
    try {
      branchesOf(assembly, { replace, failed: [...failed, failure] })
      failed.push(failure)
    } catch (refusal) {
      if (!(refusal instanceof Refusal)) throw refusal
      troubles.push(`${refusal.sentence} ${refusal.remedy} The plan leaves it out.`)
    }
  }
  return { failed, troubles }
}

const named = ({ joint, part, wheel }: Deviation) =>
  `${(joint ?? part) ? `“${joint ?? part}”` : 'nothing'}${wheel ? ` (${wheel})` : ''}`

function failureOf({ joints, parts }: Assembly, { what, joint, part, wheel }: Deviation): Failure | null {
  const oneJoint = joint === undefined ? undefined : idOf(Object.values(joints), joint, wheel)
  const onePart = part === undefined ? undefined : idOf(Object.values(parts), part, wheel)
  if (oneJoint === null || onePart === null || (oneJoint ?? onePart) === undefined) return null
  return {
    what: what as FailureKind,
    ...(oneJoint === undefined ? {} : { joint: oneJoint }),
    ...(onePart === undefined ? {} : { part: onePart }),
  }
}

interface Node {
  readonly id: string
  readonly name: string
  readonly axle: string | null
  readonly side: string | null
}

/** Without a wheel a thing is known only where the vehicle has one of it. */
function idOf(nodes: readonly Node[], name: string, wheel: WheelName | undefined): string | null {
  const all = nodes.filter((node) => node.name === name)
  if (wheel === undefined) return all.length === 1 ? all[0]!.id : null
  const { axle, side } = wheelPlace(wheel)
  return all.find((node) => node.axle === axle && (node.side === side || node.side === null))?.id ?? null
}
