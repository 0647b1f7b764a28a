import type { Assembly } from './assembly.ts'
import { branchesOf } from './failure-branches.ts'
import type { Goal } from './goal.ts'

/** A goal with what its failures ask for besides. @source own derivation: docs/methods/plan.md */
export interface WholeGoal extends Goal {
  /** Parts that come off only to be mended on the bench. */
  readonly off: readonly string[]
  /** Joints that are sawn through: a spring beside one is let down first. */
  readonly cut: readonly string[]
}

/**
 * A goal with what its failures ask for besides: parts that come new, joints that must open, parts that come off to be
 * mended, springs to let down before the saw.
 *
 * @throws {Refusal} `no-such-failure`, `no-way-left`
 * @source own derivation: docs/methods/plan.md
 */
export function wholeGoal(assembly: Assembly, goal: Goal): WholeGoal {
  if (!goal.failed?.length) return { ...goal, off: [], cut: [] }
  const branches = branchesOf(assembly, goal)
  const unique = (ids: readonly string[]) => [...new Set(ids)]
  const opened = branches.flatMap(({ joint, failure }) =>
    joint && failure.what !== 'split boot' && failure.what !== 'wrong part in the box' ? [joint.id] : [],
  )
  const replace = unique([...goal.replace, ...branches.flatMap(({ replaced }) => replaced)])
  return {
    ...goal,
    replace,
    open: unique([...(goal.open ?? []), ...opened]),
    off: unique(branches.flatMap(({ off }) => off)).filter((id) => !replace.includes(id)),
    cut: branches.flatMap(({ joint, rung }) => (joint && rung === 'cut' ? [joint.id] : [])),
  }
}
