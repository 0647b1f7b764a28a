import type { Assembly } from './assembly.ts'
import { branchesOf } from './failure-branches.ts'
import type { Goal } from './goal.ts'
import { keys } from './keys.ts'
import type { State } from './state.ts'

const putBack = ['started', 'run up', 'final', 'checked']

/**
 * A recorded state as what failed leaves it: a joint that was put back and has failed since counts as never undone, so
 * that it is undone again, the way its failure asks for, and closed with what is new.
 *
 * @source own derivation: docs/methods/plan.md
 */
export function stateAsFailed(assembly: Assembly, goal: Goal, state: State): State {
  if (!goal.failed?.length || Object.keys(state).length === 0) return state
  const failed = branchesOf(assembly, goal)
    .filter(({ fastener, mended, look, rung }) => fastener || mended || look || rung)
    .flatMap(({ joint }) => (joint && putBack.includes(state[keys.joint(joint.id)] ?? '') ? [joint.id] : []))
  const forgotten = new Set(
    failed.flatMap((id) => [
      keys.joint(id),
      keys.fastener(id),
      keys.pin(id),
      keys.look(id),
      keys.mending(id),
    ]),
  )
  return Object.fromEntries(Object.entries(state).filter(([key]) => !forgotten.has(key)))
}
