import { keys } from '../keys.ts'
import { looks } from './looks.ts'
import type { Broken, Interlock } from './moment.ts'

const broken = (would: string, instead: string): Broken => ({ rule: 'I23', would, instead })

/**
 * Steering shaft parted: steering wheel held from turning (the spiral contact behind the airbag breaks), rack centred
 * and counted, pinch bolt seated in its groove; airbag made safe by the maker's method only.
 *
 * @source common practice, no source
 */
export const steeringShaft: Interlock = (moment) => {
  const { action, assembly } = moment
  if (action.verb === 'make airbag safe' && action.how['method'] !== 'the maker’s')
    return broken('The airbag fires into a face.', 'Only by the maker’s own method and waiting time.')
  if (action.verb === 'steer' && looks.value(moment, keys.shaft) === 'parted')
    return broken(
      'The steering wheel turns without the rack: its middle is lost, the spiral contact breaks.',
      'Join the shaft first.',
    )
  const joint = looks.joint(moment)
  if (!joint?.joins.some((part) => assembly.parts[part]?.kind === 'steering shaft')) return null
  if (looks.isUndoing(action)) {
    if (looks.value(moment, keys.steeringWheel) !== 'held, rack counted')
      return broken(
        'The steering wheel turns freely and breaks the spiral contact behind the airbag; the middle of the rack is lost.',
        'Hold the steering wheel straight and count the rack to its middle first.',
      )
    if (looks.value(moment, keys.airbag) !== 'made safe')
      return broken('The airbag is live.', 'Make it safe by the maker’s own method first.')
  }
  if (action.verb === 'final' && joint.kind === 'pinch bolt' && action.how['seated'] !== 'in its groove')
    return broken(
      'The pinch bolt misses its groove: the shaft draws out, and the steering is gone.',
      'See the bolt in its groove before it is tightened.',
    )
  return null
}
