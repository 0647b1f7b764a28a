import type { Assembly, HoldNode, JointNode, PartNode, StandIn } from './assembly.ts'
import { isStrutSpring } from './is-strut-spring.ts'
import { jointsOf } from './joints-of.ts'

/** A spring beside a joint, and what can let it down before that joint is cut. @source definition */
export interface SpringBeside {
  readonly hold: HoldNode
  /** A jack does not, where the joint itself is what must open for it. */
  readonly letDownBy: readonly StandIn[]
}

/**
 * Springs beside a joint that must be slack before a saw comes near. A spring within its strut is not one.
 *
 * @source common practice, no source
 */
export function springsBeside(assembly: Assembly, joint: JointNode): readonly SpringBeside[] {
  return Object.values(assembly.holds)
    .filter(
      (hold) =>
        hold.axle === joint.axle &&
        (hold.side === null || isOfAxle(assembly, joint) || hold.side === joint.side) &&
        !isStrutSpring(assembly, hold) &&
        (hold.joints.includes(joint.id) ||
          joint.joins.some((id) => id === hold.id || isUnder(assembly, id, hold.id))),
    )
    .map((hold) => ({
      hold,
      letDownBy: hold.standIns.filter((kind) => !isInTheWay(assembly, joint, hold, kind)),
    }))
}

function isUnder(assembly: Assembly, part: string, spring: string): boolean {
  const { kind } = assembly.parts[part]!
  if (kind === 'body' || kind === 'sub-frame') return false
  return jointsOf(assembly, spring).some(({ joins }) => joins.includes(part))
}

const early: readonly PartNode['kind'][] = ['hose', 'lead', 'height-sensor rod', 'drop link']

/** What the arm or the axle hangs on, or must be free of before it goes down; one jack lowers no whole axle. */
function isInTheWay(assembly: Assembly, joint: JointNode, hold: HoldNode, standIn: StandIn): boolean {
  if (joint.joins.some((id) => early.includes(assembly.parts[id]!.kind))) return true
  if (standIn !== 'jack under the arm') return false
  return isOfAxle(assembly, joint) || (hold.joints.includes(joint.id) && !hold.jackPath.includes(joint.id))
}

/** It holds a part that the axle has once, so both sides go down together. */
const isOfAxle = ({ parts }: Assembly, joint: JointNode): boolean =>
  joint.side === null ||
  joint.joins.some(
    (id) => parts[id]!.side === null && parts[id]!.kind !== 'body' && parts[id]!.kind !== 'sub-frame',
  )
