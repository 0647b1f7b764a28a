import type { Failure } from './failure.ts'

/** What is to be done: parts to replace and joints to open, by their ids; and what went wrong with it. @source definition */
export interface Goal {
  readonly replace: readonly string[]
  readonly open?: readonly string[]
  readonly failed?: readonly Failure[]
  /** Nothing is to be finished: only made safe to be left, or to be rolled at yard pace. */
  readonly make?: 'safe to stand' | 'safe to roll'
}
