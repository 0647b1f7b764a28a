import type { Assembly, JointNode } from './assembly.ts'
import { factOf } from './fact-of.ts'
import { hasPin } from './has-pin.ts'
import { jointStageOf } from './joint-stage-of.ts'
import { jointsOf } from './joints-of.ts'
import { keys } from './keys.ts'
import type { State } from './state.ts'
import { supports } from './supports.ts'

const brakes = ['caliper', 'brake carrier', 'hose']
const hanging = ['knuckle', 'axle beam', 'sub-frame', 'strut', 'rack', 'drive shaft']

/**
 * What makes a vehicle unsafe to be left standing: a jack alone, stands that nobody saw loaded, a spring that a jack
 * holds, a line that drips, a heavy part that hangs on what is left of its joints.
 *
 * @returns keys of the state
 * @source common practice, no source
 */
export function unsafeToStand(assembly: Assembly, state: State): readonly string[] {
  const is = (key: string) => factOf(state, key)
  const joints = Object.values(assembly.joints)
  return [
    ...assembly.axles
      .map(keys.support)
      .filter((key) => !(supports.carried as readonly string[]).includes(is(key))),
    ...Object.keys(state).filter(
      (key) => key.startsWith('arm ') && ['jack under', 'raised to ride height'].includes(is(key)),
    ),
    ...Object.keys(assembly.holds)
      .map(keys.energy)
      .filter((key) => is(key) === 'held by the jack'),
    ...dripping(assembly, state).map(keys.cap),
    ...looseParts(assembly, state).map(keys.tied),
    ...joints
      .filter(
        ({ kind, axle, id }) =>
          kind === 'wheel nuts' && isOpen(is(keys.joint(id))) && onWheels(is(keys.support(axle))),
      )
      .map(({ id }) => keys.joint(id)),
  ]
}

/**
 * What makes a vehicle unsafe to be rolled: anything off, a joint that is not run up, what steers, brakes or holds a
 * wheel not final, a spring not held by its own, a line not bled, a pedal not firm.
 *
 * @returns keys of the state
 * @source common practice, no source
 */
export function unsafeToRoll(assembly: Assembly, state: State): readonly string[] {
  const is = (key: string) => factOf(state, key)
  const joints = Object.values(assembly.joints)
  const stage = ({ id }: JointNode) => jointStageOf(is(keys.joint(id)))
  const isTight = (joint: JointNode) => isTightToRoll(assembly, joint)
  const loose = joints.filter((joint) => stage(joint) > 0 && stage(joint) < (isTight(joint) ? 6 : 5))
  const unpinned = joints.filter(
    (joint) => hasPin(joint) && stage(joint) > 5 && is(keys.pin(joint.id)) === 'out',
  )
  const wants = (all: readonly string[], ...good: readonly string[]) =>
    all.filter((key) => !good.includes(is(key)))
  return [
    ...loose.map(({ id }) => keys.joint(id)),
    ...unpinned.map(({ id }) => keys.pin(id)),
    ...wants(Object.keys(assembly.parts).map(keys.part), 'fitted', 'new'),
    ...wants(Object.keys(assembly.holds).map(keys.energy), 'held by its set'),
    ...wants(
      Object.keys(state).filter((key) => key.startsWith('arm ')),
      'free',
    ),
    ...wants(
      joints.map(({ id }) => keys.line(id)),
      'tight',
      'bled, no leak',
    ),
    ...wants(assembly.axles.map(keys.axleStands), 'none'),
    ...wants(assembly.axles.map(keys.support), ...supports.onWheels),
    ...wants([keys.pedal], 'firm'),
    ...wants([keys.shaft], 'whole'),
  ]
}

/** What steers, brakes or holds a wheel is final before it rolls, but for what is set later. */
export const isTightToRoll = (assembly: Assembly, joint: JointNode): boolean =>
  joint.final !== 'at ride height' &&
  !joint.adjusts &&
  (joint.red || joint.steers || joint.joins.some((part) => brakes.includes(assembly.parts[part]!.kind)))

/** Unions that are open and not capped. */
export const dripping = ({ joints }: Assembly, state: State): readonly string[] =>
  Object.keys(joints).filter(
    (id) =>
      joints[id]!.kind === 'hydraulic union' &&
      isOpen(factOf(state, keys.joint(id))) &&
      factOf(state, keys.cap(id)) !== 'on',
  )

/** Heavy parts on the vehicle with a joint open, that nothing ties up. */
export const looseParts = (assembly: Assembly, state: State): readonly string[] =>
  Object.values(assembly.parts)
    .filter(
      ({ id, kind }) =>
        hanging.includes(kind) && !['off', 'freed', 'broken'].includes(factOf(state, keys.part(id))),
    )
    .filter(({ id }) =>
      jointsOf(assembly, id).some((joint) => joint.locates && isOpen(factOf(state, keys.joint(joint.id)))),
    )
    .filter(({ id }) => factOf(state, keys.tied(id)) !== 'yes')
    .map(({ id }) => id)

const isOpen = (is: string) => is === 'open' || is === 'started'
const onWheels = (is: string) => (supports.onWheels as readonly string[]).includes(is)
