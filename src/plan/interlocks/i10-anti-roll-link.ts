import { dropLinkJoints } from '../drop-link-joints.ts'
import { keys } from '../keys.ts'
import { looks } from './looks.ts'
import type { Interlock } from './moment.ts'

/** Anti-roll links are off, or both sides equally loaded, before one side's arm moves far. @source common practice, no source */
export const antiRollLink: Interlock = (moment) => {
  const { action, assembly } = moment
  if (action.verb !== 'let down with the jack' && action.verb !== 'raise the arm') return null
  const hold = looks.hold(moment)
  if (!hold?.side) return null
  const closed = (side: 'left' | 'right') => {
    const link = dropLinkJoints(assembly, { axle: hold.axle, side })
    return (
      link.length > 0 &&
      link.every((joint) => !['open', 'started'].includes(looks.value(moment, keys.joint(joint))))
    )
  }
  const other = hold.side === 'left' ? 'right' : 'left'
  if (!closed(hold.side) || !closed(other)) return null
  return {
    rule: 'I10',
    would: 'The anti-roll bar twists as the arm goes, and springs back when a link lets go.',
    instead: 'Take the anti-roll link off first, or load both sides alike.',
  }
}
