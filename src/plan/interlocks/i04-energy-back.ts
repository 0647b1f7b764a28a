import type { Verb } from '../action.ts'
import { agrees } from '../agrees.ts'
import { keys } from '../keys.ts'
import { looks } from './looks.ts'
import type { Interlock } from './moment.ts'

const back: readonly Verb[] = [
  'release compressor',
  'wind',
  'let air in',
  'jack away',
  'axle off stands',
  'lower',
]

/**
 * Energy goes back in, and a stand-in leaves, only when the retaining set is at least run up with full engagement,
 * its tapers seated; final may come later.
 *
 * @source common practice, no source
 */
export const energyBack: Interlock = (moment) => {
  const { action, assembly } = moment
  if (!back.includes(action.verb)) return null
  for (const hold of Object.values(assembly.holds)) {
    const energy = looks.value(moment, keys.energy(hold.id))
    const sets = action.effects[keys.energy(hold.id)] === 'held by its set'
    if (action.verb === 'lower') {
      if (energy !== 'held by its set' && action.effects[keys.support(hold.axle)] !== undefined)
        return {
          rule: 'I4',
          would: `The weight comes onto the ${hold.called} while something else still holds it.`,
          instead: 'Give it back to its own joints first.',
        }
      continue
    }
    if (action.verb === 'release compressor' && action.hold === hold.id && !sets) {
      const seats = Object.values(assembly.joints).filter(
        (joint) => joint.kind === 'seat' && joint.joins.includes(hold.id),
      )
      const inside = seats.find((joint) => looks.value(moment, keys.joint(joint.id)) !== 'open')
      if (inside)
        return {
          rule: 'I4',
          would: `The ${hold.called} is still in its seats: it loads them while they come apart.`,
          instead: 'Take it out first, then let it out of the compressor.',
        }
    }
    if (!sets) continue
    const loose = hold.joints.find((joint) => !looks.isRunUp(moment, joint))
    if (loose)
      return {
        rule: 'I4',
        would: `The ${assembly.joints[loose]!.called} ${agrees(assembly.joints[loose]!.called, 'is', 'are')} not run up: nothing keeps the ${hold.called} in once it is loaded.`,
        instead: 'Run the whole retaining set up first, tapers seated and nuts on.',
      }
  }
  return null
}
