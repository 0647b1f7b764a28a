import { type Assembly, branchesOf, type Failure, failureRungs, type Goal } from '../plan/index.ts'
import type { PlanSheet } from './plan-sheet.ts'

/**
 * What failed and what the plan does about it, a sentence each: the way it is undone now, what that costs, where the
 * work stops to look, what comes next if it does not do.
 *
 * @source own derivation: docs/methods/plan.md
 */
export function planBranches(assembly: Assembly, goal: Goal): PlanSheet['branches'] {
  const called = (id: string) => assembly.parts[id]?.called ?? id
  return branchesOf(assembly, goal).map((branch) => {
    const { failure, joint, rung, next, fastener, mended, look } = branch
    const does = rung ? [lowered(failureRungs[rung].does(joint!.called))] : []
    const box =
      failure.what === 'wrong part in the box'
        ? [
            `the plan stops before anything is loosened for the ${called(failure.part!)}, until the right one is there and compared`,
          ]
        : []
    const lost = [
      ...branch.replaced
        .filter((id) => !goal.replace.includes(id))
        .map((id) => `the ${called(id)} comes new`),
      ...(mended
        ? [
            mended.what === 'bush'
              ? `its bush is sawn out with it and comes new, pressed in with the ${called(mended.part)} off`
              : `a new wheel stud is drawn into the ${called(mended.part)}`,
          ]
        : []),
      ...(fastener ? ['its fastener comes new'] : []),
    ]
    const stop = look ? [`before it is closed the work stops to look at ${look}`] : []
    const then = next ? [`if that does not do, next is ${failureRungs[next].called}`] : []
    return {
      words: `${capital([...does, ...box, ...lost, ...stop, ...then].join('; '))}.`,
      because: `${failure.what}: ${joint?.called ?? called(failure.part!)}${tried(failure)}`,
    }
  })
}

const tried = ({ tried: rungs = [] }: Failure) =>
  rungs.length > 0 ? ` (tried in vain: ${rungs.map((rung) => failureRungs[rung].called).join(', ')})` : ''
const capital = (text: string) => text.charAt(0).toUpperCase() + text.slice(1)
const lowered = (text: string) => text.charAt(0).toLowerCase() + text.slice(1)
