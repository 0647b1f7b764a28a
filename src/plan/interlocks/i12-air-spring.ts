import { keys } from '../keys.ts'
import { looks } from './looks.ts'
import type { Broken, Interlock } from './moment.ts'

const broken = (would: string, instead: string): Broken => ({ rule: 'I12', would, instead })

/** Air spring: levelling off, deflated and disconnected. @source common practice, no source */
export const airSpring: Interlock = (moment) => {
  const { action, assembly } = moment
  const air = Object.values(assembly.holds).filter(({ stores }) => stores === 'air')
  if (air.length === 0) return null
  const off = looks.value(moment, keys.levelling) === 'off'
  if ((action.verb === 'jack up' || action.verb === 'lift' || action.verb === 'deflate') && !off)
    return broken(
      'The levelling works by itself: the vehicle rises or sinks on jack, lift and hands.',
      'Switch the levelling off first, by the maker’s method.',
    )
  const joint = looks.joint(moment)
  if (!joint || !looks.isUndoing(action)) return null
  const full = air.find(
    (hold) => hold.joints.includes(joint.id) && looks.value(moment, keys.energy(hold.id)) !== 'let down',
  )
  return full
    ? broken(
        `The ${full.called} is full of air and bursts out when the ${joint.called} opens.`,
        'Let the air out and disconnect its line first: both, not one of the two.',
      )
    : null
}
