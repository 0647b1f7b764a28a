import type { Assembly, StandIn } from './assembly.ts'
import type { Branch } from './failure-branch.ts'

/** What is to be done with an assembly, as the makers of actions need it. @source definition */
export interface Work {
  readonly assembly: Assembly
  /** Parts that come new. */
  readonly renewed: ReadonlySet<string>
  /** Joints that come undone on the vehicle, and those that do on the bench. */
  readonly open: ReadonlySet<string>
  readonly bench: ReadonlySet<string>
  /** Parts that come off. */
  readonly off: ReadonlySet<string>
  /** What stands in for which hold. */
  readonly standIns: Readonly<Record<string, StandIn>>
  /** Holds that are let down to nothing, or taken out. */
  readonly letDown: ReadonlySet<string>
  /** Why a joint is opened or a part comes off, by id. */
  readonly why: Readonly<Record<string, string>>
  /** Another person is there to look. */
  readonly checker: 'another person' | 'the same person, later'
  /** What went wrong, and what that makes of the plan. */
  readonly branches: readonly Branch[]
}
