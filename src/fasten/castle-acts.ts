import { formatAngle, Nm, rad } from '../quantity/index.ts'
import type { Act, JointState, Now } from './act.ts'
import { largestAdvance } from './castle-slot.ts'
import { fastenRefusal, finite } from './fasten-refusal.ts'
import { freshFastener, inPosition, outOfOrder, pulled, recorded, wrongJoint } from './guards.ts'
import type { Joint } from './joint.ts'
import type { CastleSlot } from './procedure.ts'
import { settingOn } from './setting-on.ts'

/** An eye sees a slot meet a hole within this: 1°. */
const EYE = Math.PI / 180

/** Floor, forward to a slot, pin. Never back. */
export function afterCastleAct(
  joint: Joint,
  procedure: CastleSlot,
  state: JointState,
  act: Act,
  now: Now,
): JointState {
  const { floor, ceiling } = procedure
  if (act.act === 'back off') throw never(joint, 'backed off to meet a slot')
  if (state.stage === 'stopped')
    throw fastenRefusal({
      code: 'click-means-stop',
      at: joint.name,
      given: act.act,
      sentence: `The wrench clicked at the ceiling before the slot of ${joint.name} met its hole: no slot lies between floor and ceiling.`,
      remedy: 'Undo it with another tool, fit another washer or nut, and begin again.',
    })
  if (act.act === 'pull') {
    if (state.stage !== 'run up')
      throw outOfOrder(joint, state, act, 'Run it up first; the floor is pulled once.')
    freshFastener(joint, state)
    inPosition(joint, now, true)
    // the first mark that reaches the floor: further up the window for the slot is lost
    const { wrench, adapter } = act.with
    const step = (wrench.scale.step * floor) / settingOn(wrench, adapter, floor)
    const given = pulled(
      joint,
      { torque: floor, floor, ceiling: Nm(Math.min(ceiling, floor + step)) },
      act.with,
      now,
    )
    return recorded(state, act, now, { stage: 'at floor', made: 1 }, given)
  }
  if (act.act === 'to slot') {
    if (state.stage !== 'at floor') throw outOfOrder(joint, state, act, 'Reach the floor first.')
    if (finite(act.angle, 'angle') < 0) throw never(joint, `turned back by ${say(-act.angle)}`)
    inPosition(joint, now, true)
    const given = pulled(joint, { torque: ceiling, floor, ceiling }, act.with, now)
    const most = largestAdvance(procedure)
    if (act.angle > most + EYE)
      throw fastenRefusal({
        code: 'past-slot',
        at: joint.name,
        given: say(act.angle),
        sentence: `${joint.name} was turned forward by ${say(act.angle)}; a slot comes within ${say(most)}, so one was passed.`,
        remedy: 'Undo it with another tool and begin again from the floor.',
      })
    // what the fastener has is between the figures, and nobody knows where: no torque is recorded
    const facts = { torque: null, warnings: given.warnings }
    return recorded(
      state,
      act,
      now,
      { stage: act.clicked ? 'stopped' : 'in slot', made: state.made + 1 },
      facts,
    )
  }
  if (act.act === 'pin') {
    if (state.stage !== 'in slot')
      throw outOfOrder(joint, state, act, 'Turn forward until a slot meets the hole.')
    return recorded(state, newPin(joint, act), now, { stage: 'final', made: state.made + 1 })
  }
  throw wrongJoint(joint, act)
}

/** A pin holds once. */
export function newPin<P extends Act & { act: 'pin' }>(joint: Joint, act: P): P {
  if (act.pin === 'new') return act
  throw fastenRefusal({
    code: 'old-pin',
    at: joint.name,
    given: act.pin,
    sentence: `The pin of ${joint.name} has been bent before.`,
    remedy: 'Fit a new pin and bend its legs.',
  })
}

const say = (angle: number) => formatAngle(rad(angle), { unit: '°', digits: 0 })

const never = (joint: Joint, what: string) =>
  fastenRefusal({
    code: 'never-back',
    at: joint.name,
    given: what,
    sentence: `${joint.name} has a castle nut on its pin hole and cannot be ${what}: backed off, its torque is no longer the one read.`,
    remedy:
      'Only forward to the next slot. Where the ceiling comes first: undo, other washer or nut, from the floor again.',
  })
