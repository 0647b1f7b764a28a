import type { Assembly } from './assembly.ts'
import { factOf } from './fact-of.ts'
import { hasPin } from './has-pin.ts'
import { jointStageOf } from './joint-stage-of.ts'
import { jointsOf } from './joints-of.ts'
import { keys } from './keys.ts'
import type { State } from './state.ts'
import { supports } from './supports.ts'

const home = ['closed', 'final', 'checked']

/**
 * The state from which the rest of a job is planned: joints that must come open again count as closed, new parts that
 * must come off again as fitted, what was read before the last joint was touched counts no more, each jack is where it
 * stands.
 *
 * @param again joints that were done up and must come open again, new parts that must come off again
 * @param own whether each corner has a jack of its own
 * @source own derivation: docs/methods/plan.md
 */
export function restFrom(assembly: Assembly, state: State, again: ReadonlySet<string>, own: boolean): State {
  const is = (key: string) => factOf(state, key)
  const changed: Record<string, string> = {}
  for (const [key, value] of Object.entries(state))
    if (!key.startsWith(keys.jack)) changed[key] = value === 'broken' ? 'off' : value
  for (const { id } of Object.values(assembly.parts))
    if (again.has(id) && is(keys.part(id)) === 'new') changed[keys.part(id)] = 'fitted'
  // In its place and held by something, it is as it always was.
  for (const { id } of Object.values(assembly.parts))
    if (
      is(keys.part(id)) === 'fitted' &&
      jointsOf(assembly, id).some((joint) => is(keys.joint(joint.id)) !== 'open')
    )
      delete changed[keys.part(id)]
  const joints = Object.values(assembly.joints)
  for (const joint of joints) {
    const stage = jointStageOf(is(keys.joint(joint.id)))
    if (again.has(joint.id) && stage > 3) {
      changed[keys.joint(joint.id)] = 'closed'
      changed[keys.fastener(joint.id)] = 'old'
      if (hasPin(joint)) changed[keys.pin(joint.id)] = 'in'
      for (const adjuster of Object.values(assembly.adjusters))
        if (adjuster.joints.includes(joint.id)) changed[keys.adjuster(adjuster.id)] = 'disturbed'
    } else if (hasPin(joint) && stage > 0 && stage < 6) changed[keys.pin(joint.id)] = 'out'
  }
  for (const axle of assembly.axles) {
    const touched = joints.filter(
      (joint) => joint.axle === axle && changed[keys.joint(joint.id)] !== undefined,
    )
    const loose = touched.filter(({ id }) => !home.includes(changed[keys.joint(id)]!))
    const reset = again.size > 0 || loose.some(({ adjusts }) => !adjusts)
    const lifted = !(supports.onWheels as readonly string[]).includes(is(keys.support(axle)))
    if (reset || lifted || (loose.length > 0 && is(keys.reading(axle)) === 'proven'))
      delete changed[keys.reading(axle)]
    if (reset || lifted)
      for (const key of Object.keys(changed)) if (/^(learned |centring)/.test(key)) delete changed[key]
    if (loose.length > 0 || lifted) {
      delete changed[keys.road]
      delete changed[keys.handover]
      if (reset || lifted) delete changed[keys.clearance]
    }
    if (is(keys.support(axle)) === 'on a jack') changed[own ? `${keys.jack} ${axle}` : keys.jack] = 'in use'
  }
  for (const [key, value] of Object.entries(state))
    if (key.startsWith('arm ') && ['jack under', 'raised to ride height'].includes(value))
      changed[own ? `${keys.jack} ${key.slice('arm '.length)}` : keys.jack] = 'in use'
  return changed
}
