import type { Need } from './action.ts'
import type { JointNode } from './assembly.ts'
import { keys } from './keys.ts'
import type { Work } from './work.ts'

/**
 * A wheel that comes off is the first thing off its corner and the last thing on: every joint of the corner is undone
 * and done up while it is off.
 *
 * @source common practice, no source
 */
export function wheelOffNeeds(work: Work, joint: JointNode): readonly Need[] {
  if (joint.place === 'in the cabin' || work.bench.has(joint.id)) return []
  return Object.values(work.assembly.parts)
    .filter(
      (part) =>
        part.kind === 'wheel' &&
        part.axle === joint.axle &&
        (joint.side === null || part.side === joint.side) &&
        work.off.has(part.id) &&
        !joint.joins.includes(part.id),
    )
    .map((part) => ({ key: keys.part(part.id), is: ['off'], why: 'the wheel is off by then', custom: true }))
}
