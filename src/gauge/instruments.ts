import type { Metre, Radian } from '../quantity/index.ts'

interface Named {
  /** Stable within a kit; errors that this gauge brings to several readings are named by it. */
  readonly id: string
  readonly name: string
}

/**
 * Bubble, digital level or angle finder: an angle against the vertical or the horizontal.
 *
 * @source definition
 */
export interface Inclinometer extends Named {
  readonly kind: 'inclinometer'
  /** Step of the scale or display; hides half a step, anew at each reading. */
  readonly resolution: Radian
  /** Half-width of what putting it on and reading it adds, anew at each reading. */
  readonly placing: Radian
  /** Half-width of the scale's own error. The same at one angle, independent at angles well apart. */
  readonly accuracy: Radian
  /** Half-width of the zero error that is left; the same in every reading until it is zeroed again. */
  readonly zeroError: Radian
  /** How the zero was found. `by reversal`: read on one face both ways; `none` leaves the whole zero error. */
  readonly zeroing: 'by reversal' | 'on a known level' | 'none'
}

/**
 * A rule read by eye, one end held to something.
 *
 * @source definition
 */
export interface Rule extends Named {
  readonly kind: 'rule'
  readonly resolution: Metre
  /** Half-width of holding and reading, anew each time. */
  readonly placing: Metre
  /** Half-width of the error of its zero end (worn, or hooked); the same each time, so it leaves differences. */
  readonly zeroError: Metre
}

/**
 * A tape; used at both ends of a difference its own error cancels.
 *
 * @source definition
 */
export interface Tape extends Named {
  readonly kind: 'tape'
  readonly resolution: Metre
  readonly placing: Metre
  /** Half-width of the error of its length, as a share of the length. */
  readonly accuracy: number
}

/**
 * Two strings or straight edges along the vehicle, on bars in front and behind.
 *
 * @source definition
 */
export interface Strings extends Named {
  readonly kind: 'strings'
  /** Half-width of the difference in spacing of the two strings, front bar against rear bar. */
  readonly spacing: Metre
  /** Front bar to rear bar. */
  readonly length: Metre
  /** Half-width of the bar's angle off square; goes into set-back only. */
  readonly squareness: Radian
}

/**
 * Turn plates with a scale, or a string and protractor on the floor: what tells the steer angle.
 *
 * @source definition
 */
export interface SteerGauge extends Named {
  readonly kind: 'turn plates' | 'string and protractor'
  readonly resolution: Radian
  readonly placing: Radian
  /** Half-width of the scale's own error, as a share of the angle turned. */
  readonly accuracy: number
  /** Half-width of how far its zero is off straight ahead: the same at both ends of the sweep and on both sides. */
  readonly zeroError: Radian
}

/**
 * A dial indicator on a stand.
 *
 * @source definition
 */
export interface DialIndicator extends Named {
  readonly kind: 'dial indicator'
  readonly resolution: Metre
  readonly placing: Metre
  readonly accuracy: Metre
}

/**
 * Whatever reads an angle or a length.
 *
 * @source definition
 */
export type Instrument = Inclinometer | Rule | Tape | Strings | SteerGauge | DialIndicator

/**
 * One wheel by its place.
 *
 * @source definition
 */
export type WheelPlace = 'front left' | 'front right' | 'rear left' | 'rear right'

/**
 * How high each wheel pad lies. Only differences count, so any level may be called zero.
 *
 * @source definition
 */
export interface FloorMap {
  readonly id: string
  readonly name: string
  /** Height of each pad, m, up is positive. */
  readonly heights: Readonly<Record<WheelPlace, Metre>>
  /** Half-width of each height, independent from pad to pad. */
  readonly spread: Readonly<Record<WheelPlace, Metre>>
  readonly found: 'with a level' | 'swap and turn' | 'judged'
}
