import { keys } from '../keys.ts'
import { looks } from './looks.ts'
import type { Interlock } from './moment.ts'

/**
 * A new part is compared by side, length, taper, thread and plug before the vehicle is lifted, and again beside the
 * old one.
 *
 * @source common practice, no source
 */
export const newPartCompared: Interlock = (moment) => {
  const { action, assembly, renewed } = moment
  if (action.verb === 'jack up' || action.verb === 'lift') {
    const unseen = [...renewed].find((part) => looks.value(moment, keys.compared(part)) === 'not yet')
    if (unseen)
      return {
        rule: 'I16',
        would: `A wrong ${assembly.parts[unseen]!.called} is found with the vehicle in pieces.`,
        instead: 'Compare the new part before lifting: side, length, taper, thread, plug.',
      }
  }
  const joined =
    action.place === 'at the bench' && ['run up', 'connect', 'start'].includes(action.verb)
      ? (assembly.joints[action.joint ?? '']?.joins ?? [])
      : action.verb === 'compress' &&
          action.hold &&
          looks.value(moment, keys.energy(action.hold)) === 'let down'
        ? [action.hold]
        : []
  const unlaid = joined.find(
    (part) => renewed.has(part) && looks.value(moment, keys.compared(part)) !== 'beside the old',
  )
  if (unlaid)
    return {
      rule: 'I16',
      would: `A wrong ${assembly.parts[unlaid]!.called} is put together.`,
      instead: 'Lay the new part beside the old one first: side, length, taper, thread, plug.',
    }
  for (const [key, value] of Object.entries(action.effects)) {
    if (value !== 'new' || !key.startsWith('part ')) continue
    const part = key.slice('part '.length)
    if (renewed.has(part) && looks.value(moment, keys.compared(part)) !== 'beside the old')
      return {
        rule: 'I16',
        would: `A wrong ${assembly.parts[part]!.called} is fitted.`,
        instead: 'Lay the new part beside the old one first: side, length, taper, thread, plug.',
      }
  }
  return null
}
