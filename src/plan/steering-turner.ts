import type { Action } from './action.ts'
import { aftercareActions } from './aftercare-actions.ts'
import type { AxleName, JointNode } from './assembly.ts'

/** Where the steering is turned to. @source definition */
export type Turned = 'left lock' | 'right lock' | 'straight'

/**
 * Turns the steering where a joint's access asks for it, once for all joints that ask for the same.
 *
 * @param stage tells the turns of one stage from those of another
 * @param push takes the action
 * @param from where it stands
 * @source own derivation: docs/methods/plan.md
 */
export function steeringTurner(
  axles: readonly AxleName[],
  stage: 'strip' | 'refit' | 'ride',
  push: (action: Action, to: Turned) => void,
  from: Turned = 'straight',
): { readonly to: (turned: Turned) => void; readonly for: (joint: JointNode) => void } {
  const care = aftercareActions(axles)
  let now = from
  let turns = 0
  const to = (turned: Turned) => {
    if (now === turned) return
    now = turned
    push(care.steer(turned, `${stage} ${++turns}`), turned)
  }
  return {
    to,
    for: (joint) => {
      const lock = joint.file.access?.find(({ steering }) => steering)?.steering
      if (lock) to(mirrored(lock, joint))
    },
  }
}

/** The file draws the left corner: the right one's locks are the other way round. */
function mirrored(lock: Turned, { side }: JointNode): Turned {
  if (side !== 'right' || lock === 'straight') return lock
  return lock === 'left lock' ? 'right lock' : 'left lock'
}
