import type { Action } from './action.ts'
import type { State } from './state.ts'

/**
 * The state after an action: its effects laid over the state before.
 *
 * @source definition
 * @example afterAction({ chocks: 'not set' }, { effects: { chocks: 'set' } }) // {"chocks": "set"}
 */
export const afterAction = (state: State, action: Pick<Action, 'effects'>): State => ({
  ...state,
  ...action.effects,
})
