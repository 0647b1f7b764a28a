import type { Action, Need } from './action.ts'
import { aftercareActions } from './aftercare-actions.ts'
import { anglesActions } from './angles-actions.ts'
import type { AxleName, Side } from './assembly.ts'
import { waitsForParts } from './box-actions.ts'
import type { Choice } from './choice.ts'
import { closingActions } from './closing-actions.ts'
import { consequencesOf } from './consequences-of.ts'
import { energyActions } from './energy-actions.ts'
import { handOver } from './hand-over.ts'
import { hasPin } from './has-pin.ts'
import { jacksAtOnce } from './jacks-at-once.ts'
import { keys } from './keys.ts'
import { partActions } from './part-actions.ts'
import { refitActions } from './refit-actions.ts'
import { rideInto } from './ride-into.ts'
import { stripActions } from './strip-actions.ts'
import { supportActions } from './support-actions.ts'
import { whereOf } from './where-of.ts'
import type { Work } from './work.ts'

/** How the vehicle is held, where the workshop may choose. @source definition */
export interface SequenceOptions {
  readonly support: 'jack and stands' | 'lift'
  readonly jacks: number
  /** Which side goes first where one jack or one steering lock serves both. */
  readonly sides: readonly Side[]
}

/**
 * The whole of a job as one order that works, from comparing the new parts to the road test. Every other order that
 * the planner looks at keeps the needs that this one shows to be satisfiable.
 *
 * @source own derivation: docs/methods/plan.md
 */
export function sequenceOf(
  work: Work,
  choice: Choice,
  { support, jacks, sides }: SequenceOptions,
): readonly Action[] {
  const { assembly } = work
  const { axles } = assembly
  const care = aftercareActions(axles)
  const hold = supportActions(axles)
  const follows = consequencesOf(work)
  const has = (kind: (typeof follows)[number]['kind'], axle?: AxleName) =>
    follows.some((one) => one.kind === kind && (axle === undefined || one.axle === axle))
  const strip = stripActions(work, choice, sides)
  const { actions: refit, later } = refitActions(work, strip)
  const undone = strip.map(({ action }) => inStage(action, 'strip'))
  const cracked = undone.filter((action) => action.verb === 'crack' && isOnGround(action))
  const onGround = undone.filter(
    (action) =>
      cracked.includes(action) ||
      (action.verb === 'mark' && cracked.some(({ joint }) => joint === action.joint)),
  )
  const inTheAir = undone.filter((action) => !onGround.includes(action))
  const lifted = axles.filter((axle) => inTheAir.some((action) => action.axle === axle))
  const air = Object.values(assembly.holds).find(({ stores }) => stores === 'air')
  const isAir = air !== undefined || axles.some((axle) => assembly.corners[axle]?.airSprung)

  const before: Action[] = []
  if (has('clamp pose') || has('angles')) before.push(care.setPressures(), care.recordHeights())
  before.push(...waitsForParts(work))
  for (const id of work.renewed) before.push(partActions(work, assembly.parts[id]!).compareBefore())
  if (isAir && air) before.push(energyActions(work, air).levellingOff())

  const lift: Action[] = []
  if (lifted.length > 0) {
    lift.push(...(support === 'lift' ? [] : [hold.chock()]), ...onGround)
    const wait = waitsBeforeLifting(work, isAir)
    if (support === 'lift') lift.push(waiting(hold.lift(), wait), hold.lockArms())
    else
      for (const axle of lifted)
        lift.push(waiting(hold.jackUp(axle), wait), hold.stands(axle), hold.seeLoaded(axle))
    if (support === 'lift' && inTheAir.some((action) => action.needs.some(({ key }) => key === keys.tail)))
      lift.push(hold.tailSupport())
  }
  const onLift = support === 'lift' ? [] : inTheAir
  const stripped = withoutTail(inTheAir, onLift.length > 0)

  const closed = rideInto(work, choice, refit, later).map((action) => inStage(action, 'refit'))
  if (has('bleed')) closed.push(care.bleed([...work.open, ...work.bench].filter((id) => isUnion(work, id))))
  if (has('pump pedal') || has('bleed')) closed.push(care.pump(brakesWhole(work)))

  const lower: Action[] = []
  const weightOn = support === 'lift' ? axles : lifted
  if (lifted.length > 0) lower.push(hold.lower(weightOn, lowerNeeds(work, choice)))
  if (isAir && air && lifted.length > 0) lower.push(energyActions(work, air).levellingOn())
  for (const joint of later.filter(({ final }) => final === 'on the ground')) {
    const acts = closingActions(work, joint)
    lower.push(acts.final('on its wheels'))
    if (hasPin(joint)) lower.push(acts.pin())
    if (joint.red) lower.push(acts.check())
  }

  const angles = anglesActions(work, choice, later, follows)
  const after: Action[] = []
  const leads = follows.find(({ kind }) => kind === 'lamp')?.because ?? []
  if (leads.length > 0)
    after.push(
      care.lamp(
        leads.map((id) => assembly.parts[id]!),
        leadsBack(work, leads),
      ),
    )
  if (has('level sensor')) after.push(care.levelSensor())
  const set = angles.flatMap(({ verb, joint }) => (verb === 'final' && joint ? [joint] : []))
  const touched = [...new Set([...work.open, ...work.bench, ...set])]
  const tight: readonly Need[] = touched.map((id) => ({
    key: keys.joint(id),
    is: ['final', 'checked'],
    why: 'run up is not tight',
    rule: 'I20',
  }))
  after.push(care.clearance(tight))
  after.push(...handOver(work, { tight, follows, care, earlier: [...closed, ...lower, ...angles] }))
  const all = [...before, ...lift, ...stripped, ...closed, ...lower, ...angles, ...after].map((action) =>
    nobodyUnder(action, choice),
  )
  return jacks > 1 || jacksAtOnce(all) > 1 ? all.map(withOwnJack) : all
}

/** A corner is stripped, then refitted: nothing goes back to lie there loose while the rest still comes apart. */
const inStage = (action: Action, stage: 'strip' | 'refit'): Action =>
  action.axle === null || action.verb === 'mark' || action.verb === 'crack'
    ? action
    : { ...action, effects: { ...action.effects, [keys.stage(whereOf(action))]: stage } }

/** The pedal is pumped with every caliper on its carrier and every line tight. */
const brakesWhole = ({ assembly, open, bench, off }: Work): readonly Need[] => [
  ...[...off]
    .filter((id) => assembly.parts[id]!.kind === 'caliper')
    .map(
      (id): Need => ({
        key: keys.part(id),
        is: ['fitted', 'new'],
        why: 'its piston would come out',
        rule: 'I18',
      }),
    ),
  ...[...open, ...bench]
    .map((id) => assembly.joints[id]!)
    .filter((joint) => joint.joins.some((part) => assembly.parts[part]!.kind === 'caliper'))
    .map(
      ({ id }): Need => ({
        key: keys.joint(id),
        is: ['run up', 'final', 'checked'],
        why: 'it holds the caliper',
      }),
    ),
  ...[...open, ...bench]
    .filter((id) => assembly.joints[id]!.kind === 'hydraulic union')
    .map((id): Need => ({ key: keys.line(id), is: ['bled, no leak'], why: 'the line is full', rule: 'I18' })),
]

/** A lamp is looked at once the leads are back. */
const leadsBack = ({ assembly, open, bench }: Work, leads: readonly string[]): readonly Need[] =>
  [...open, ...bench]
    .filter((id) => assembly.joints[id]!.joins.some((part) => leads.includes(part)))
    .map((id) => ({ key: keys.joint(id), is: ['final', 'checked'], why: 'the lead is back', rule: 'I19' }))

/** Nobody is under the axle while a jack holds one of its corners at ride height. */
function nobodyUnder(action: Action, { raised }: Choice): Action {
  if (action.place !== 'under') return action
  return waiting(
    action,
    [...raised].map((where) => ({
      key: keys.arm(where),
      is: ['free', 'jack under', 'let down'],
      why: 'nobody is under a corner that a jack holds at ride height',
      rule: 'I7b',
    })),
  )
}

/** A jack for each corner: then none waits for another. */
function withOwnJack(action: Action): Action {
  const { [keys.jack]: jack, ...effects } = action.effects
  const own = `${keys.jack} ${whereOf(action)}`
  return {
    ...action,
    effects: jack === undefined ? effects : { ...effects, [own]: jack },
    needs: action.needs.flatMap((need) =>
      need.key !== keys.jack ? [need] : jack === undefined ? [] : [{ ...need, key: own }],
    ),
  }
}

const isUnion = ({ assembly }: Work, id: string) => assembly.joints[id]!.kind === 'hydraulic union'
const isOnGround = (action: Action) =>
  action.needs.some(({ key, is }) => key.startsWith('support ') && is.includes('on its wheels'))

const waiting = (action: Action, needs: readonly Need[]): Action => ({
  ...action,
  needs: [...action.needs, ...needs],
})

/** On stands nothing tips: the tail support belongs to a two-post lift. */
function withoutTail(actions: readonly Action[], drop: boolean): readonly Action[] {
  if (!drop) return actions
  return actions.map((action) => ({ ...action, needs: action.needs.filter(({ key }) => key !== keys.tail) }))
}

/** New parts are compared, and an air-sprung vehicle does not level itself, before anything is lifted. */
function waitsBeforeLifting(work: Work, isAir: boolean): readonly Need[] {
  return [
    ...[...work.renewed].map((id) => ({
      key: keys.compared(id),
      is: ['before lifting', 'beside the old'],
      why: 'a wrong part found later costs the lift',
      rule: 'I16' as const,
    })),
    ...(isAir
      ? [{ key: keys.levelling, is: ['off'], why: 'the vehicle may level itself', rule: 'I12' as const }]
      : []),
  ]
}

/** Before weight comes on the wheels every joint is at least run up, every part in, every spring held by its own. */
function lowerNeeds(work: Work, choice: Choice): readonly Need[] {
  const { assembly } = work
  return [
    ...[...work.open].map((id): Need => {
      const { kind, final } = assembly.joints[id]!
      return kind === 'axle nut' && final !== 'on the ground'
        ? {
            key: keys.joint(id),
            is: ['final', 'checked'],
            why: 'no weight on the bearing before its nut is final',
            rule: 'I14',
          }
        : { key: keys.joint(id), is: ['run up', 'final', 'checked'], why: 'it carries weight or is lost' }
    }),
    ...[...work.off].map((id) => ({ key: keys.part(id), is: ['fitted', 'new'], why: 'it is in place' })),
    ...Object.keys(work.standIns).map((hold) => ({
      key: keys.energy(hold),
      is: ['held by its set'],
      why: 'its own joints hold it',
      rule: 'I4' as const,
    })),
    ...[...choice.raised].map((where) => ({ key: keys.arm(where), is: ['free'], why: 'the jack is away' })),
  ]
}
