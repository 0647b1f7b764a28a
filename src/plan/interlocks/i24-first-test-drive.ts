import { keys } from '../keys.ts'
import { looks } from './looks.ts'
import type { Interlock } from './moment.ts'

/**
 * Before the first test drive: tyres, wheel nuts, loaded joints, brakes, steering free; else it is not driven.
 *
 * @source common practice, no source
 */
export const firstTestDrive: Interlock = (moment) => {
  if (moment.action.verb !== 'test drive') return null
  if (looks.value(moment, keys.fitToDrive) === 'looked at') return null
  return {
    rule: 'I24',
    would:
      'Nobody has looked at tyres, wheel nuts, loaded joints, brakes and steering: the test drive is the accident.',
    instead: 'Look at those five first; else it is not driven.',
  }
}
