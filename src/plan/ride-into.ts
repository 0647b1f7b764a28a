import type { Action, Need } from './action.ts'
import type { AxleName, JointNode, Side } from './assembly.ts'
import type { Choice } from './choice.ts'
import { closingActions } from './closing-actions.ts'
import { dropLinkJoints } from './drop-link-joints.ts'
import { keys } from './keys.ts'
import { rideActions } from './ride-actions.ts'
import { targetOf } from './target-of.ts'
import { whereOf } from './where-of.ts'
import type { Work } from './work.ts'

/**
 * Puts into the refit, for each corner that is raised to ride height by a jack, the raising, the bolts that are final
 * there and the lowering: after they are run up, before link and wheel are back.
 *
 * @source own derivation: docs/methods/plan.md
 */
export function rideInto(
  work: Work,
  choice: Choice,
  refit: readonly Action[],
  later: readonly JointNode[],
): Action[] {
  const { assembly } = work
  const result = [...refit]
  for (const where of choice.raised) {
    const [axle, side] = where.split(' ') as [AxleName, Side]
    const bolts = later.filter((joint) => isRaised(joint, where))
    const link = dropLinkJoints(assembly, { axle, side }).filter((id) => work.open.has(id))
    const ride = rideActions(assembly, { axle, side })
    const held = Object.values(assembly.holds).filter((hold) => whereOf(hold) === where)
    const linkOff: readonly Need[] = link.slice(0, 1).map((joint) => ({
      key: keys.joint(joint),
      is: ['open', 'started'],
      why: 'the anti-roll bar would lift the other side',
      rule: 'I7b',
    }))
    const needs: readonly Need[] = [
      ...bolts.map((joint) => ({ key: keys.joint(joint.id), is: ['run up'], why: 'it is run up' })),
      ...held.map((hold) => ({
        key: keys.energy(hold.id),
        is: ['held by its set'],
        why: 'its spring carries',
      })),
      ...held
        .flatMap(({ joints }) => joints)
        .map((joint) => ({
          key: keys.joint(joint),
          is: ['closed', 'run up', 'final', 'checked'],
          why: 'the corner is whole',
          rule: 'I4' as const,
        })),
      ...linkOff,
    ]
    const closers = link.map((id) => `close ${id}`).concat(link.map((id) => `start ${id}`))
    const wheel = Object.values(assembly.parts).find(
      (part) => part.kind === 'wheel' && whereOf(part) === where,
    )
    const at = result.findIndex(({ id }) => closers.includes(id) || id === `fit ${wheel?.id}`)
    const added = [
      ride.raise(targetOf(work, axle), needs),
      ...bolts.map((joint) => closingActions(work, joint).final('jack under the arm')),
      ...bolts
        .filter(({ red }) => red)
        .map((joint) => ({ ...closingActions(work, joint).check(), place: 'at the wheel' as const })),
      ride.away(linkOff),
    ]
    result.splice(at < 0 ? result.length : at, 0, ...added)
  }
  return result
}

/** Whether a joint is made final with its corner raised by a jack. */
const isRaised = (joint: JointNode, where: string) =>
  joint.final === 'at ride height' && !joint.adjusts && whereOf(joint) === where
