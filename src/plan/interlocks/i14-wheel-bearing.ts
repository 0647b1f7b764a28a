import { agrees } from '../agrees.ts'
import { isShaftBeside } from '../is-shaft-beside.ts'
import { jointsOf } from '../joints-of.ts'
import { keys } from '../keys.ts'
import { supports } from '../supports.ts'
import { looks } from './looks.ts'
import type { Broken, Interlock, Moment } from './moment.ts'

const broken = (would: string, instead: string): Broken => ({ rule: 'I14', would, instead })

/**
 * No weight on the hub bearing before its axle nut is final; whether that nut is cracked and finished on the ground
 * or lifted with the brake held is a field of the joint. A drive shaft is not drawn beyond its joint.
 *
 * @source common practice, no source
 */
export const wheelBearing: Interlock = (moment) => {
  const { action, assembly } = moment
  const joint = looks.joint(moment)
  if (joint?.kind === 'axle nut' && (action.verb === 'crack' || action.verb === 'final')) {
    const onGround = joint.file.cracked === 'on the ground'
    const standing = (supports.onWheels as readonly string[]).includes(
      looks.value(moment, keys.support(joint.axle)),
    )
    if (onGround && !standing)
      return broken(
        'The lifted wheel turns with the wrench, and the pull can bring the vehicle off its stands.',
        'Crack and finish it on the ground, as its sheet says.',
      )
    if (!onGround && standing && action.verb === 'crack')
      return broken(
        'The weight stands on a bearing that nothing clamps any more.',
        'Crack it lifted, the brake held.',
      )
  }
  const lands = action.verb === 'lower'
  const rolls = looks.isRolling(action)
  if (lands || rolls) {
    const loose = looks
      .touched(moment)
      .find(
        ({ id, kind, final }) =>
          kind === 'axle nut' &&
          !['closed', 'final', 'checked'].includes(looks.value(moment, keys.joint(id))) &&
          !(lands && final === 'on the ground' && looks.value(moment, keys.joint(id)) === 'run up'),
      )
    if (loose)
      return broken(
        `The ${loose.called} ${agrees(loose.called, 'is', 'are')} not final: weight on the wheel bearing spreads and ruins it.`,
        'Make it final first, the brake held.',
      )
  }
  if (joint?.locates && looks.isUndoing(action) && action.place !== 'at the bench')
    return shaftReach(moment, assembly)
  return null
}

function shaftReach(moment: Moment, assembly: Moment['assembly']): Broken | null {
  const joint = looks.joint(moment)!
  const shaft = Object.values(assembly.parts).find(
    (part) =>
      part.kind === 'drive shaft' &&
      isShaftBeside(part, joint) &&
      looks.value(moment, keys.part(part.id)) === 'fitted' &&
      jointsOf(assembly, part.id).every(({ id }) => looks.value(moment, keys.joint(id)) !== 'open'),
  )
  if (!shaft || moment.action.how['shaft'] === 'tied up') return null
  return broken(
    `The knuckle swings out and draws the ${shaft.called} beyond its joint.`,
    'Tie the knuckle up within the shaft’s reach, or free the shaft first.',
  )
}
