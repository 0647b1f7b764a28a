import { keys } from '../keys.ts'
import { supports } from '../supports.ts'
import { looks } from './looks.ts'
import type { Broken, Interlock, Moment } from './moment.ts'

const broken = (would: string, instead: string): Broken => ({ rule: 'I7', would, instead })

/**
 * Bonded-rubber bush: final only at ride height, and at which height: with springs renewed the sheet's, not the sagged
 * one. A rod's rubber end: final only with the wheels straight. A bush bolt that is itself an adjuster stays run up
 * until the last move.
 *
 * @source common practice, no source
 */
export const bondedBush: Interlock = (moment) => {
  const { action } = moment
  if (action.verb === 'raise to ride height') return whichHeight(moment)
  const joint = looks.joint(moment)
  if (!joint || action.verb !== 'final' || action.place === 'at the bench') return null
  if (joint.final === 'wheels straight' && looks.value(moment, keys.steering) !== 'straight')
    return broken(
      `The rubber of the ${joint.called} is twisted for life: the vehicle steers by itself.`,
      'Turn the wheels straight first.',
    )
  if (joint.adjusts) {
    const { adjusters } = moment.assembly
    const open = Object.values(adjusters).find(
      (one) =>
        one.joints.includes(joint.id) &&
        one.sets === 'camber and caster' &&
        looks.value(moment, keys.adjuster(one.id)) === 'disturbed',
    )
    if (open)
      return broken(
        `The ${joint.called} carries the ${open.called}: final now, it is undone again for the first move, and its rubber twisted each time.`,
        'Leave it run up; it is final, at ride height, only after the last move.',
      )
  }
  if (joint.final !== 'at ride height') return null
  const raised = looks.value(moment, keys.arm(`${joint.axle} ${joint.side}`)) === 'raised to ride height'
  const standing = (supports.onWheels as readonly string[]).includes(
    looks.value(moment, keys.support(joint.axle)),
  )
  if (!raised && !standing)
    return broken(
      `Tightened hanging, the rubber of the ${joint.called} carries that twist for life, tears and holds the height wrong.`,
      'Leave it run up; it is final at ride height: on its wheels, or the arm raised to the height recorded.',
    )
  if (!raised && looks.value(moment, keys.heights) === 'to set')
    return broken(
      'The torsion bar was unwound, and its height is not set yet: the rubber would be twisted at the right one.',
      'Set the height by the sheet first.',
    )
  if (!raised && looks.value(moment, keys.settled(joint.axle)) !== 'yes')
    return broken(
      'Lowered wheels stand scrubbed in: this is not its ride height yet.',
      'Roll and settle it first.',
    )
  return null
}

function whichHeight(moment: Moment): Broken | null {
  const { action, assembly } = moment
  const { target } = action.how
  const renewed = Object.values(assembly.holds).find(
    (hold) => hold.axle === action.axle && looks.value(moment, keys.part(hold.id)) === 'new',
  )
  const wound = looks.value(moment, keys.heights) === 'to set'
  if ((renewed || wound) && target !== 'the sheet')
    return broken(
      renewed
        ? `The ${renewed.called} is new: the height before lifting is that of the old, sagged spring, and the bushes would be twisted at the new one.`
        : 'The torsion bar was unwound: the height before lifting is no longer its own.',
      'Raise it to the height of the sheet, or leave the bolts run up until it has settled on its wheels.',
    )
  if (target !== 'the sheet' && looks.value(moment, keys.heights) === 'not recorded')
    return broken(
      'Nobody knows the height to raise it to.',
      'Record the ride heights before lifting, or take the sheet’s.',
    )
  return null
}
