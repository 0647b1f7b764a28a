import type { Need } from './action.ts'
import type { JointNode } from './assembly.ts'
import { keys } from './keys.ts'
import type { Work } from './work.ts'

/**
 * Hose and lead are fixed again once the knuckle is held in its place.
 *
 * @source common practice, no source
 */
export function knuckleHeldNeeds({ assembly, open }: Work, joint: JointNode): readonly Need[] {
  if (!joint.joins.some((part) => ['hose', 'lead', 'height-sensor rod'].includes(assembly.parts[part]!.kind)))
    return []
  return [...open]
    .map((id) => assembly.joints[id]!)
    .filter((other) => other.locates && other.axle === joint.axle && sameSide(other, joint))
    .map((other) => ({
      key: keys.joint(other.id),
      is: ['run up', 'final', 'checked'],
      why: 'the knuckle would hang on it',
      rule: 'I6',
    }))
}

const sameSide = (a: JointNode, b: JointNode) => a.side === null || b.side === null || a.side === b.side
