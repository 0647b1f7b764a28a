import type { Act, JointState, Now } from './act.ts'
import { afterCastleAct } from './castle-acts.ts'
import { checkJoint } from './check-joint.ts'
import { fastenRefusal } from './fasten-refusal.ts'
import { freshFastener, inPosition, outOfOrder, recorded, wrongJoint } from './guards.ts'
import { afterHubAct } from './hub-acts.ts'
import type { Joint } from './joint.ts'
import { afterStageAct } from './stage-acts.ts'

/**
 * A joint after one act, or the reason why it may not be. Nothing is corrected in silence: the state is what was done.
 *
 * @throws {Refusal} `out-of-order`, `wrong-joint`, `wrong-position`, `used-before`, `wrench-to-undo`, `never-back`, `past-slot`, `click-means-stop`
 * @throws {Refusal} `old-pin`, `hub-not-turned`, `end-float`, `wrong-angle`, `wrong-setting`, `outside-range`, `not-calibrated`, `above-proof`, `not-finite`
 * @source common practice, no source; FAA AC 43.13-1B, par. 7-40 f, for castle nuts; docs/methods/tightening-procedures.md
 * @example afterAct(lowerBall, openJoint, { act: 'run up' }, yard).stage // 'run up'
 * @example afterAct(lowerBall, openJoint, { act: 'back off', angle: deg(10) }, yard) // refused: never-back
 */
export function afterAct(joint: Joint, state: JointState, act: Act, now: Now): JointState {
  checkJoint(joint)
  if (act.act === 'undo') return undone(joint, state, act, now)
  if (act.act === 'fit') {
    if (state.stage !== 'open') throw outOfOrder(joint, state, act, 'Undo it first.')
    const fitted = recorded(state, act, now, { stage: 'open', fastener: act.fastener })
    if (act.fastener === 'used') freshFastener(joint, fitted)
    return fitted
  }
  if (act.act === 'run up') {
    if (state.stage !== 'open')
      throw outOfOrder(joint, state, act, 'It is run up already; undo it to begin again.')
    return recorded(state, act, now, { stage: 'run up' })
  }
  const { procedure } = joint
  if (procedure.kind === 'castle slot') return afterCastleAct(joint, procedure, state, act, now)
  if (procedure.kind === 'seat and back off') return afterHubAct(joint, procedure, state, act, now)
  if (procedure.kind !== 'hand snug') return afterStageAct(joint, state, act, now)
  if (act.act !== 'snug') throw wrongJoint(joint, act)
  if (state.stage !== 'run up') throw outOfOrder(joint, state, act, 'Run it up first.')
  freshFastener(joint, state)
  inPosition(joint, now, true)
  return recorded(state, act, now, { stage: 'final', made: 1 })
}

/** What has been pulled once is a used fastener from then on. */
function undone(joint: Joint, state: JointState, act: Act & { act: 'undo' }, now: Now): JointState {
  if (act.tool === 'torque wrench')
    throw fastenRefusal({
      code: 'wrench-to-undo',
      at: joint.name,
      given: act.tool,
      sentence: `A torque wrench was taken to undo ${joint.name}: that spoils its setting.`,
      remedy: 'Take a bar or spanner; have the wrench checked when it has happened.',
    })
  return recorded(state, act, now, {
    stage: 'open',
    made: 0,
    fastener: state.made > 0 ? 'used' : state.fastener,
  })
}
