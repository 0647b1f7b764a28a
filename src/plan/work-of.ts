import type { Assembly } from './assembly.ts'
import type { Choice } from './choice.ts'
import { branchesOf } from './failure-branches.ts'
import type { Goal } from './goal.ts'
import { wholeGoal } from './whole-goal.ts'
import type { Work } from './work.ts'

/** A goal and one choice to reach it, as the makers of actions need it. @source definition */
export const workOf = (
  assembly: Assembly,
  goal: Goal,
  choice: Choice,
  checker: Work['checker'] = 'another person',
): Work => ({
  assembly,
  renewed: new Set(wholeGoal(assembly, goal).replace),
  open: choice.open,
  bench: choice.bench,
  off: choice.off,
  standIns: choice.standIns,
  letDown: choice.letDown,
  why: choice.why,
  checker,
  branches: branchesOf(assembly, goal),
})
