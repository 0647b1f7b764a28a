import type { Limit } from '../adjust/index.ts'
import type { Corner } from '../corner/index.ts'
import type { AxleEnd, ReadingName, Side } from '../linkage/index.ts'
import type { Measured } from '../measure/index.ts'

/** One axle of the vehicle: its model, and where its adjusters were found. @source definition */
export interface ExaminedAxle {
  readonly end: AxleEnd
  /** Typical or fitted points; each point's `spread` says how well it is known. */
  readonly corner: Corner
  /** Setting as found by adjuster id, in the adjuster's own unit; null or absent when nobody looked. */
  readonly settings: Readonly<Record<Side | 'both', Readonly<Record<string, number | null>>>>
}

/** A wheel of the vehicle. @source definition */
export type ExaminedWheel = `${AxleEnd} ${Side}`

/** What hands and eyes found at one place. @source definition */
export interface CheckFound {
  /** As the job's hand checks: "rock at 12 and 6", "lever at the bush" … */
  readonly check: string
  readonly wheel: ExaminedWheel | null
  readonly joint: string | null
  readonly part: string | null
  /** As the job's hand checks: "nothing", "play", "bent", "torn" … */
  readonly found: readonly string[]
}

/** Play of a joint. @source definition */
export interface PlayFound {
  readonly wheel: ExaminedWheel
  readonly joint: string
  /** Full swing at the joint, m. */
  readonly swing: Measured
  /** The limit that it is judged by, m; null where nobody typed one. */
  readonly limit: number | null
}

/** Tread depths of one tyre, m. @source definition */
export interface TreadFound {
  readonly wheel: ExaminedWheel
  readonly outer: Measured
  readonly middle: Measured
  readonly inner: Measured
}

/** A question of the road test and its answer. @source definition */
export interface RoadAnswer {
  readonly question:
    | 'pulls to the left'
    | 'pulls to the right'
    | 'pull swaps with the front wheels'
    | 'steering wheel off centre'
    | 'wanders'
    | 'knocks over bumps'
    | 'steering does not return'
  readonly answer: boolean
}

/** A part that is new. @source definition */
interface RenewedPart {
  /** By its id in the corner model, or "bush of" and the joint. */
  readonly part: string
  readonly wheels: readonly ExaminedWheel[]
}

/**
 * All that is known when somebody asks which part explains it. Angles rad, lengths m, signs of docs/methods/signs.md.
 * Errors that readings share carry the same source, so that their covariance is known.
 *
 * @source own derivation: docs/methods/findings.md
 */
export interface FindingsProblem {
  readonly axles: readonly ExaminedAxle[]
  /** Camber, caster, SAI and toe of each wheel; what was not read is absent. */
  readonly readings: Readonly<Partial<Record<ReadingName, Measured>>>
  /** Wheel centre above its design height against the body, m: a sagged spring reads positive. */
  readonly heights: Readonly<Partial<Record<ExaminedWheel, Measured>>>
  /** Turned to that side: toe-out on turns, angle of the inner wheel less that of the outer one, at 20° of the inner. */
  readonly turns: Readonly<Partial<Record<Side, Measured>>>
  /** Right front wheel behind the left one, m, positive; null when it was not measured. */
  readonly setBack: Measured | null
  readonly limits: Readonly<Partial<Record<ReadingName, Limit>>>
  /** Limits of a height above design, m. */
  readonly heightLimits: Readonly<Partial<Record<ExaminedWheel, Limit>>>
  readonly checks: readonly CheckFound[]
  readonly play: readonly PlayFound[]
  readonly treads: readonly TreadFound[]
  readonly road: readonly RoadAnswer[]
  /** Parts that were renewed before the angles were read; absent where none was. */
  readonly renewed?: readonly RenewedPart[]
}
