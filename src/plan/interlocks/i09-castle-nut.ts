import { hasPin } from '../has-pin.ts'
import { keys } from '../keys.ts'
import { looks } from './looks.ts'
import type { Interlock } from './moment.ts'

/**
 * Tapered stud with castle nut: low figure, forward to a slot, below the maximum, pin, closed. The adjustable
 * taper-roller hub has the opposite procedure, and never this one.
 *
 * @source common practice, no source
 */
export const castleNutRule: Interlock = (moment) => {
  const { action } = moment
  const joint = looks.joint(moment)
  if (!joint) return null
  const castle = joint.kind === 'tapered stud, castle nut'
  if (action.verb === 'final' && castle && action.how['method'] !== 'castle slot')
    return {
      rule: 'I9',
      would: 'Backed off or past its maximum, the taper works loose or the stud is stretched.',
      instead: 'Low figure, then only forward to the next slot, never past the high figure, never back.',
    }
  if (
    action.verb === 'final' &&
    joint.kind === 'adjustable taper-roller hub' &&
    action.how['method'] !== 'seat and back off'
  )
    return {
      rule: 'I9',
      would: 'Tightened like a castle nut the bearings run hot and seize.',
      instead: 'Seat it, then back it off to its end float.',
    }
  const is = looks.value(moment, keys.joint(joint.id))
  if (action.verb === 'pin' && is !== 'final' && is !== 'checked')
    return {
      rule: 'I9',
      would: 'The pin holds a nut that is not tight.',
      instead: 'Tighten to the low figure and forward to the slot first, then the pin.',
    }
  const pin = looks.value(moment, keys.pin(joint.id))
  if (action.verb === 'second check' && hasPin(joint) && pin === 'out')
    return {
      rule: 'I9',
      would: `The nut of the ${joint.called} has no pin and comes off.`,
      instead: 'Fit the new pin and bend its legs, then look at it.',
    }
  return null
}
