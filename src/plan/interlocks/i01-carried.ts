import { keys } from '../keys.ts'
import { supports } from '../supports.ts'
import { looks } from './looks.ts'
import type { Broken, Interlock, Moment } from './moment.ts'

const broken = (would: string, instead: string): Broken => ({ rule: 'I1', would, instead })

/**
 * Hands under the vehicle or a wheel off: stands that were seen loaded, locked lift arms, ramps or a pit carry it,
 * never a jack alone; wheels that stay down are chocked; a heavy unit off a lift only with the tail supported.
 *
 * @source common practice, no source
 */
export const carried: Interlock = (moment) => {
  const { action } = moment
  const chocked = looks.value(moment, keys.chocks) === 'set'
  if (action.verb === 'jack up' && !chocked)
    return broken(
      'The wheels that stay down would roll, and the vehicle off the jack.',
      'Chock the wheels that stay down first, brake on.',
    )
  for (const axle of looks.axles(moment)) {
    const fault = onSupport(moment, looks.value(moment, keys.support(axle)), chocked)
    if (fault) return fault
  }
  const part = looks.part(moment)
  if (
    action.verb === 'take off' &&
    part?.file.heavy &&
    looks.axles(moment).some((axle) => looks.value(moment, keys.support(axle)).startsWith('on the lift')) &&
    looks.value(moment, keys.tail) !== 'set'
  )
    return broken(
      `The ${part.called} is heavy: without it the vehicle tips off the lift.`,
      'Set the tail support first.',
    )
  return null
}

function onSupport(moment: Moment, support: string, chocked: boolean): Broken | null {
  const { action } = moment
  const hands = looks.isHandsOn(action)
  const under = action.place === 'under'
  if (!hands && !under) return null
  if (support === 'on a jack')
    return broken(
      'A jack alone lets go: the vehicle comes down on whoever is there.',
      'Put stands under the frame and see them loaded first.',
    )
  if (support === 'on stands')
    return broken('Nobody has seen the stands carry.', 'See both stands loaded and push the vehicle first.')
  if (support === 'on the lift')
    return broken(
      'The lift arms are not locked and can turn out.',
      'Lower into the locks and see every arm locked first.',
    )
  if (under && !(supports.handsUnder as readonly string[]).includes(support))
    return broken(
      'There is no room under a vehicle on its wheels, and nothing that keeps it off the hands.',
      'Bring it onto ramps, over a pit, onto stands or a lift.',
    )
  if (support === 'wheels on ramps or over the pit' && under && !chocked)
    return broken('It would roll off the ramps.', 'Chock it first, brake on.')
  const part = looks.part(moment)
  if (
    action.verb === 'take off' &&
    part?.kind === 'wheel' &&
    !(supports.lifted as readonly string[]).includes(support)
  )
    return broken(
      'The wheel carries the vehicle: it would drop.',
      'Lift it, put it on stands and see them loaded first.',
    )
  return null
}
