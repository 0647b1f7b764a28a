import type { JointNode } from './assembly.ts'
import type { JointHabit } from './joint-habits.ts'
import { jointHabits } from './joint-habits.ts'

/**
 * What may seize in a joint, how often, and what that costs: a bolt through a rubber bush rusts into its sleeve, with
 * or without an eccentric on it.
 *
 * @source from memory; common practice, no source
 */
export const seizedRisk = ({ kind, file }: Pick<JointNode, 'kind' | 'file'>): JointHabit['seized'] =>
  jointHabits[bolts.includes(kind) && file.bush ? 'eccentric bolt' : kind].seized

const bolts: readonly JointNode['kind'][] = ['bolt', 'slotted bolt']
