import { agrees } from '../agrees.ts'
import { keys } from '../keys.ts'
import { looks } from './looks.ts'
import type { Interlock } from './moment.ts'

/** A lead unplugged or a height rod off: back, and the lamp looked at. @source common practice, no source */
export const lamp: Interlock = (moment) => {
  const { action, assembly } = moment
  if (action.verb === 'look at lamp') {
    const early = looks
      .touched(moment)
      .find(
        (joint) =>
          joint.joins.some((part) => action.effects[keys.lamp(part)] !== undefined) &&
          !['closed', 'final', 'checked'].includes(looks.value(moment, keys.joint(joint.id))),
      )
    return early
      ? {
          rule: 'I19',
          would: `The ${early.called} ${agrees(early.called, 'is', 'are')} not home yet: the lamp says nothing of how it will be.`,
          instead: 'Put every lead back first, then look at the lamp.',
        }
      : null
  }
  if (action.verb !== 'hand over') return null
  for (const part of Object.values(assembly.parts)) {
    if (part.kind !== 'lead' && part.kind !== 'height-sensor rod') continue
    const open = looks
      .touched(moment)
      .find((joint) => joint.joins.includes(part.id) && looks.value(moment, keys.joint(joint.id)) === 'open')
    if (open)
      return {
        rule: 'I19',
        would: `The ${open.called} ${agrees(open.called, 'is', 'are')} still open: a lamp comes on, or a brake system is dead without one.`,
        instead: 'Put it back, then look at the lamp.',
      }
    if (part.kind === 'lead' && looks.value(moment, keys.lamp(part.id)) === 'to look at')
      return {
        rule: 'I19',
        would: `The ${part.called} was unhooked, and nobody has looked at the lamp.`,
        instead: 'Look at the lamp with the ignition on.',
      }
  }
  if (looks.value(moment, keys.levelSensor) === 'to check')
    return {
      rule: 'I19',
      would: 'The height sensor was unhooked: the vehicle stands or shines wrong, and a lamp comes on.',
      instead: 'Check the level sensor, and look at the lamp.',
    }
  return null
}
