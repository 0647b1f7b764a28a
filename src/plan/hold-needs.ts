import type { Need } from './action.ts'
import type { JointNode } from './assembly.ts'
import { keys } from './keys.ts'
import type { Work } from './work.ts'

/**
 * What must be so of stored energy before a joint that keeps it in may be undone or done up: a stand-in holds it, or
 * it is let down. What a jack under the arm stands on, the arm's own pivots, only when nothing is left to hold.
 *
 * @source common practice, no source
 */
export function holdNeeds(work: Work, joint: JointNode): readonly Need[] {
  const { assembly, standIns } = work
  return Object.values(assembly.holds)
    .filter((hold) => hold.joints.includes(joint.id))
    .map((hold) => ({
      key: keys.energy(hold.id),
      // Over a jack all joints but the arm's pivots are undone and made while the jack holds.
      is: work.bench.has(joint.id)
        ? ['held by the jack', 'let down', 'in the compressor']
        : standIns[hold.id] !== 'jack under the arm'
          ? ['let down', 'in the compressor']
          : hold.jackPath.includes(joint.id)
            ? ['let down']
            : ['held by the jack'],
      why: `it helps to keep the ${hold.called} in`,
      rule:
        joint.kind === 'strut top nut'
          ? 'I13'
          : hold.stores === 'torsion bar'
            ? 'I11'
            : hold.stores === 'air'
              ? 'I12'
              : 'I3',
    }))
}
