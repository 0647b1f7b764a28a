import type { Action, Need } from './action.ts'
import { factOf } from './fact-of.ts'
import type { State } from './state.ts'

/** What a state lacks before an action can be done. @source definition */
export const unmetNeeds = ({ needs }: Pick<Action, 'needs'>, state: State): readonly Need[] =>
  needs.filter(({ key, is }) => !is.includes(factOf(state, key)))
