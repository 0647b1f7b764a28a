import { axleAdjustersOf, type Corner, jointLetters } from '../corner/index.ts'
import type { Kit } from '../kit/index.ts'
import type { Spec } from '../spec/index.ts'
import type { JobState } from './job-state.ts'
import { type JointPlace, jointPlaces } from './joint-places.ts'
import { type JointRecord, jointRecord } from './joint-record.ts'
import { openHold } from './open-hold.ts'
import { pinHold } from './pin-hold.ts'
import { positionHold } from './position-hold.ts'
import { reTightenHold } from './re-tighten-hold.ts'
import { type RequiredState, requiredState } from './required-state.ts'
import { reuseHold } from './reuse-hold.ts'
import { secondCheckHold } from './second-check-hold.ts'
import type { JointCase, ToDo } from './to-do.ts'
import { type Touched, touchedJoints } from './touched-joints.ts'
import { valueHold } from './value-hold.ts'
import { type WheelName, wheelNames, wheelPlace } from './wheel-name.ts'
import { wrenchHold } from './wrench-hold.ts'

/** How far a joint has come; "closed" was not opened in this job. @source definition */
export type JointState =
  | 'open'
  | 'retained'
  | 'cracked'
  | 'started'
  | 'run up'
  | 'final'
  | 'checked'
  | 'closed'

/** One joint of one wheel, or of one axle, in the bolt book. @source definition */
export interface BoltLine extends JointPlace {
  /** The wheel under which new entries name it. */
  readonly wheel: WheelName
  readonly joint: string
  readonly name: string
  readonly kind: Corner['joints'][string]['kind']
  /** Its letter on the drawing; null for a joint without a point. */
  readonly letter: string | null
  readonly adjuster: string | null
  readonly required: RequiredState
  readonly record: JointRecord
  readonly state: JointState
  /** Nothing holds it any more: final, and checked where it must be; or never opened. */
  readonly done: boolean
  /** What is still open, in the order in which it is done. */
  readonly toDo: readonly ToDo[]
}

/** What the bolt book is made of. @source definition */
export interface BoltBookSources {
  readonly state: JobState
  readonly corners: { readonly front: Corner | null; readonly rear: Corner | null }
  readonly spec: Spec | null
  readonly kit: Kit | null
}

const order: readonly JointState[] = [
  'open',
  'retained',
  'cracked',
  'started',
  'run up',
  'final',
  'checked',
  'closed',
]

/**
 * The bolt book: every joint of every wheel that has a corner model, with what it must be like, what is recorded,
 * and what is still open. Whatever is not done stands first, the furthest from done at the top; then what is done;
 * then what was never opened. Pure: hold points are judged anew each time, so a late entry can take a check away.
 *
 * @source own derivation: docs/methods/bolt-book.md
 */
export function boltBook({ state, corners, spec, kit }: BoltBookSources): readonly BoltLine[] {
  const all = Object.values(corners).flatMap((corner) =>
    corner === null
      ? []
      : Object.keys(corner.joints).flatMap((joint) =>
          jointPlaces(corner, joint).map((at) => ({ corner, joint, ...at })),
        ),
  )
  const round = [...new Set(wheelNames.flatMap((wheel) => all.filter(({ wheels }) => wheels[0] === wheel)))]
  const lines = round.map(({ corner, joint, wheels, place }): BoltLine => {
    const model = corner.joints[joint]!
    const [wheel] = wheels as [WheelName]
    const name = model.name ?? joint.replaceAll('-', ' ')
    const adjuster = model.adjuster ?? null
    const one: JointCase = {
      wheels,
      joint,
      called: `${name.slice(0, 1).toUpperCase()}${name.slice(1)} of the ${wheels.length > 1 ? place : `${wheel} wheel`}`,
      kind: model.kind,
      adjuster,
      required: requiredState(model, spec?.tightening?.[corner.axle]?.[joint], spec?.source ?? null),
      record: jointRecord({
        state,
        wheels,
        joint,
        moves: movesOf({ state, corner, adjuster, wheels }),
      }),
      state,
      kit,
    }
    return {
      wheel,
      wheels,
      place,
      joint,
      name,
      kind: model.kind,
      letter: jointLetters(corner)[joint] ?? null,
      adjuster,
      required: one.required,
      record: one.record,
      ...judged(one, spec, touchedAt({ state, corner, joint, wheels })),
    }
  })
  const rank = (line: BoltLine) => order.indexOf(line.state) + (line.done ? order.length : 0)
  // Sorting keeps wheels and the file's own order among equals.
  return [...lines].sort((a, b) => rank(a) - rank(b))
}

/** The moves of the adjuster on its bolt; one that the axle has once may be named under either wheel. */
function movesOf({
  state,
  corner,
  adjuster,
  wheels,
}: {
  readonly state: JobState
  readonly corner: Corner
  readonly adjuster: string | null
  readonly wheels: readonly WheelName[]
}): JobState['moves'] {
  const ofAxle = axleAdjustersOf(corner).some(({ id }) => id === adjuster)
  return state.moves.filter(
    (move) =>
      move.adjuster === adjuster &&
      (ofAxle ? wheelPlace(move.wheel).axle === corner.axle : wheels.includes(move.wheel)),
  )
}

/** Why it must have been opened: at either wheel, for a joint of the axle. */
function touchedAt({
  wheels,
  joint,
  ...about
}: {
  readonly state: JobState
  readonly corner: Corner
  readonly joint: string
  readonly wheels: readonly WheelName[]
}): Touched | null {
  for (const wheel of wheels) {
    const touched = touchedJoints({ ...about, wheel }).get(joint)
    if (touched) return touched
  }
  return null
}

function judged(
  one: JointCase,
  spec: Spec | null,
  touched: Touched | null,
): Pick<BoltLine, 'state' | 'done' | 'toDo'> {
  const toDo = [
    ...openHold(one, touched),
    ...valueHold(one),
    ...positionHold(one),
    ...reuseHold(one),
    ...pinHold(one),
    ...wrenchHold(one),
    ...secondCheckHold(one),
    ...reTightenHold(one, spec),
  ]
  const heldAt = (state: ToDo['holdsAt']) => toDo.some(({ holdsAt }) => holdsAt === state)
  const { undone, moved, started, runUp, stages, final, checks } = one.record
  const state: JointState = final
    ? heldAt('run up')
      ? 'run up'
      : !heldAt('final') && checks.some(({ entry, passed }) => passed && entry > final.entry)
        ? 'checked'
        : 'final'
    : (moved ?? runUp ?? stages.at(-1))
      ? 'run up'
      : started
        ? 'started'
        : undone
          ? ({ open: 'open', 'on a few threads': 'retained', cracked: 'cracked' } as const)[undone.to]
          : one.record.fell
            ? 'run up'
            : touched
              ? 'open'
              : 'closed'
  return { state, done: !heldAt('run up') && !heldAt('final'), toDo }
}
