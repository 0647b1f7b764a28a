import { agrees } from '../agrees.ts'
import { keys } from '../keys.ts'
import { looks } from './looks.ts'
import type { Broken, Interlock, Moment } from './moment.ts'

const broken = (would: string, instead: string): Broken => ({ rule: 'I17', would, instead })

/**
 * Camber and caster before toe, rear before front, lock nuts after toe, a reading after the lock nuts; every reading on
 * settled wheels at set pressures; a provisional one with all joints final but the adjusters', the proving one after
 * every joint is final.
 *
 * @source common practice, no source
 */
export const orderOfAngles: Interlock = (moment) => {
  const { action } = moment
  const { axle } = action
  if (
    action.verb === 'record heights' &&
    looks
      .touched(moment)
      .some(({ id }) => !['closed', 'cracked'].includes(looks.value(moment, keys.joint(id))))
  )
    return broken(
      'Joints have been open: this is no longer the height as it was found.',
      'Record the heights before anything is undone; now take the sheet’s.',
    )
  if (action.verb === 'record heights' && looks.value(moment, keys.pressures) !== 'set')
    return broken(
      'The tyres stand at other pressures than the sheet means.',
      'Set the pressures first, then the heights.',
    )
  if (action.verb === 'read angles' && axle) return reading(moment, axle)
  if (action.verb === 'set toe' && axle) {
    if (disturbed(moment, axle, 'camber and caster'))
      return broken(
        'Camber and caster are not set yet, and every move of theirs voids the toe.',
        'Set camber and caster first, toe last.',
      )
    if (axle === 'front' && disturbed(moment, 'rear', 'toe'))
      return broken(
        'The front is set to a thrust line that the rear will still move.',
        'Set the rear first, then the front.',
      )
  }
  const joint = looks.joint(moment)
  if (action.verb === 'final' && joint?.adjusts && action.place !== 'at the bench') {
    const toe = Object.values(moment.assembly.adjusters).find(
      (one) => one.joints.includes(joint.id) && one.sets === 'toe',
    )
    if (toe && looks.value(moment, keys.adjuster(toe.id)) === 'disturbed')
      return broken(
        'The lock nut holds a toe that is not set.',
        'Set the toe first, then the lock nut, then read again.',
      )
  }
  return null
}

const disturbed = (moment: Moment, axle: string, sets: 'camber and caster' | 'toe'): boolean =>
  Object.values(moment.assembly.adjusters).some(
    (one) =>
      one.axle === axle && one.sets === sets && looks.value(moment, keys.adjuster(one.id)) === 'disturbed',
  )

function reading(moment: Moment, axle: string): Broken | null {
  if (looks.value(moment, keys.settled(axle)) !== 'yes')
    return broken(
      'Lowered wheels stand scrubbed in: the reading is false.',
      'Roll about 2 m forward and back, jounce, then read.',
    )
  if (looks.value(moment, keys.pressures) !== 'set')
    return broken('The tyres stand at other pressures than the sheet means.', 'Set the pressures first.')
  const proving = moment.action.how['kind'] === 'proving'
  const open = looks
    .touched(moment)
    .find(
      ({ id, adjusts }) =>
        !['closed', 'final', 'checked'].includes(looks.value(moment, keys.joint(id))) &&
        (proving || !adjusts),
    )
  if (!open) return null
  return proving
    ? broken(
        `The ${open.called} ${agrees(open.called, 'is', 'are')} not final: what is read now is not what drives away.`,
        'Make every joint final, then take the proving reading.',
      )
    : broken(
        `The ${open.called} ${agrees(open.called, 'is not final and moves', 'are not final and move')} with the angles.`,
        'Make all joints final but those of the adjusters, which are nipped up.',
      )
}
