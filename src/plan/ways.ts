import type { NeededActions } from './needed-actions.ts'
import type { Rest } from './rest-of.ts'
import type { Work } from './work.ts'

/** The ways to go on from a state, and what they have in common. @source definition */
export interface WaysOn {
  readonly needed: NeededActions
  readonly work: Work
  readonly ways: readonly (Rest & { readonly done: readonly string[] })[]
  readonly troubles: readonly string[]
}
