import { keys } from '../keys.ts'
import { looks } from './looks.ts'
import type { Broken, Interlock } from './moment.ts'

const broken = (would: string, instead: string): Broken => ({ rule: 'I11', would, instead })

/** A torsion bar is unwound, turns and thread recorded, before its arm's joints open. @source common practice, no source */
export const torsionBar: Interlock = (moment) => {
  const { action, assembly } = moment
  const hold = looks.hold(moment)
  if (action.verb === 'unwind' && hold) {
    const anchors = Object.values(assembly.joints).filter(
      (joint) => joint.kind === 'anchor bolt' && joint.axle === hold.axle && joint.side === hold.side,
    )
    const unmarked = anchors.some(({ id }) => looks.value(moment, keys.mark(id)) === 'not recorded')
    if (unmarked || action.how['turns'] !== 'counted' || action.how['thread'] !== 'measured')
      return broken(
        'The height of this corner is lost: nobody knows how far the bar was wound.',
        'Mark the anchor, measure its exposed thread and count the turns.',
      )
    return null
  }
  const joint = looks.joint(moment)
  if (!joint || !looks.isUndoing(action)) return null
  const wound = Object.values(assembly.holds).find(
    (one) =>
      one.stores === 'torsion bar' &&
      one.joints.includes(joint.id) &&
      looks.value(moment, keys.energy(one.id)) !== 'let down' &&
      !(looks.value(moment, keys.energy(one.id)) === 'held by the jack' && !one.jackPath.includes(joint.id)),
  )
  return wound
    ? broken(
        `The ${wound.called} is wound: its arm strikes with the weight of the vehicle when the ${joint.called} opens.`,
        'Unwind it at its anchor first, turns and thread recorded.',
      )
    : null
}
