import { Refusal } from '../quantity/index.ts'
import { allRungs } from './all-rungs.ts'
import type { Assembly, PartNode } from './assembly.ts'
import type { Failure } from './failure.ts'
import { type Branch, branchOf } from './failure-branch.ts'
import { failureMisfit } from './failure-misfit.ts'
import type { Goal } from './goal.ts'
import type { PlanRefusal } from './plan-refusal.ts'

/**
 * What the failures of a goal make of its plan, in their order. What one costs another may make use of: a part that
 * comes new is scrap for all of them.
 *
 * @throws {Refusal} `no-such-failure` when a joint or part cannot have it
 * @throws {Refusal} `no-way-left` when everything was tried or is forbidden, or it costs what carries the rest
 * @source own derivation: docs/methods/plan.md
 */
export function branchesOf(assembly: Assembly, { replace, failed = [] }: Goal): readonly Branch[] {
  const renewed = new Set(replace)
  const found = new Map<Failure, Branch>()
  // What is lost anyway is known first; then each in its turn may make use of it.
  const climbs = (one: Failure) =>
    one.joint !== undefined &&
    assembly.joints[one.joint] !== undefined &&
    allRungs(one, assembly.joints[one.joint]!).length > 0
  for (const failure of [...failed.filter((one) => !climbs(one)), ...failed.filter(climbs)]) {
    const misfit = failure.what === 'wrong part in the box' ? null : failureMisfit(assembly, failure, renewed)
    if (misfit) throw noSuch(failure.joint ?? failure.part, misfit)
    const branch = branchOf(assembly, failure, renewed)
    found.set(failure, branch)
    for (const id of branch.replaced) renewed.add(id)
  }
  const branches = failed.map((failure) => found.get(failure)!)
  for (const { failure, joint, rung, replaced } of branches) {
    const misfit = failureMisfit(assembly, failure, renewed)
    if (misfit) throw noSuch(failure.part ?? failure.joint, misfit)
    const carriers = joint?.joins.map((id) => assembly.parts[id]!) ?? []
    const whole =
      replaced.map((id) => assembly.parts[id]!).find(isOfItsOwn) ??
      (carriers.every(isOfItsOwn) ? carriers.find(({ kind }) => kind !== 'body') : undefined)
    if (whole)
      throw new Refusal<PlanRefusal>({
        code: 'no-way-left',
        at: 'goal.failed',
        given: whole.id,
        sentence: `“${failure.what}”${joint ? ` at the ${joint.called}` : ''}: that costs the ${whole.called} itself, a job of its own that no branch plans.`,
        remedy:
          'Make it safe to stand, write down who was told, and have it renewed or repaired by those who may.',
      })
    if (joint && rung === null && climbs(failure))
      throw new Refusal<PlanRefusal>({
        code: 'no-way-left',
        at: 'goal.failed',
        given: joint.id,
        sentence: `“${failure.what}” at the ${joint.called}: every way was tried, or is forbidden there.`,
        remedy:
          'Make it safe to stand, and take its neighbours off with it as one piece, or ask who makes it.',
      })
  }
  return branches
}

/** What carries everything else, unless something of it wears: it is planned then like any other part. */
const isOfItsOwn = ({ kind, file }: PartNode) =>
  kind === 'body' || ((kind === 'sub-frame' || kind === 'axle beam') && !file.wears?.length)

const noSuch = (
  given = '',
  sentence: string,
  remedy = 'Name what failed as the log does, with axle and side: “front left lower-arm-bolt”.',
) => new Refusal<PlanRefusal>({ code: 'no-such-failure', at: 'goal.failed', given, sentence, remedy })
