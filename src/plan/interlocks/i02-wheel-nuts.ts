import { keys } from '../keys.ts'
import { supports } from '../supports.ts'
import { looks } from './looks.ts'
import type { Broken, Interlock, Moment } from './moment.ts'

/**
 * Wheel nuts are cracked, and tightened finally, with the wheel on the ground; opposite first, in stages. They come off
 * when the wheel is lifted, and it rolls only on tight ones.
 *
 * @source common practice, no source
 */
export const wheelNuts: Interlock = (moment) => {
  const { action } = moment
  if (looks.isRolling(action)) return rolling(moment)
  const joint = looks.joint(moment)
  if (joint?.kind !== 'wheel nuts') return null
  const support = looks.value(moment, keys.support(joint.axle))
  if (action.verb === 'open' && isOnWheels(support))
    return {
      rule: 'I2',
      would: 'The wheel stands on its studs with nothing that holds it, and carries the vehicle.',
      instead: 'Only crack them on the ground; take them off when the wheel is lifted and carried.',
    }
  if (action.verb !== 'crack' && action.verb !== 'final') return null
  if (!isOnWheels(support))
    return {
      rule: 'I2',
      would: 'The lifted wheel turns with the wrench, and the pull can bring the vehicle off its stands.',
      instead:
        action.verb === 'crack'
          ? 'Crack them on the ground, before lifting.'
          : 'Tighten them finally on the ground.',
    }
  if (action.verb === 'final' && action.how['method'] !== 'opposite first, in stages')
    return {
      rule: 'I2',
      would: 'The wheel is drawn on crooked and works loose.',
      instead: 'Tighten opposite nuts first, in stages.',
    }
  return null
}

function rolling(moment: Moment): Broken | null {
  const loose = looks
    .touched(moment)
    .find(
      ({ id, kind }) =>
        kind === 'wheel nuts' &&
        !['closed', 'final', 'checked'].includes(looks.value(moment, keys.joint(id))),
    )
  return loose
    ? {
        rule: 'I2',
        would: `It rolls on the ${loose.called}, not tight yet: the wheel works loose.`,
        instead: 'Tighten them finally on the ground first.',
      }
    : null
}

const isOnWheels = (support: string) => (supports.onWheels as readonly string[]).includes(support)
