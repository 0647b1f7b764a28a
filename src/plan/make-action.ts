import type { Action } from './action.ts'
import { usualMinutes } from './usual-minutes.ts'

/**
 * An action with what it leaves out filled in: no tool, nothing to record, its verb's usual time.
 *
 * @source definition
 */
export function makeAction(action: Pick<Action, 'id' | 'verb' | 'words' | 'why'> & Partial<Action>): Action {
  return {
    axle: null,
    side: null,
    how: {},
    tool: null,
    place: 'around the vehicle',
    needs: [],
    effects: {},
    minutes: usualMinutes[action.verb],
    risk: null,
    cautions: [],
    records: [],
    ...action,
  }
}
