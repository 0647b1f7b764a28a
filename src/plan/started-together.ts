import type { JointNode } from './assembly.ts'
import { jointHabits } from './joint-habits.ts'
import { jointsOf } from './joints-of.ts'
import type { Work } from './work.ts'

/**
 * The joints that are all started by hand before the first of them is run up: several bolts between the same two
 * parts. None for a joint that stands alone.
 *
 * @source common practice, no source
 */
export function startedTogether(work: Work, joint: JointNode): readonly JointNode[] {
  const [one, other] = joint.joins
  const all = jointsOf(work.assembly, one).filter((beside) => {
    const habit = jointHabits[beside.kind]
    return (
      beside.joins.includes(other) &&
      work.open.has(beside.id) &&
      habit.threaded &&
      !habit.taper &&
      beside.kind !== 'wheel nuts'
    )
  })
  return all.length > 1 && all.includes(joint) ? all : []
}
