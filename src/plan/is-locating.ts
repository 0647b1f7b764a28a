import type { Assembly, JointNode, PartNode } from './assembly.ts'
import { isSteeringPart } from './is-steering-part.ts'

const structure: readonly PartNode['kind'][] = [
  'body',
  'sub-frame',
  'arm',
  'rod',
  'strut',
  'top mount',
  'knuckle',
  'ball joint',
  'kingpin',
  'axle beam',
  'shackle',
  'spring',
]
const loose: readonly JointNode['kind'][] = ['clip', 'plug', 'hose bracket', 'seat']

/**
 * Whether a joint is one of those that say where the knuckle is: once it is open, the knuckle moves further than hose
 * and lead reach. A tie rod's joints only let it steer, and a coil's seats say nothing.
 *
 * @source own derivation: docs/methods/plan.md
 */
export function isLocating(
  assembly: Pick<Assembly, 'parts' | 'joints' | 'touching'>,
  joint: Pick<JointNode, 'kind' | 'joins'>,
): boolean {
  if (loose.includes(joint.kind)) return false
  const parts = joint.joins.map((part) => assembly.parts[part]!)
  if (!parts.every((part) => structure.includes(part.kind))) return false
  if (parts.some((part) => part.kind === 'spring' && 'stores' in part.file && part.file.stores !== 'leaf'))
    return false
  if (parts.every((part) => part.kind === 'body' || part.kind === 'sub-frame')) return true
  return !parts.some((part) => isSteeringPart(assembly, part.id))
}
