import { formatAngle, formatLength, type Metre, rad } from '../quantity/index.ts'
import type { Act, JointState, Now } from './act.ts'
import { newPin } from './castle-acts.ts'
import { fastenRefusal, finite } from './fasten-refusal.ts'
import { freshFastener, inPosition, outOfOrder, pulled, recorded, wrongJoint } from './guards.ts'
import type { Joint } from './joint.ts'
import type { SeatAndBackOff } from './procedure.ts'

/** Seat while the hub turns, back off, read the end float, pin. */
export function afterHubAct(
  joint: Joint,
  procedure: SeatAndBackOff,
  state: JointState,
  act: Act,
  now: Now,
): JointState {
  const { seat, back, bringUpTo, endFloat } = procedure
  const made = state.made + 1
  if (act.act === 'seat') {
    if (state.stage !== 'run up')
      throw outOfOrder(joint, state, act, 'Run it up first; the bearings are seated once.')
    if (!act.turning)
      throw fastenRefusal({
        code: 'hub-not-turned',
        at: joint.name,
        given: 'standing still',
        sentence: `${joint.name} was pulled with the hub standing still: its rollers have not settled.`,
        remedy: 'Turn the hub by hand while the nut is pulled.',
      })
    freshFastener(joint, state)
    inPosition(joint, now, true)
    return recorded(
      state,
      act,
      now,
      { stage: 'seated', made },
      pulled(joint, { torque: seat }, act.with, now),
    )
  }
  if (act.act === 'back off') {
    if (state.stage !== 'seated') throw outOfOrder(joint, state, act, 'Seat the bearings first.')
    if (!(finite(act.angle, 'angle') >= back.least && act.angle <= back.most))
      throw fastenRefusal({
        code: 'wrong-angle',
        at: 'angle',
        given: degrees(act.angle),
        sentence: `${joint.name} was backed off by ${degrees(act.angle)}, stated is ${degrees(back.least)} to ${degrees(back.most)}.`,
        remedy:
          act.angle < back.least
            ? 'Back off further, to a slot where it has one.'
            : 'Seat it again and back off less.',
      })
    return recorded(state, act, now, { stage: 'backed off', made })
  }
  if (act.act === 'bring up') {
    if (bringUpTo === null) throw wrongJoint(joint, act)
    if (state.stage !== 'backed off') throw outOfOrder(joint, state, act, 'Back off first.')
    return recorded(
      state,
      act,
      now,
      { stage: 'brought up', made },
      pulled(joint, { torque: bringUpTo }, act.with, now),
    )
  }
  const set = bringUpTo === null ? 'backed off' : 'brought up'
  if (act.act === 'end float') {
    if (endFloat === null) throw wrongJoint(joint, act)
    if (state.stage !== set) throw outOfOrder(joint, state, act, 'Set the nut first.')
    if (!(finite(act.read, 'end float') >= endFloat.low && act.read <= endFloat.high))
      throw fastenRefusal({
        code: 'end-float',
        at: joint.name,
        given: length(act.read),
        sentence: `The end float of ${joint.name} is ${length(act.read)}, stated is ${length(endFloat.low)} to ${length(endFloat.high)}.`,
        remedy:
          'Undo the nut, seat the bearings again and back off; look at the bearings when it does not come.',
      })
    return recorded(state, act, now, { stage: 'float read', made })
  }
  if (act.act === 'pin') {
    if (state.stage !== (endFloat === null ? set : 'float read'))
      throw outOfOrder(
        joint,
        state,
        act,
        endFloat === null ? 'Set the nut first.' : 'Read the end float first.',
      )
    return recorded(state, newPin(joint, act), now, { stage: 'final', made })
  }
  throw wrongJoint(joint, act)
}

const degrees = (angle: number) => formatAngle(rad(angle), { unit: '°', digits: 0 })
const length = (value: Metre) => formatLength(value, { unit: 'mm', digits: 2 })
