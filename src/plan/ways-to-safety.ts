import { Refusal } from '../quantity/index.ts'
import type { Action, Verb } from './action.ts'
import { afterAction } from './after-action.ts'
import type { Assembly, AxleName, Side, StandIn } from './assembly.ts'
import { choiceIn } from './choice-in.ts'
import { energyActions } from './energy-actions.ts'
import { factOf } from './fact-of.ts'
import { fewestActions } from './fewest-actions.ts'
import type { Goal } from './goal.ts'
import { interlocks } from './interlocks-table.ts'
import { keys } from './keys.ts'
import { makeAction } from './make-action.ts'
import { neededChoices } from './needed-choices.ts'
import type { PlanRefusal } from './plan-refusal.ts'
import { restFrom } from './rest-from.ts'
import { type Rest, restOf } from './rest-of.ts'
import { rideActions } from './ride-actions.ts'
import { type SequenceOptions, sequenceOf } from './sequence-of.ts'
import type { State } from './state.ts'
import { supportActions } from './support-actions.ts'
import { tagAction } from './tag-action.ts'
import { unmetNeeds } from './unmet-needs.ts'
import { dripping, isTightToRoll, looseParts, unsafeToRoll, unsafeToStand } from './unsafe-in.ts'
import type { WaysOn } from './ways.ts'
import { whereOf } from './where-of.ts'
import { wholeFrom } from './whole-from.ts'
import type { Work } from './work.ts'
import { workOf } from './work-of.ts'

const kept: readonly Verb[] = [
  'final',
  'pin',
  'bleed',
  'pump pedal',
  'fit',
  'compare',
  'start',
  'run up',
  'connect',
]
const later: readonly Verb[] = [
  'record heights',
  'set pressures',
  'hold steering wheel',
  'second check',
  'look at lamp',
  'check level sensor',
  'see clearance',
  'centre steering wheel',
  'electronics',
  'appoint re-tightening',
  'road test',
  'hand over',
]

/**
 * The ways to make a vehicle safe from a state: to stand, by what carries it, what holds its springs, caps and ties; to
 * roll, by putting back what is undone. Where standing safe asks for it, something is put back as well.
 *
 * @throws {Refusal} `part-missing` when a part is broken that it cannot roll without; `contradiction`
 * @source common practice, no source; own derivation: docs/methods/plan.md
 */
export function waysToSafety(
  assembly: Assembly,
  goal: Goal & { readonly make: 'safe to stand' | 'safe to roll' },
  state: State,
  {
    lacks,
    checker,
    orders,
  }: {
    readonly lacks: readonly StandIn[]
    readonly checker: Work['checker']
    readonly orders: (work: Work) => readonly SequenceOptions[]
  },
): WaysOn {
  const { make } = goal
  const touched = choiceIn(assembly, state, null, [1, 5])
  const isLeft = (id: string) =>
    factOf(state, keys.joint(id)) !== 'run up' || isTightToRoll(assembly, assembly.joints[id]!)
  const undone = { ...touched, open: new Set([...touched.open].filter(isLeft)) }
  // A part that was laid beside the old one is the one that goes in.
  const renewed = [...undone.off].filter((id) => factOf(state, keys.compared(id)) === 'beside the old')
  const nothingMore: Goal = { replace: renewed, open: [] }
  const isSafe = (end: State) =>
    factOf(end, keys.tag) === 'hung' &&
    (make === 'safe to roll' ? unsafeToRoll : unsafeToStand)(assembly, end).length === 0
  const found = (work: Work, ways: readonly Rest[]): WaysOn => ({
    needed: { choice: undone, minutes: 0, reasons: [], alternative: null },
    work,
    ways: ways.map(({ actions, from }) => ({ actions: tagLast(actions), from, done: [] })),
    troubles: [],
  })
  const work = workOf(assembly, nothingMore, undone, checker)
  if (make === 'safe to stand') {
    const rest = standing(work, state, isSafe)
    if (rest) return found(work, [rest])
  }
  const broken = Object.values(assembly.parts).filter(({ id }) => factOf(state, keys.part(id)) === 'broken')
  if (broken.length > 0)
    throw new Refusal<PlanRefusal>({
      code: 'part-missing',
      at: 'from',
      given: broken.map(({ id }) => id).join(', '),
      sentence: `It cannot be made ${make}: the ${broken.map(({ called }) => called).join(' and the ')} is broken and off.`,
      remedy: 'Have a good one first, or leave it standing on stands that were seen loaded.',
    })
  const { best: choice } = neededChoices(assembly, nothingMore, lacks, undone)
  const whole = workOf(assembly, nothingMore, choice, checker)
  const ways = orders(whole).flatMap((options) => {
    const actions = [
      ...wholeFrom(whole, untilItRolls(sequenceOf(whole, choice, options)), state),
      tagAction(assembly.axles, make),
    ]
    const rest = restOf(assembly, actions, state, { isReached: isSafe })
    if (!rest) return []
    return make === 'safe to roll'
      ? [rest]
      : [{ ...rest, actions: fewestActions(rest.actions, rest.from, isSafe, new Set(), kept) }]
  })
  if (ways.length > 0) return found(whole, ways)
  throw new Refusal<PlanRefusal>({
    code: 'contradiction',
    at: 'from',
    sentence: `No order was found that makes it ${make} from the state as recorded.`,
    remedy: 'Look whether what is recorded is so, and until then let nobody near it.',
  })
}

/** A whole order up to where the vehicle could roll. */
function untilItRolls(whole: readonly Action[]): readonly Action[] {
  const end = whole.findIndex(({ verb }) => verb === 'roll and settle')
  return whole.slice(0, end < 0 ? whole.length : end).filter(({ verb }) => !later.includes(verb))
}

/** The tag is hung when everything else is done. */
function tagLast(actions: readonly Action[]): readonly Action[] {
  const changed = Object.entries(Object.assign({}, ...actions.slice(0, -1).map(({ effects }) => effects)))
  return actions.map((action) =>
    action.verb === 'tag'
      ? {
          ...action,
          needs: [
            ...action.needs,
            ...changed.map(([key, is]) => ({
              key,
              is: [is as string],
              why: 'the tag says how it was left',
              custom: true as const,
            })),
          ],
        }
      : action,
  )
}

/** What carries it, what holds its springs, caps and ties: as far as each can be done. */
function standing(work: Work, state: State, isSafe: (state: State) => boolean): Rest | null {
  const { assembly } = work
  const from = restFrom(assembly, state, new Set(), false)
  const actions: Action[] = []
  let now = from
  const push = (action: Action) => {
    if (unmetNeeds(action, now).some(({ custom }) => !custom)) return
    const moment = { assembly, state: now, action, renewed: work.renewed }
    if (Object.values(interlocks).some((rule) => rule(moment))) return
    actions.push(action)
    now = afterAction(now, action)
  }
  const is = (key: string) => factOf(now, key)
  const hold = supportActions(assembly.axles)
  if (is(keys.chocks) !== 'set') push(hold.chock())
  for (const axle of assembly.axles) {
    push(hold.stands(axle))
    push(hold.seeLoaded(axle))
  }
  push(hold.lockArms())
  for (const where of cornersOf(assembly))
    if (is(keys.arm(whereOf(where))) === 'raised to ride height') push(rideActions(assembly, where).away([]))
  for (const one of Object.values(assembly.holds)) {
    if (is(keys.energy(one.id)) !== 'held by the jack') continue
    push(energyActions(work, one).jackAway())
    if (is(keys.energy(one.id)) === 'held by the jack') push(energyActions(work, one).letDown())
  }
  for (const id of dripping(assembly, now)) {
    const { axle, side, called, place } = assembly.joints[id]!
    push(
      makeAction({
        id: `cap ${id}`,
        verb: 'cap line',
        words: `Cap both ends of the ${called}, and catch what has dripped`,
        joint: id,
        axle,
        side,
        place,
        effects: { [keys.cap(id)]: 'on' },
        cautions: ['Fluid eats paint, and air and water get into an open line.'],
        why: 'an open line drips and draws air',
      }),
    )
  }
  for (const id of looseParts(assembly, now)) {
    const { axle, side, called } = assembly.parts[id]!
    push(
      makeAction({
        id: `tie up ${id}`,
        verb: 'tie up',
        words: `Tie the ${called} up to the frame, so that nothing hangs on hose or lead`,
        part: id,
        axle,
        side,
        place: 'at the wheel',
        tool: 'strap',
        effects: { [keys.tied(id)]: 'yes' },
        why: 'it hangs on what is left of its joints',
      }),
    )
  }
  push(tagAction(assembly.axles, 'safe to stand'))
  const kept = actions.map((action) => ({
    ...action,
    needs: action.needs.filter(({ custom }) => !custom),
  }))
  return isSafe(now) ? { actions: kept, from } : null
}

const cornersOf = ({ parts }: Assembly): readonly { readonly axle: AxleName; readonly side: Side }[] =>
  Object.values(parts).flatMap(({ kind, axle, side }) =>
    kind === 'wheel' && axle && side ? [{ axle, side }] : [],
  )
