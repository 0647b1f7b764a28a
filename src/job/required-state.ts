import type { Corner } from '../corner/index.ts'
import { type Spec, turnWithin } from '../spec/index.ts'

type Joint = Corner['joints'][string]
type Typed = { readonly text: string; readonly value: number }
type Tightening = NonNullable<NonNullable<Spec['tightening']>['front']>[string]

/** How the vehicle must stand. @source definition */
export type Position = 'at ride height' | 'wheels straight' | 'on the ground'

/** What a joint must be like when it is done: the workshop's sheet and the joint's own kind. @source definition */
export interface RequiredState {
  /** Null where the sheet has no value for a joint that needs one; "none" for clips and plugs. */
  readonly procedure: Tightening['procedure'] | 'none' | null
  /** What the fastener must receive at last; null for hand snug. */
  readonly low: Typed | null
  readonly high: Typed | null
  /** The steps before it. */
  readonly stages: readonly Typed[]
  readonly angle: Typed | null
  /** How far off the angle may be, rad. */
  readonly angleWithin: number
  /** Of an adjustable hub. */
  readonly endFloat: readonly [Typed, Typed] | null
  readonly condition: NonNullable<Tightening['condition']> | null
  /** All of them at once when it is made final. */
  readonly positions: readonly Position[]
  readonly secondCheck: boolean
  /** New: it is used once. */
  readonly fastener: 'new' | 'inspect' | 'again' | null
  readonly pin: 'new' | 'any' | null
  /** The whole of it in words: "180 N·m to 200 N·m, dry, at ride height". */
  readonly said: string
  /** Whose value it is. */
  readonly source: string | null
}

/** Joints that drop a wheel or the steering when they come apart; a sheet may say otherwise. */
const red: readonly Joint['kind'][] = [
  'tapered stud, castle nut',
  'tapered stud, lock nut',
  'pinch bolt',
  'wheel nuts',
  'ball-joint bolts',
  'ball-joint rivets',
  'axle nut',
  'adjustable taper-roller hub',
]
/** What only snaps, plugs, slides or presses in. */
const untightened: Readonly<Partial<Record<Joint['kind'], string>>> = {
  clip: 'home and locked',
  plug: 'home and locked',
  'press fit': 'pressed home',
  spline: 'slid home',
  'retaining ring': 'in its groove all round',
  seat: 'seated, its end where it was marked',
}

/**
 * What a joint must be like when it is done. Values come from the spec sheet alone; position, pin and second check
 * follow from the joint's kind where the sheet is silent. A bonded bush is final at ride height whatever a sheet says,
 * a rod's rubber end with the wheels straight.
 *
 * @param tightening what the sheet says of it
 * @source own derivation: docs/methods/bolt-book.md
 */
export function requiredState(
  joint: Joint,
  tightening: Tightening | undefined,
  source: string | null,
): RequiredState {
  const castle = joint.kind === 'tapered stud, castle nut'
  const said = placed(tightening?.position) ?? placed(joint.final)
  const ownKind: Position | null =
    joint.kind === 'wheel nuts'
      ? 'on the ground'
      : joint.bush?.bonded && said !== 'wheels straight'
        ? 'at ride height'
        : null
  const positions = [...new Set([ownKind, said])].filter((position) => position !== null)
  const required: Omit<RequiredState, 'said'> = {
    procedure: tightening?.procedure ?? (joint.kind in untightened ? 'none' : null),
    ...values(tightening),
    condition: tightening?.condition ?? null,
    positions,
    secondCheck: tightening?.secondCheck ?? (joint.red === true || red.includes(joint.kind)),
    fastener: joint.reuse === 'new pin' ? null : (joint.reuse ?? null),
    pin:
      joint.reuse === 'new pin'
        ? 'new'
        : castle || joint.pin !== undefined || tightening?.procedure === 'seat and back off'
          ? 'any'
          : null,
    source: tightening ? (tightening.source ?? source) : null,
  }
  return { ...required, said: saidOf(required, untightened[joint.kind] ?? 'home') }
}

const placed = (position: Tightening['position'] | Joint['final']): Position | null =>
  position === undefined || position === 'any position' ? null : position

function values(
  tightening: Tightening | undefined,
): Pick<RequiredState, 'low' | 'high' | 'stages' | 'angle' | 'angleWithin' | 'endFloat'> {
  const none = { low: null, high: null, stages: [], angle: null, angleWithin: 0, endFloat: null }
  switch (tightening?.procedure) {
    case 'torque':
    case 'castle slot':
      return { ...none, low: tightening.low, high: tightening.high }
    case 'torque then angle':
      return {
        ...none,
        low: tightening.torque,
        high: tightening.torque,
        angle: tightening.angle,
        angleWithin: turnWithin(tightening),
      }
    case 'seat and back off':
      return {
        ...none,
        low: tightening.bringUpTo ?? null,
        high: tightening.bringUpTo ?? null,
        endFloat: tightening.endFloat ?? null,
      }
    case 'stages': {
      const last = tightening.stages.at(-1)!
      return { ...none, low: last, high: last, stages: tightening.stages.slice(0, -1) }
    }
    default:
      return none
  }
}

function saidOf(
  { procedure, low, high, stages, angle, endFloat, condition, positions }: Omit<RequiredState, 'said'>,
  home: string,
): string {
  const value =
    low === null || high === null
      ? { 'hand snug': 'hand snug', 'seat and back off': 'seated and backed off', none: home }[
          String(procedure)
        ]
      : low.text === high.text
        ? [...stages, low].map(({ text }) => text).join(', then ')
        : procedure === 'castle slot'
          ? `${low.text}, then forward to the next slot, never past ${high.text}`
          : `${low.text} to ${high.text}`
  const float = endFloat && `end float ${endFloat.map(({ text }) => text).join(' to ')}`
  const parts = [
    value ?? 'a value from your own information',
    angle && `then ${angle.text}`,
    float,
    condition,
    ...positions,
  ]
  return parts.filter(Boolean).join(', ')
}
