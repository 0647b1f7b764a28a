import type { Assembly, JointNode, PartNode } from './assembly.ts'
import { isSteeringPart } from './is-steering-part.ts'

const beside: readonly PartNode['kind'][] = ['hose', 'lead', 'boot', 'shield']

/**
 * Whether a joint belongs to the steering: of rack, box, drop arm, centre link, shaft, or of a rod that goes to them.
 *
 * @source definition
 */
export const isSteeringJoint = (
  assembly: Pick<Assembly, 'parts' | 'joints' | 'touching'>,
  joint: Pick<JointNode, 'kind' | 'joins'>,
): boolean =>
  !joint.joins.some((part) => beside.includes(assembly.parts[part]!.kind)) &&
  joint.joins.some((part) => isSteeringPart(assembly, part))
