import type { Addition } from './addition.ts'
import { agrees } from './agrees.ts'
import type { Assembly } from './assembly.ts'
import type { Choice } from './choice.ts'
import { dropLinkJoints } from './drop-link-joints.ts'
import { isUndone } from './is-undone.ts'
import { nodeNamed } from './node-named.ts'
import { whereOf } from './where-of.ts'

/**
 * What a choice lacks for a bush bolt that is not reached with the wheel on: it is made final with the corner raised
 * by a jack, the anti-roll link off.
 *
 * @source own derivation: docs/methods/plan.md
 */
export function* rideNeeds(assembly: Assembly, choice: Choice): Generator<readonly Addition[], void> {
  for (const id of choice.open) {
    const joint = assembly.joints[id]!
    if (joint.final !== 'at ride height' || joint.adjusts || joint.side === null) continue
    const wheelOff = joint.file.access?.some(
      ({ partOff }) => partOff && nodeNamed(assembly.parts, joint, partOff)?.kind === 'wheel',
    )
    if (!wheelOff) continue
    const where = whereOf(joint)
    if (!choice.raised.has(where))
      yield [
        {
          raised: where,
          why: `the ${joint.called} ${agrees(joint.called, 'is', 'are')} final at ride height and not reached with the wheel on`,
        },
      ]
  }
  for (const where of choice.raised) {
    const [axle, side] = where.split(' ') as [string, 'left' | 'right']
    const link = dropLinkJoints(assembly, { axle, side })
    if (link.length > 0 && !link.some((joint) => isUndone(choice, joint)))
      yield link.map((joint) => ({ open: [joint], why: 'the anti-roll bar would lift the other side' }))
  }
}
