import type { Assembly } from './assembly.ts'
import { factOf } from './fact-of.ts'
import type { Goal } from './goal.ts'
import { hasPin } from './has-pin.ts'
import { keys } from './keys.ts'
import type { State } from './state.ts'

/** One thing that is not as a finished job leaves it. @source definition */
export interface Unfinished {
  readonly key: string
  readonly is: string
}

/**
 * What a state still lacks of a finished job: parts of the goal new, all else in place, every joint final and looked
 * at, springs held by their own, lines tight, on its wheels.
 *
 * @param axles those whose angles follow from the work
 * @source definition
 */
export function whatIsLeft(
  assembly: Assembly,
  goal: Goal,
  state: State,
  axles: readonly string[],
): readonly Unfinished[] {
  const found: Unfinished[] = []
  const want = (key: string, ...values: string[]) => {
    const is = factOf(state, key)
    if (!values.includes(is)) found.push({ key, is })
  }
  for (const joint of Object.values(assembly.joints)) {
    want(keys.joint(joint.id), 'closed', 'checked', ...(joint.red ? [] : ['final']))
    if (joint.kind.startsWith('tapered')) want(keys.taper(joint.id), 'seated')
    if (hasPin(joint)) want(keys.pin(joint.id), 'in', 'new, legs bent')
    if (joint.kind === 'hydraulic union') want(keys.line(joint.id), 'tight', 'bled, no leak')
  }
  for (const { id, kind } of Object.values(assembly.parts)) {
    want(keys.part(id), 'new', ...(goal.replace.includes(id) ? [] : ['fitted']))
    if (kind === 'lead') want(keys.lamp(id), 'as found', 'looked at')
    if (kind === 'wheel') for (const key of Object.keys(state)) if (key.startsWith('arm ')) want(key, 'free')
  }
  for (const id of goal.open ?? [])
    if (factOf(state, keys.joint(id)) === 'closed') found.push({ key: keys.joint(id), is: 'closed' })
  for (const id of Object.keys(assembly.holds)) want(keys.energy(id), 'held by its set')
  for (const { id } of Object.values(assembly.adjusters))
    want(keys.adjuster(id), 'as found', 'as marked', 'set')
  for (const axle of assembly.axles) {
    want(keys.support(axle), 'on its wheels')
    want(keys.axleStands(axle), 'none')
  }
  for (const axle of axles) want(keys.reading(axle), 'proven')
  want(keys.steering, 'straight')
  want(keys.shaft, 'whole')
  want(keys.levelling, 'on')
  want(keys.levelSensor, 'as found', 'checked')
  want(keys.pedal, 'firm')
  want(keys.road, 'driven')
  want(keys.handover, 'done')
  return found
}
