import { agrees } from '../agrees.ts'
import { keys } from '../keys.ts'
import { needsMark } from '../needs-mark.ts'
import { looks } from './looks.ts'
import type { Interlock } from './moment.ts'

/**
 * As-found marks are recorded before the thing they describe is disturbed; on the body side too when the part is
 * replaced.
 *
 * @source common practice, no source
 */
export const marks: Interlock = (moment) => {
  const { action, assembly, renewed } = moment
  const joint = looks.joint(moment)
  const disturbs = action.verb === 'crack' || looks.isUndoing(action)
  if (joint && disturbs && needsMark(joint)) {
    const mark = looks.value(moment, keys.mark(joint.id))
    if (mark === 'not recorded')
      return {
        rule: 'I15',
        would: `How the ${joint.called} ${agrees(joint.called, 'was', 'were')} found is lost.`,
        instead: 'Record its mark first: which way round, where it points, how much thread.',
      }
    if (mark !== 'recorded, body side too' && joint.joins.some((part) => renewed.has(part)))
      return {
        rule: 'I15',
        would: `The part is replaced, and the mark of the ${joint.called} goes with it.`,
        instead: 'Mark the body side too.',
      }
  }
  if (action.verb === 'take off') {
    const lost = Object.values(assembly.joints).find(
      (one) =>
        action.effects[keys.joint(one.id)] === 'open' &&
        needsMark(one) &&
        looks.value(moment, keys.mark(one.id)) === 'not recorded',
    )
    return lost
      ? {
          rule: 'I15',
          would: `How the ${lost.called} ${agrees(lost.called, 'was', 'were')} found is lost.`,
          instead: 'Record its mark first.',
        }
      : null
  }
  if (action.verb !== 'set camber and caster' && action.verb !== 'set toe') return null
  const sets = action.verb === 'set toe' ? 'toe' : 'camber and caster'
  const unmarked = Object.values(assembly.adjusters)
    .filter((one) => one.axle === action.axle && one.sets === sets)
    .flatMap(({ joints }) => joints)
    .map((id) => assembly.joints[id]!)
    .find(
      (one) =>
        one.adjusts &&
        action.effects[keys.joint(one.id)] !== undefined &&
        looks.value(moment, keys.mark(one.id)) === 'not recorded',
    )
  return unmarked
    ? {
        rule: 'I15',
        would: `How the ${unmarked.called} ${agrees(unmarked.called, 'was', 'were')} found is lost with the first move.`,
        instead: 'Record its mark first.',
      }
    : null
}
