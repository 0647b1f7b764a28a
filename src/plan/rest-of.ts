import type { Action, Need, Verb } from './action.ts'
import { afterAction } from './after-action.ts'
import { aftercareActions } from './aftercare-actions.ts'
import { asLeft } from './as-left.ts'
import type { Assembly } from './assembly.ts'
import { factOf } from './fact-of.ts'
import { fewestActions } from './fewest-actions.ts'
import { isDone } from './is-done.ts'
import { jointStageOf } from './joint-stage-of.ts'
import { jointsOf } from './joints-of.ts'
import { keys } from './keys.ts'
import { restFrom } from './rest-from.ts'
import type { State } from './state.ts'
import { unmetNeeds } from './unmet-needs.ts'

/** What is left of a job, as one order that works, and the state it starts from. @source definition */
export interface Rest {
  readonly actions: readonly Action[]
  readonly from: State
}

/** Left out where it cannot be done: what it is for shows whether it was needed. */
const optional: readonly Verb[] = [
  'mark',
  'crack',
  'free',
  'open',
  'take off',
  'hang',
  'jack under arm',
  'let down with the jack',
  'raise to ride height',
  'compress',
  'release compressor',
  'axle on stands',
  'unwind',
  'deflate',
  'hold steering wheel',
  'make airbag safe',
  'roll and settle',
  'drive onto ramps',
  'record heights',
  'tail support',
  'stands',
  'see loaded',
  'lock arms',
]
const mostRepairs = 12

/**
 * What is left of a whole order once the state has some of it behind it: what is done is left out, what has to come
 * open again is opened again, the steering is turned from where it stands, and nothing is done that nobody needs.
 *
 * @param whole an order that works from the sound vehicle
 * @param again joints that were done up and must come open again
 * @param isReached whether a state is the end
 * @param wanted parts and joints that come apart for the goal’s sake
 * @returns null when no such order works
 * @source own derivation: docs/methods/plan.md
 */
export function restOf(
  assembly: Assembly,
  whole: readonly Action[],
  state: State,
  again: ReadonlySet<string>,
  isReached: (state: State) => boolean,
  wanted: ReadonlySet<string>,
): Rest | null {
  const onWheels = whole.filter(({ verb }) => !lifting.includes(verb))
  return (
    tried(assembly, onWheels, state, again, isReached, wanted) ??
    tried(assembly, whole, state, again, isReached, wanted)
  )
}

/** Lifted only where it must be: lifting ends what was settled, read and seen. */
const lifting: readonly Verb[] = ['jack up', 'stands', 'see loaded', 'lift', 'lock arms']

function tried(
  assembly: Assembly,
  whole: readonly Action[],
  state: State,
  again: ReadonlySet<string>,
  isReached: (state: State) => boolean,
  wanted: ReadonlySet<string>,
): Rest | null {
  const own = whole.some(({ effects }) => Object.keys(effects).some((key) => key.startsWith(`${keys.jack} `)))
  const reopened = new Set(again)
  for (let nth = 0; nth < mostRepairs; nth++) {
    const from = restFrom(assembly, state, reopened, own)
    const walked = walk(assembly, whole, from)
    if ('actions' in walked) {
      if (!isReached(walked.state)) return null
      const actions = fewestActions(walked.actions, from, isReached, wanted)
      // Without what nobody needed, less may have to be done again.
      const kept = new Set(actions.map(({ id }) => id))
      const left = new Set(walked.actions.map(({ id }) => id).filter((id) => !kept.has(id)))
      const less = whole.filter(({ id }) => !left.has(id))
      if (less.length === whole.length) return { actions, from }
      return tried(assembly, less, state, reopened, isReached, wanted) ?? { actions, from }
    }
    const before = reopened.size
    for (const id of toReopen(assembly, walked.lacks, from)) reopened.add(id)
    if (reopened.size === before) return null
  }
  return null
}

function walk(
  assembly: Assembly,
  whole: readonly Action[],
  from: State,
): { readonly actions: readonly Action[]; readonly state: State } | { readonly lacks: readonly Need[] } {
  const care = aftercareActions(assembly.axles)
  const actions: Action[] = []
  let state = from
  let turns = 0
  const push = (action: Action) => {
    actions.push(action)
    state = afterAction(state, action)
  }
  const steer = (to: string) => {
    if (factOf(state, keys.steering) === to || factOf(state, keys.shaft) === 'parted') return
    push(care.steer(to as 'straight', `again ${++turns}`))
  }
  for (const action of whole) {
    if (action.verb === 'steer' || isDone(action, state)) continue
    const left = asLeft(assembly, action, state)
    if (!left) continue
    const turned = left.needs.find(({ key }) => key === keys.steering)
    const others = unmetNeeds({ needs: left.needs.filter((need) => need !== turned) }, state).filter(
      ({ custom }) => !custom,
    )
    if (others.length > 0 && optional.includes(left.verb)) continue
    if (turned && !turned.is.includes(factOf(state, keys.steering))) steer(turned.is[0]!)
    if (left.verb === 'lower') steer('straight')
    const lacks = unmetNeeds(left, state)
    const hard = lacks.filter(({ custom }) => !custom)
    if (hard.length > 0) return { lacks: hard }
    push({ ...left, needs: left.needs.filter((need) => !lacks.includes(need)) })
  }
  steer('straight')
  return { actions, state }
}

/** The joints that must come open for what is lacking. */
function toReopen(assembly: Assembly, lacks: readonly Need[], state: State): readonly string[] {
  const isUp = (id: string) => jointStageOf(factOf(state, keys.joint(id))) > 3
  return lacks.flatMap(({ key, is }) => {
    const id = key.slice(key.indexOf(' ') + 1)
    if (key.startsWith('joint ') && is.includes('open')) return isUp(id) ? [id] : []
    if (!key.startsWith('part ') || !is.includes('off')) return []
    return jointsOf(assembly, id)
      .map((joint) => joint.id)
      .filter(isUp)
  })
}
