import type { Action, Verb } from './action.ts'
import { afterAction } from './after-action.ts'
import type { State } from './state.ts'
import { unmetNeeds } from './unmet-needs.ts'

/** What is done only for the sake of something else. */
const means: readonly Verb[] = [
  'chock',
  'mark',
  'crack',
  'free',
  'open',
  'take off',
  'hang',
  'jack up',
  'stands',
  'see loaded',
  'lift',
  'lock arms',
  'tail support',
  'lower',
  'drive onto ramps',
  'drive off ramps',
  'jack under arm',
  'let down with the jack',
  'raise to ride height',
  'compress',
  'release compressor',
  'axle on stands',
  'unwind',
  'levelling off',
  'deflate',
  'steer',
  'hold steering wheel',
  'make airbag safe',
  'roll and settle',
]
/** What is never left out. */
const ends: readonly Verb[] = [
  'record heights',
  'set pressures',
  'set toe',
  'set camber and caster',
  'set height',
  'see clearance',
  'look at lamp',
  'road test',
  'hand over',
  'tag',
]

/**
 * An order that works without what nobody needs: each action that is only a means is left out, with all that can then
 * not be done, as long as the end is still reached.
 *
 * @param actions an order that works from the state
 * @param isReached whether a state is the end
 * @param wanted parts and joints that come apart for the goal’s sake
 * @param spared verbs that may be left out besides
 * @source Nakhost and Müller 2010, action elimination
 */
export function fewestActions(
  actions: readonly Action[],
  from: State,
  isReached: (state: State) => boolean,
  wanted: ReadonlySet<string>,
  spared: readonly Verb[] = [],
): readonly Action[] {
  let kept = actions
  let at = 0
  while (at < kept.length) {
    const action = kept[at]!
    const isWanted =
      wanted.has(action.joint ?? '') || (wanted.has(action.part ?? '') && action.verb !== 'compare')
    const isMeans =
      ((means.includes(action.verb) || spared.includes(action.verb)) && !isWanted) ||
      (action.verb === 'read angles' && action.how['kind'] !== 'proving')
    const less = isMeans ? without(kept, at, from, isReached) : null
    if (less) kept = less
    else at++
  }
  return kept
}

function without(
  actions: readonly Action[],
  at: number,
  from: State,
  isReached: (state: State) => boolean,
): readonly Action[] | null {
  let state = from
  const kept: Action[] = []
  for (const [i, action] of actions.entries()) {
    if (i === at) continue
    if (i > at && unmetNeeds(action, state).length > 0) {
      if (ends.includes(action.verb)) return null
      continue
    }
    kept.push(action)
    state = afterAction(state, action)
  }
  return isReached(state) ? kept : null
}
