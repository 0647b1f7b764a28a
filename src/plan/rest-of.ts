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

/** What an order is to reach, and what of the state may be changed for it. */
interface RestTo {
  /** Whether a state is the end. */
  readonly isReached: (state: State) => boolean
  /** Joints that were done up and must come open again, new parts that must come off again. */
  readonly again?: ReadonlySet<string>
  /** Parts and joints that come apart for the goal’s sake. */
  readonly wanted?: ReadonlySet<string>
  /** Joints that were done up and that nothing of the goal asks to come open again. */
  readonly stays?: (joint: string) => boolean
}

/**
 * What is left of a whole order once the state has some of it behind it: what is done is left out, what has to come
 * open again is opened again, the steering is turned from where it stands, and nothing is done that nobody needs.
 *
 * @param whole an order that works from the sound vehicle
 * @returns null when no such order works
 * @source own derivation: docs/methods/plan.md
 */
export function restOf(
  assembly: Assembly,
  whole: readonly Action[],
  state: State,
  { isReached, again = new Set(), wanted = new Set(), stays = () => false }: RestTo,
): Rest | null {
  // What was lost before joints came open is not as found again when they are shut.
  const left = whole.filter((action) => action.verb !== 'record heights' || !isDone(action, state))
  const onWheels = left.filter(({ verb }) => !lifting.includes(verb))
  const to = { isReached, again, wanted, stays }
  return tried(assembly, onWheels, state, to) ?? tried(assembly, left, state, to)
}

/** Lifted only where it must be: lifting ends what was settled, read and seen. */
const lifting: readonly Verb[] = ['jack up', 'stands', 'see loaded', 'lift', 'lock arms']

function tried(
  assembly: Assembly,
  whole: readonly Action[],
  state: State,
  to: Required<RestTo>,
  never: ReadonlySet<string> = new Set(),
): Rest | null {
  const { isReached, wanted, stays } = to
  const own = whole.some(({ effects }) => Object.keys(effects).some((key) => key.startsWith(`${keys.jack} `)))
  const reopened = new Set(to.again)
  for (let nth = 0; nth < mostRepairs; nth++) {
    const from = restFrom(assembly, state, reopened, own)
    const walked = walk(assembly, whole, from, {
      wanted,
      stays: (id) => stays(id) && !reopened.has(id),
    })
    if ('actions' in walked) {
      if (!isReached(walked.state)) return null
      const actions = fewestActions(walked.actions, from, isReached, wanted)
      // What was taken for closed to be opened again, and was not, is left half done.
      const half = [...reopened].filter((id) => isHalf(state, id) && !opens(actions, id))
      if (half.length > 0) {
        const again = new Set([...reopened].filter((id) => !half.includes(id)))
        return tried(assembly, whole, state, { ...to, again }, new Set([...never, ...half]))
      }
      // Without what nobody needed, less may have to be done again.
      const kept = new Set(actions.map(({ id }) => id))
      const left = new Set(walked.actions.map(({ id }) => id).filter((id) => !kept.has(id)))
      const less = whole.filter(({ id }) => !left.has(id))
      if (less.length === whole.length) return { actions, from }
      return tried(assembly, less, state, { ...to, again: reopened }, never) ?? { actions, from }
    }
    const before = reopened.size
    for (const id of toReopen(assembly, walked, from)) if (!never.has(id)) reopened.add(id)
    if (reopened.size === before) return null
  }
  return null
}

const isHalf = (state: State, id: string) => ['started', 'run up'].includes(factOf(state, keys.joint(id)))
const opens = (actions: readonly Action[], id: string) =>
  actions.some(({ effects }) => effects[keys.joint(id)] === 'open')

interface Walked {
  readonly actions: readonly Action[]
  readonly state: State
}
/** An action that could not be done, and what it lacked. */
interface Skipped {
  readonly effects: Action['effects']
  readonly lacks: readonly Need[]
}
interface Stuck {
  readonly lacks: readonly Need[]
  readonly skipped: readonly Skipped[]
}

function walk(
  assembly: Assembly,
  whole: readonly Action[],
  from: State,
  spares: Pick<Required<RestTo>, 'stays' | 'wanted'>,
): Walked | Stuck {
  const care = aftercareActions(assembly.axles)
  const actions: Action[] = []
  const skipped: Skipped[] = []
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
  for (const [at, action] of whole.entries()) {
    if (action.verb === 'steer' || isDone(action, state)) continue
    if (action.verb === 'hold steering wheel' && !asksToHold(whole.slice(at + 1), state)) continue
    const some = asLeft(assembly, action, state)
    if (!some) continue
    const left = {
      ...some,
      needs: some.needs.filter((need) => !isSpared(assembly, need, action, from, spares)),
    }
    const turned = left.needs.find(({ key }) => key === keys.steering)
    const others = unmetNeeds({ needs: left.needs.filter((need) => need !== turned) }, state).filter(
      ({ custom }) => !custom,
    )
    if (others.length > 0 && optional.includes(left.verb)) {
      skipped.push({ effects: left.effects, lacks: others })
      continue
    }
    if (turned && !turned.is.includes(factOf(state, keys.steering))) steer(turned.is[0]!)
    if (left.verb === 'lower') steer('straight')
    const lacks = unmetNeeds(left, state)
    const hard = lacks.filter(({ custom }) => !custom)
    if (hard.length > 0) return { lacks: hard, skipped }
    push({ ...left, needs: left.needs.filter((need) => !lacks.includes(need)) })
  }
  steer('straight')
  return { actions, state }
}

/** Whether something that is still to be done asks for the steering wheel to be held. */
const asksToHold = (actions: readonly Action[], state: State): boolean =>
  actions.some(
    (action) =>
      !isDone(action, state) &&
      action.needs.some(({ key, is }) => key === keys.steeringWheel && !is.includes('free')),
  )

/** What stays done up need not be open for an arm to swing down, nor for a part to come off that comes off without it. */
function isSpared(
  { joints }: Assembly,
  { key, is, rule }: Need,
  { verb, part = '' }: Action,
  from: State,
  { stays, wanted }: Pick<Required<RestTo>, 'stays' | 'wanted'>,
): boolean {
  if (!key.startsWith('joint ') || !is.includes('open') || rule || jointStageOf(factOf(from, key)) < 4)
    return false
  const id = key.slice('joint '.length)
  if (!stays(id)) return false
  if (verb === 'let down with the jack') return true
  // What comes off with the part as one piece comes off only free of all else.
  return (verb === 'take off' || verb === 'hang') && wanted.has(part) && joints[id]!.joins.includes(part)
}

/** The joints that must come open, and new parts off, for what is lacking, and for what could not be done that would bring it about. */
function toReopen(assembly: Assembly, { lacks, skipped }: Stuck, state: State): readonly string[] {
  const isUp = (id: string) => jointStageOf(factOf(state, keys.joint(id))) > 3
  const found: string[] = []
  const causes = [...lacks]
  for (const { key, is } of causes) {
    const before = skipped.filter(({ effects }) => is.includes(effects[key] ?? ''))
    for (const one of before) for (const need of one.lacks) if (!causes.includes(need)) causes.push(need)
    const id = key.slice(key.indexOf(' ') + 1)
    if (key.startsWith('joint ') && is.includes('open') && isUp(id)) found.push(id)
    if (!key.startsWith('part ') || !is.includes('off')) continue
    if (factOf(state, key) === 'new') found.push(id)
    if (before.length === 0)
      found.push(
        ...jointsOf(assembly, id)
          .map((joint) => joint.id)
          .filter(isUp),
      )
  }
  return found
}
