import { keys } from '../keys.ts'
import { looks } from './looks.ts'
import type { Broken, Interlock } from './moment.ts'

const broken = (would: string, instead: string): Broken => ({ rule: 'I21', would, instead })

/**
 * Joints that can drop a wheel, the steering or the brakes have a second check: by another person, else by the same
 * person later, recorded as that. Torque-plus-angle joints are checked by mark and record, not pulled again.
 *
 * @source common practice, no source
 */
export const redList: Interlock = (moment) => {
  const { action } = moment
  if (action.verb === 'second check') {
    if (action.how['by'] === 'the same person, at once')
      return broken(
        'Whoever has just tightened it sees what he expects to see.',
        'Let another person look; else look again later, and write it down as that.',
      )
    if (action.how['method'] === 'pulled again')
      return broken(
        'A joint that was turned by angle is turned further each time it is pulled.',
        'Check it by its mark and its record.',
      )
    return null
  }
  if (action.verb !== 'hand over') return null
  const unseen = looks
    .touched(moment)
    .find(({ id, red }) => red && !['closed', 'checked'].includes(looks.value(moment, keys.joint(id))))
  return unseen
    ? broken(
        `Nobody has looked at the ${unseen.called} again, and loose it drops a wheel, the steering or the brakes.`,
        'Have it looked at by another person, or later by the same one.',
      )
    : null
}
