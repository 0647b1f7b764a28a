import { agrees } from '../agrees.ts'
import { keys } from '../keys.ts'
import { looks } from './looks.ts'
import type { Broken, Interlock, Moment } from './moment.ts'

const broken = (would: string, instead: string): Broken => ({ rule: 'I13', would, instead })
const noFlame = ['hose', 'damper', 'strut', 'lead']

/**
 * The nut of a strut's piston rod only with the spring captured. Heat only on what goes to scrap, never near gas
 * damper, hose, bonded bush, tank or undercoat; no hammer shock on aluminium or on a joint that will be used again.
 *
 * @source common practice, no source
 */
export const strutNutHeatShock: Interlock = (moment) => {
  const { action, assembly } = moment
  const joint = looks.joint(moment)
  if (!joint) return null
  if (joint.kind === 'strut top nut' && looks.isUndoing(action)) {
    const hold = Object.values(assembly.holds).find(({ joints }) => joints.includes(joint.id))
    const energy = hold ? looks.value(moment, keys.energy(hold.id)) : 'let down'
    if (hold && energy !== 'in the compressor' && energy !== 'let down')
      return broken(
        `The ${hold.called} drives mount and nut out like a shot.`,
        'Capture the spring in a compressor first.',
      )
  }
  if (action.how['aid'] === 'heat') return heated(moment)
  if (action.how['aid'] === 'hammer') return struck(moment)
  return null
}

function heated(moment: Moment): Broken | null {
  const { assembly, renewed, action } = moment
  const joint = looks.joint(moment)!
  const kept = joint.joins.map((id) => assembly.parts[id]!).find((part) => !renewed.has(part.id))
  const near = joint.joins.map((id) => assembly.parts[id]!).find(({ kind }) => noFlame.includes(kind))
  if (near || joint.file.bush?.bonded || action.how['near'] !== undefined)
    return broken(
      `Flame near ${near ? `the ${near.called}` : (action.how['near'] ?? 'a bonded bush')}: it bursts or burns.`,
      'No heat here: cut the bolt, press it, or use penetrating oil and time.',
    )
  if (kept)
    return broken(
      `The ${kept.called} stays on the vehicle: heated once it is scrap, and nobody sees it.`,
      'Heat only what is thrown away.',
    )
  return null
}

function struck(moment: Moment): Broken | null {
  const { assembly, renewed, action } = moment
  const joint = looks.joint(moment)!
  const scrap = joint.joins.some((part) => renewed.has(part))
  if (action.how['boss'] === 'aluminium')
    return broken('An aluminium boss cracks under the hammer.', 'Press it apart with the separator.')
  if (!scrap)
    return broken(
      `The ${joint.called} ${agrees(joint.called, 'is', 'are')} used again: the blow ruins taper and ball joint of the ${assembly.parts[joint.joins[0]]!.called}.`,
      'Press it apart with the separator.',
    )
  return null
}
