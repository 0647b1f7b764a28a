import type { Action } from '../action.ts'
import type { Assembly } from '../assembly.ts'
import type { RuleId } from '../rule-id.ts'
import type { State } from '../state.ts'

/** An action about to be done: on what, in which state, and which parts of it are replaced. @source definition */
export interface Moment {
  readonly assembly: Assembly
  readonly state: State
  readonly action: Action
  /** Parts that come new: the old ones are scrap. */
  readonly renewed: ReadonlySet<string>
}

/** A rule that the action would break. @source definition */
export interface Broken {
  readonly rule: RuleId
  /** What would happen. */
  readonly would: string
  /** What to do instead. */
  readonly instead: string
}

/** One rule: what it says of an action, or nothing. @source definition */
export type Interlock = (moment: Moment) => Broken | null
