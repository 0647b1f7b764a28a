import { allRungs } from './all-rungs.ts'
import type { Assembly, JointNode } from './assembly.ts'
import type { Failure, Rung } from './failure.ts'
import { failureParts } from './failure-parts.ts'
import { jointsOf } from './joints-of.ts'
import { springsBeside } from './springs-beside.ts'

const burns = ['hose', 'damper', 'strut', 'lead', 'body', 'sub-frame']

/** I13: both parts go to scrap, and neither they nor what is joined to them burns, bursts or hides undercoat and tank. */
function mayHeat(assembly: Assembly, joint: JointNode, renewed: ReadonlySet<string>): boolean {
  const around = joint.joins.flatMap((id) => jointsOf(assembly, id))
  return (
    joint.joins.every((id) => renewed.has(id)) &&
    !around.some(({ file }) => file.bush?.bonded) &&
    !around.flatMap(({ joins }) => joins).some((id) => burns.includes(assembly.parts[id]!.kind))
  )
}

/** I13: the joint is scrap, and somebody has seen that the boss is steel. */
const mayStrike = (assembly: Assembly, joint: JointNode, { boss }: Failure, renewed: ReadonlySet<string>) =>
  boss === 'steel' && renewed.has(failureParts.withStud(assembly, joint).id)

/** Never into a rod under its spring, never into gas; a spring beside it can be let down first. */
function mayCut(assembly: Assembly, joint: JointNode): boolean {
  if (joint.kind === 'strut top nut') return false
  const isStem = joint.kind === 'stud nuts' || joint.kind === 'strut clamp'
  const gas = failureParts
    .joinedBy(assembly, joint)
    .some(({ file }) => 'stores' in file && file.stores === 'gas')
  return !(isStem && gas) && springsBeside(assembly, joint).every(({ letDownBy }) => letDownBy.length > 0)
}

/**
 * The ways that are left for a failure, gentlest first: what was tried in vain is none, nor what a rule forbids here.
 *
 * @param renewed parts that come new: the old ones are scrap
 * @source common practice, no source
 */
export function failureLadder(
  assembly: Assembly,
  failure: Failure,
  renewed: ReadonlySet<string>,
): readonly Rung[] {
  const joint = assembly.joints[failure.joint ?? '']
  if (!joint) return []
  return allRungs(failure, joint).filter((rung) => {
    if (failure.tried?.includes(rung)) return false
    if (rung === 'heat') return mayHeat(assembly, joint, renewed)
    if (rung === 'hammer') return mayStrike(assembly, joint, failure, renewed)
    if (rung === 'cut') return mayCut(assembly, joint)
    return true
  })
}
