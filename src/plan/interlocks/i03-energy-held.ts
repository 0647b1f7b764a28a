import { agrees } from '../agrees.ts'
import type { HoldNode } from '../assembly.ts'
import { keys } from '../keys.ts'
import { supports } from '../supports.ts'
import { looks } from './looks.ts'
import type { Broken, Interlock, Moment } from './moment.ts'

const broken = (would: string, instead: string): Broken => ({ rule: 'I3', would, instead })

/**
 * A joint of the retaining set of stored energy opens only with a stand-in in place or the energy let down; while any
 * is open one complete retaining path remains. A jack as stand-in: saddle located, coil tethered, nobody in line, body
 * on stands, and the joints that the arm turns about stay closed. The droop stop belongs to the set. Torsion bars and
 * air springs have rules of their own.
 *
 * @source common practice, no source
 */
export const energyHeld: Interlock = (moment) => {
  const { action, assembly } = moment
  if (action.verb === 'jack under arm' || action.verb === 'raise the arm') return jackStands(moment)
  if (action.verb === 'let down with the jack') return lowering(moment)
  if (action.verb === 'take off' && action.part) {
    const hold = assembly.holds[action.part]
    const energy = hold ? looks.value(moment, keys.energy(hold.id)) : 'let down'
    const seats = Object.values(assembly.joints).filter(
      ({ kind, joins }) => kind === 'seat' && joins.includes(action.part!),
    )
    const isOut = seats.some(
      ({ id }) => looks.value(moment, keys.joint(id)) === 'open' || action.effects[keys.joint(id)] === 'open',
    )
    if (hold?.loose && isOut && energy !== 'let down' && energy !== 'in the compressor')
      return broken(
        `The ${hold.called} still has its load and flies out.`,
        'Let it down with the jack, or take its load into a compressor.',
      )
    return null
  }
  const joint = looks.joint(moment)
  if (!joint || !looks.isUndoing(action)) return null
  for (const hold of Object.values(assembly.holds)) {
    if (!hold.joints.includes(joint.id) || hold.stores === 'torsion bar' || hold.stores === 'air') continue
    if (joint.kind === 'strut top nut') continue
    const fault = undoing(moment, hold, joint.id)
    if (fault) return fault
  }
  return null
}

function undoing(moment: Moment, hold: HoldNode, joint: string): Broken | null {
  const energy = looks.value(moment, keys.energy(hold.id))
  if (energy === 'let down' || energy === 'in the compressor') return null
  if (energy === 'held by the jack' && !hold.jackPath.includes(joint)) return null
  const called = moment.assembly.joints[joint]!.called
  if (energy === 'held by the jack')
    return broken(
      `The jack carries the arm about the ${called}: open it, and arm and ${hold.called} jump off the jack.`,
      `Lower the jack until the ${hold.called} is slack first.`,
    )
  return broken(
    `The ${called} helps to keep the ${hold.called} in: it comes out with its whole load.`,
    `Hold the ${hold.called} first: ${hold.standIns.join(' or ')}.`,
  )
}

function jackStands(moment: Moment): Broken | null {
  const { action } = moment
  const hold = looks.hold(moment)
  if (!hold) return null
  if (!(supports.lifted as readonly string[]).includes(looks.value(moment, keys.support(hold.axle))))
    return broken(
      'The jack would lift the vehicle instead of the arm.',
      'Put the body on stands and see them loaded first.',
    )
  const { saddle, coil, hands } = action.how
  if (saddle !== 'located' || coil !== 'tethered' || hands !== 'nobody in line')
    return broken(
      'The arm slips off the saddle and the spring flies.',
      'Locate the saddle, tether the coil to the frame, and keep everybody out of its line.',
    )
  const open = hold.jackPath.find((joint) => !looks.holds(moment, joint))
  if (open)
    return broken(
      `The ${isOpen(moment, open)}: the arm has nothing to turn about and slides off the jack.`,
      'Run the pivots of the arm up first.',
    )
  return null
}

function lowering(moment: Moment): Broken | null {
  const hold = looks.hold(moment)
  if (!hold) return null
  const open = hold.jackPath.find((joint) => !looks.holds(moment, joint))
  return open
    ? broken(
        `The ${isOpen(moment, open)}: the arm slides off the jack as it goes down.`,
        'Run the pivots of the arm up before the jack is moved.',
      )
    : null
}

function isOpen({ assembly }: Moment, joint: string): string {
  const { called } = assembly.joints[joint]!
  return `${called} ${agrees(called, 'is', 'are')} open`
}
