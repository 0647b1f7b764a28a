import { agrees } from '../agrees.ts'
import { hasPin } from '../has-pin.ts'
import { keys } from '../keys.ts'
import { looks } from './looks.ts'
import type { Broken, Interlock, Moment } from './moment.ts'

const broken = (would: string, instead: string): Broken => ({ rule: 'I20', would, instead })

/**
 * No road test before: joints final, pins in, wheels final, pedal firm, toe inside the rough band, clearance seen lock
 * to lock.
 *
 * @source common practice, no source
 */
export const beforeRoadTest: Interlock = (moment) => {
  const { action, assembly } = moment
  if (action.verb === 'see clearance') {
    const early = looks
      .touched(moment)
      .find(({ id }) => !['closed', 'final', 'checked'].includes(looks.value(moment, keys.joint(id))))
    return early
      ? broken(
          `The ${early.called} ${agrees(early.called, 'is', 'are')} not final: what is clear now may not be.`,
          'Make every joint final, then look lock to lock.',
        )
      : null
  }
  if (action.verb !== 'road test') return null
  for (const joint of looks.touched(moment)) {
    const is = looks.value(moment, keys.joint(joint.id))
    if (!['closed', 'final', 'checked'].includes(is))
      return broken(
        `The ${joint.called} ${agrees(joint.called, 'is', 'are')} ${is}, not final: loose on the road.`,
        'Make it final first.',
      )
    if (hasPin(joint) && looks.value(moment, keys.pin(joint.id)) === 'out')
      return broken(
        `The pin of the ${joint.called} is not in: its nut comes off on the road.`,
        'Fit the pin first.',
      )
  }
  if (looks.value(moment, keys.pedal) !== 'firm')
    return broken('The pedal is not firm.', 'Pump or bleed it first.')
  const unset = assembly.axles.find(
    (axle) => movesAngles(moment, axle) && looks.value(moment, keys.reading(axle)) !== 'proven',
  )
  if (unset)
    return broken(
      `The ${unset} toe is not set: it wanders and scrubs.`,
      'Yard pace only, until toe is read inside its rough band.',
    )
  if (looks.touched(moment).length > 0 && looks.value(moment, keys.clearance) !== 'seen')
    return broken(
      'A hose or lead rubs at lock, and nobody has looked.',
      'See the clearance lock to lock first.',
    )
  return null
}

/** An adjuster was moved, a joint that says where the wheel stands was open, or a spring is new. */
const movesAngles = (moment: Moment, axle: string): boolean =>
  Object.values(moment.assembly.adjusters).some(
    (one) => one.axle === axle && looks.value(moment, keys.adjuster(one.id)) !== 'as found',
  ) ||
  looks.touched(moment).some((joint) => joint.axle === axle && joint.locates) ||
  Object.values(moment.assembly.holds).some(
    (hold) => hold.axle === axle && looks.value(moment, keys.part(hold.id)) === 'new',
  )
