import type { Act, JointState } from './act.ts'
import type { Joint } from './joint.ts'
import { stagesOf } from './stages-of.ts'

/**
 * What comes next at a joint; null when it is final. A castle nut that met its ceiling is to be undone.
 *
 * @source docs/methods/tightening-procedures.md, own derivation
 * @example nextAct(lowerBall, openJoint) // 'run up'
 */
export function nextAct(joint: Joint, { stage, made, fastener }: JointState): Act['act'] | null {
  const { procedure } = joint
  if (stage === 'final') return null
  if (stage === 'stopped') return 'undo'
  if (stage === 'open') return joint.singleUse && fastener !== 'new' ? 'fit' : 'run up'
  if (procedure.kind === 'hand snug') return 'snug'
  if (procedure.kind === 'castle slot')
    return stage === 'run up' ? 'pull' : stage === 'at floor' ? 'to slot' : 'pin'
  if (procedure.kind !== 'seat and back off') return stagesOf(joint)[made]?.by === 'turn' ? 'turn' : 'pull'
  if (stage === 'run up') return 'seat'
  if (stage === 'seated') return 'back off'
  if (stage === 'backed off' && procedure.bringUpTo !== null) return 'bring up'
  return stage !== 'float read' && procedure.endFloat !== null ? 'end float' : 'pin'
}
