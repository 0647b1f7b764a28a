import type { Action, Need } from './action.ts'
import type { JointNode } from './assembly.ts'
import type { Choice } from './choice.ts'
import { closingActions } from './closing-actions.ts'
import type { Consequence } from './consequence.ts'
import { hasPin } from './has-pin.ts'
import { keys } from './keys.ts'
import { readingActions } from './reading-actions.ts'
import { setAxle } from './set-axle.ts'
import { steeringTurner } from './steering-turner.ts'
import { supportActions } from './support-actions.ts'
import { whereOf } from './where-of.ts'
import type { Work } from './work.ts'

/**
 * What is done once the vehicle stands on its wheels again: settled, bush bolts final at ride height, angles read and
 * set, rear before front, camber and caster before toe, what holds an adjuster final after the last move, lock nuts
 * after toe, and the proving reading after all of them.
 *
 * @param later joints that are not final yet
 * @source common practice, no source
 */
export function anglesActions(
  work: Work,
  choice: Choice,
  later: readonly JointNode[],
  follows: readonly Consequence[],
): readonly Action[] {
  const { assembly } = work
  const support = supportActions(assembly.axles)
  const read = [...assembly.axles]
    .sort((a, b) => (a === b ? 0 : a === 'rear' ? -1 : 1))
    .filter((axle) => follows.some((one) => one.kind === 'angles' && one.axle === axle))
  const done = (joint: JointNode) =>
    joint.final === 'on the ground' ||
    (joint.final === 'at ride height' && !joint.adjusts && choice.raised.has(whereOf(joint)))
  const anchors = later.filter(({ kind }) => kind === 'anchor bolt')
  const bars = follows.flatMap(({ kind, axle }) => (kind === 'height of a torsion bar' && axle ? [axle] : []))
  const unwound = [...new Set([...anchors.map(({ axle }) => axle), ...bars])]
  const open = later.filter((joint) => !done(joint) && !anchors.includes(joint))
  if (open.length === 0 && read.length === 0 && unwound.length === 0) return []
  const first = open.filter((joint) => !joint.adjusts)
  const held = open.filter((joint) => joint.adjusts)
  const toes = Object.values(assembly.adjusters)
    .filter((one) => one.sets === 'toe' && read.includes(one.axle))
    .flatMap(({ joints }) => joints.map((id) => assembly.joints[id]!))
    .filter(({ adjusts }) => adjusts)
  // Where it is set from under, all wheels stand level there; else the angles are for the measuring place.
  const level = read.length > 0 && [...held, ...toes].some(({ place }) => place === 'under')
  const onRamps =
    unwound.length > 0 ||
    level ||
    [...open, ...toes].some(({ place, final }) => place === 'under' && final === 'at ride height')
  const care = readingActions(level)
  const actions: Action[] = [care.settle(assembly.axles, 1, wheelsTight(work))]
  if (onRamps) actions.push(support.ontoRamps(level))
  const steering = steeringTurner(assembly.axles, 'ride', (action) => actions.push(action))
  const finish = (joint: JointNode) => {
    steering.for(joint)
    const acts = closingActions(work, joint)
    actions.push(acts.final('on its wheels'))
    if (hasPin(joint)) actions.push(acts.pin())
    if (joint.red) actions.push(acts.check())
  }
  for (const axle of unwound) actions.push(care.setHeight(axle))
  for (const joint of anchors) finish(joint)
  for (const joint of first) finish(joint)
  steering.to('straight')

  const finals: readonly Need[] = [...work.open, ...work.bench]
    .filter((id) => !assembly.joints[id]!.adjusts)
    .map((id) => ({
      key: keys.joint(id),
      is: ['final', 'checked'],
      why: 'an open joint reads wrong',
      rule: 'I17',
    }))
  const isOffBefore = onRamps && !level && read.length > 0
  if (isOffBefore) {
    actions.push(support.offRamps())
    if (toes.length + held.length > 0 || read.length > 1)
      actions.push(care.settle(assembly.axles, 'before reading', []))
  }
  let after: readonly Need[] = []
  for (const axle of read) {
    const isLast = axle === read.at(-1)
    after = setAxle(work, axle, {
      after,
      isLast,
      finals,
      held: held.filter((joint) => joint.axle === axle),
      care,
      actions,
      steering,
    })
  }
  const left = held.filter(({ axle }) => !read.includes(axle))
  for (const joint of left) finish(joint)
  steering.to('straight')
  if (onRamps && !isOffBefore) actions.push(support.offRamps())
  if (read.length > 0) {
    const isMoved = actions.some(({ verb }) =>
      ['drive off ramps', 'set toe', 'set camber and caster'].includes(verb),
    )
    if (isMoved)
      actions.push(
        care.settle(
          assembly.axles,
          2,
          allFinal(work, actions).map((need) => ({ ...need, custom: true as const })),
        ),
      )
    const again: readonly Need[] = (isMoved ? assembly.axles : []).map((axle) => ({
      key: keys.settledAgain(axle),
      is: ['yes'],
      why: 'it is settled again after the last joint',
      custom: true,
    }))
    const set: readonly Need[] = actions
      .filter(({ verb }) => verb === 'set toe')
      .map(({ axle }) => ({
        key: keys.toe(axle!),
        is: ['set'],
        why: 'camber and caster move toe',
        rule: 'I17',
      }))
    for (const axle of read)
      actions.push(care.read(axle, 'proving', [...again, ...set, ...allFinal(work, actions)]))
  }
  return actions
}

/** Wheel nuts are final before the vehicle rolls. */
const wheelsTight = ({ assembly, open }: Work): readonly Need[] =>
  [...open]
    .filter((id) => assembly.joints[id]!.final === 'on the ground')
    .map((id) => ({ key: keys.joint(id), is: ['final', 'checked'], why: 'it rolls on them' }))

/** Every joint that was touched is final. */
function allFinal(work: Work, actions: readonly Action[]): readonly Need[] {
  const set = actions.flatMap(({ effects }) => Object.keys(effects)).filter((key) => key.startsWith('joint '))
  const touched = [...work.open, ...work.bench].map(keys.joint)
  return [...new Set([...touched, ...set])].map((key) => ({
    key,
    is: ['final', 'checked'],
    why: 'only what is read after the last joint is final counts',
    rule: 'I17',
  }))
}
