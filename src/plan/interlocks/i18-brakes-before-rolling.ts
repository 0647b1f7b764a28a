import { keys } from '../keys.ts'
import { looks } from './looks.ts'
import type { Interlock } from './moment.ts'

/**
 * Line opened: filled, bled, pedal firm, no leak. Caliper or pads moved: pedal pumped firm. Both before the vehicle
 * rolls.
 *
 * @source common practice, no source
 */
export const brakesBeforeRolling: Interlock = (moment) => {
  const { action, state } = moment
  if (action.verb === 'pump pedal') {
    const off = Object.values(moment.assembly.parts).find(
      (part) =>
        part.kind === 'caliper' && !['fitted', 'new'].includes(looks.value(moment, keys.part(part.id))),
    )
    if (off)
      return {
        rule: 'I18',
        would: `The ${off.called} is off: pumping drives its piston out.`,
        instead: 'Fit the caliper with its pads first, then pump.',
      }
    const open = Object.entries(state).find(
      ([key, value]) => key.startsWith('line ') && (value === 'open' || value === 'to bleed'),
    )
    return open
      ? {
          rule: 'I18',
          would: 'A line is open or full of air: the pedal cannot get firm.',
          instead: 'Close, fill and bleed it first.',
        }
      : null
  }
  if (!looks.isRolling(action)) return null
  const line = Object.entries(state).find(
    ([key, value]) => key.startsWith('line ') && value !== 'tight' && value !== 'bled, no leak',
  )
  if (line)
    return {
      rule: 'I18',
      would: 'Air is in the line: it rolls without brakes.',
      instead: 'Fill and bleed it, pedal firm, no leak, before it rolls.',
    }
  if (looks.value(moment, keys.pedal) !== 'firm')
    return {
      rule: 'I18',
      would: 'The pads were moved: the first stroke of the pedal is empty, and it rolls without brakes.',
      instead: 'Pump the pedal until it is firm before it rolls.',
    }
  return null
}
