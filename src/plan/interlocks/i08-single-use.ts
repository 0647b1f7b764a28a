import { keys } from '../keys.ts'
import { looks } from './looks.ts'
import type { Interlock } from './moment.ts'

/** Single-use fasteners and pins are new before final. @source common practice, no source */
export const singleUse: Interlock = (moment) => {
  const { action } = moment
  const joint = looks.joint(moment)
  if (!joint) return null
  if (
    action.verb === 'final' &&
    joint.file.reuse === 'new' &&
    looks.value(moment, keys.fastener(joint.id)) !== 'new'
  )
    return {
      rule: 'I8',
      would: `The fastener of the ${joint.called} has been stretched or has lost its lock: it loosens or breaks.`,
      instead: 'Fit a new one before it is tightened.',
    }
  if (action.verb === 'pin' && action.how['pin'] !== 'new')
    return {
      rule: 'I8',
      would: 'A pin that was bent once breaks where it was bent.',
      instead: 'Fit a new pin.',
    }
  return null
}
