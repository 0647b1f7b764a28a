import { jointHabits } from '../joint-habits.ts'
import { keys } from '../keys.ts'
import { looks } from './looks.ts'
import type { Interlock } from './moment.ts'

/** A taper is parted with its nut on a few threads. @source common practice, no source */
export const taper: Interlock = (moment) => {
  const { action } = moment
  const joint = looks.joint(moment)
  if (!joint || !jointHabits[joint.kind].taper) return null
  const is = looks.value(moment, keys.joint(joint.id))
  if (action.verb === 'free' && is !== 'retained')
    return {
      rule: 'I5',
      would:
        is === 'open'
          ? 'The taper lets go with nothing to catch it, and the parts jump apart.'
          : 'The nut still clamps the taper: the separator bends the stud.',
      instead: 'Turn the nut back to a few threads, then part the taper.',
    }
  if (action.verb === 'open' && looks.value(moment, keys.taper(joint.id)) === 'seated')
    return {
      rule: 'I5',
      would: 'The nut is off while the taper still holds: when it lets go nothing catches it.',
      instead: 'Leave the nut on a few threads until the taper has parted.',
    }
  return null
}
