import type { Metre, Radian } from '../quantity/index.ts'
import type { WheelPlace } from './instruments.ts'

interface Occasion {
  /** Unique in the job: what was random this once is named by it. */
  readonly id: string
}

/**
 * Camber against the vertical, gauge on rim or hub, + top outward.
 *
 * @source definition
 */
export interface InclinometerObservation extends Occasion {
  readonly method: 'inclinometer'
  readonly wheel: WheelPlace
  readonly gauge: string
  /** `wheelTurn`: how far the wheel was turned on its hub, any zero. Same turn again is a repeat. */
  readonly readings: readonly { readonly wheelTurn: Radian; readonly reading: Radian }[]
}

/**
 * One wheel against the strings: from the string, which hangs outboard, to the rim at hub height.
 *
 * @source definition
 */
export interface StringReadings {
  /** String to the front edge, repeats. */
  readonly front: readonly Metre[]
  /** String to the rear edge, repeats. */
  readonly rear: readonly Metre[]
  /** Front to rear measuring point. */
  readonly span: Metre
}

/**
 * Toe of each wheel, thrust, and set-back where it was measured along the strings.
 *
 * @source definition
 */
export interface StringsObservation extends Occasion {
  readonly method: 'strings and rule'
  readonly rule: string
  readonly strings: string
  readonly wheels: Readonly<Partial<Record<WheelPlace, StringReadings>>>
  /** String to hub centre of all four wheels: says how the strings lie against the vehicle. */
  readonly hubs: Readonly<Record<WheelPlace, Metre>>
  readonly wheelbase: Metre
  /** Front bar back to each hub centre of an axle, along the string. */
  readonly along?: Readonly<Partial<Record<WheelPlace, Metre>>> | undefined
}

/**
 * Total toe of an axle, between lines scribed on both treads.
 *
 * @source definition
 */
export interface TapeObservation extends Occasion {
  readonly method: 'tape on a scribed line'
  readonly axle: 'front' | 'rear'
  readonly tape: string
  readonly front: readonly Metre[]
  readonly rear: readonly Metre[]
  /** How far below hub centre the tape was held, at both ends. */
  readonly belowHub: Metre
  /** Half-width of how well the two heights agree. */
  readonly levelled: Metre
  /** Hub centre to the scribed line. */
  readonly radius: Metre
}

/**
 * Readings at one place of the sweep.
 *
 * @source definition
 */
export interface SweepReading {
  /** From the gauge, + to the left, for this wheel. */
  readonly steer: Radian
  /** Gauge across the wheel: + top outward. */
  readonly camber: Radian
  /** Gauge fore and aft on the hub, brake held: + front end up. Gives SAI. */
  readonly tilt?: Radian | undefined
}

/**
 * Caster and SAI of one front wheel: steered to both sides, brake held.
 *
 * @source definition
 */
export interface SweepObservation extends Occasion {
  readonly method: 'steer sweep'
  readonly side: 'left' | 'right'
  readonly gauge: string
  /** Turn plates or string and protractor; without one there is no answer. */
  readonly steerGauge?: string | undefined
  /** Each a whole sweep; several are averaged. */
  readonly sweeps: readonly { readonly left: SweepReading; readonly right: SweepReading }[]
}

/**
 * How a wheel or rim runs: readings at wheel turns, ≥ 3 places.
 *
 * @source definition
 */
export interface RunOutObservation extends Occasion {
  readonly method: 'run-out'
  readonly wheel: WheelPlace
  readonly gauge: string
  readonly readings: readonly { readonly wheelTurn: Radian; readonly reading: Metre }[]
  /** Diameter at which the indicator stood. */
  readonly diameter: Metre
}

/**
 * Hub centre to arch edge, or whatever the sheet names.
 *
 * @source definition
 */
export interface RideHeightObservation extends Occasion {
  readonly method: 'ride height by rule'
  readonly wheel: WheelPlace
  readonly rule: string
  readonly readings: readonly Metre[]
}

/**
 * Play of a joint, between pushed and pulled.
 *
 * @source definition
 */
export interface PlayObservation extends Occasion {
  readonly method: 'dial indicator'
  readonly wheel: WheelPlace
  readonly gauge: string
  /** Which angle the play lets move. */
  readonly moves: 'camber' | 'toe'
  /** Full swing of the pointer, repeats. */
  readonly swings: readonly Metre[]
  /** Pivot about which it moves to the indicator's tip. */
  readonly arm: Metre
}

/**
 * What a person read, as the job keeps it: SI, unchanged.
 *
 * @source definition
 */
export type Observation =
  | InclinometerObservation
  | StringsObservation
  | TapeObservation
  | SweepObservation
  | RunOutObservation
  | RideHeightObservation
  | PlayObservation

/**
 * How it was read.
 *
 * @source definition
 */
export type Method = Observation['method']
