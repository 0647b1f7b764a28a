import { keys } from '../keys.ts'
import { looks } from './looks.ts'
import type { Interlock } from './moment.ts'

/** Wheel off: an appointment to tighten again, on a card for whoever drives the vehicle. @source common practice, no source */
export const reTighten: Interlock = (moment) => {
  const { action, assembly } = moment
  if (action.verb !== 'hand over') return null
  const off = assembly.axles.some((axle) => looks.value(moment, keys.wheelOff(axle)) === 'off once')
  if (!off || looks.value(moment, keys.appointment) === 'made') return null
  return {
    rule: 'I22',
    would: 'A wheel was off: its nuts settle over the first distance, and the wheel comes loose.',
    instead: 'Write the card for the driver: wheel nuts tightened again after the first distance.',
  }
}
