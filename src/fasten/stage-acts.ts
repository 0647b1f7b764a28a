import { formatAngle, rad } from '../quantity/index.ts'
import type { Act, JointState, Now } from './act.ts'
import { fastenRefusal, finite } from './fasten-refusal.ts'
import { freshFastener, inPosition, outOfOrder, pulled, recorded, wrongJoint } from './guards.ts'
import type { Joint } from './joint.ts'
import { stagesOf } from './stages-of.ts'

/** Torques and turns in order. */
export function afterStageAct(joint: Joint, state: JointState, act: Act, now: Now): JointState {
  if (act.act !== 'pull' && act.act !== 'turn') throw wrongJoint(joint, act)
  const stages = stagesOf(joint)
  const stage = stages[state.made]
  if (stage === undefined || (state.stage !== 'run up' && state.stage !== 'part made'))
    throw outOfOrder(
      joint,
      state,
      act,
      state.stage === 'final' ? 'It is done; undo it and begin again if it is in doubt.' : 'Run it up first.',
    )
  if ((stage.by === 'torque') !== (act.act === 'pull'))
    throw outOfOrder(
      joint,
      state,
      act,
      stage.by === 'torque' ? 'A torque is next: pull it.' : 'A turn is next: turn it by its angle.',
    )
  const last = state.made === stages.length - 1
  freshFastener(joint, state)
  // what is turned by angle after a pull is final by it: both want the position
  inPosition(joint, now, last || stages[state.made + 1]?.by === 'turn')
  const next = { stage: last ? ('final' as const) : ('part made' as const), made: state.made + 1 }
  if (act.act === 'pull' && stage.by === 'torque')
    return recorded(state, act, now, next, pulled(joint, stage, act.with, now))
  if (act.act === 'turn' && stage.by === 'turn') {
    const off = finite(act.angle, 'angle') - stage.angle
    const say = (angle: number) => formatAngle(rad(angle), { unit: '°', digits: 0 })
    if (Math.abs(off) > stage.within)
      throw fastenRefusal({
        code: act.angle < 0 ? 'never-back' : 'wrong-angle',
        at: 'angle',
        given: say(act.angle),
        sentence:
          act.angle < 0
            ? `${joint.name} was turned back by ${say(-act.angle)}; its turn goes forward.`
            : `${joint.name} was turned by ${say(act.angle)}, stated is ${say(stage.angle)} within ${say(stage.within)}.`,
        remedy:
          act.angle >= 0 && off < 0
            ? 'Turn on to the angle and record the whole turn from the torque.'
            : 'Undo it with another tool and begin again, with a new fastener where it is for one use.',
      })
    return recorded(state, act, now, next)
  }
  throw wrongJoint(joint, act)
}
