import type { Need } from './action.ts'
import type { JointNode } from './assembly.ts'
import { keys } from './keys.ts'
import type { Work } from './work.ts'

/**
 * The nut of a strut's piston rod goes on while the spring is captured: slack, the spring is longer than its strut.
 *
 * @source common practice, no source
 */
export const capturedNeeds = ({ assembly }: Work, joint: JointNode): readonly Need[] =>
  joint.kind === 'strut top nut'
    ? Object.values(assembly.holds)
        .filter(({ joints }) => joints.includes(joint.id))
        .map((hold) => ({
          key: keys.energy(hold.id),
          is: ['in the compressor'],
          why: `the ${hold.called} is longer than its strut until it is captured`,
          rule: 'I13',
        }))
    : []
