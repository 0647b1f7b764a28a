import type { AxleEnd, Mechanism, Side } from '../linkage/index.ts'
import type { Measured } from '../measure/index.ts'
import type { Metre, Radian } from '../quantity/index.ts'
import type { FloorMap, Instrument, WheelPlace } from './instruments.ts'

/**
 * How a rim runs out sideways, as half its swing of angle.
 *
 * @source definition
 */
export interface RunOut {
  readonly amplitude: Radian
  /** `measured` on this rim, or a bound that it stays under. */
  readonly known: 'measured' | 'at most'
}

/**
 * Play that lets an angle move.
 *
 * @source definition
 */
export interface KnownPlay {
  readonly wheel: WheelPlace
  readonly moves: 'camber' | 'toe'
  /** Whole swing, rad. */
  readonly swing: Measured
}

/**
 * All that a reading needs besides itself. What is missing is assumed, widely, and said so in the notes.
 *
 * @source definition
 */
export interface GaugeContext {
  readonly instruments: readonly Instrument[]
  /** Heights of the pads; without it they are assumed level within `padsWithin`. */
  readonly floor?: FloorMap | undefined
  /** Half-width assumed for a pad of an unmapped floor; 2 mm when not given. */
  readonly padsWithin?: Metre | undefined
  readonly track?: Readonly<Partial<Record<AxleEnd, Metre>>> | undefined
  readonly wheelbase?: Metre | undefined
  readonly runOut?: Readonly<Partial<Record<WheelPlace, RunOut>>> | undefined
  /** What a gauge shows at true zero, by its id; taken off every reading. */
  readonly zeros?: Readonly<Record<string, Measured>> | undefined
  /** SAI for a sweep that was read without it. */
  readonly sai?: Readonly<Partial<Record<Side, Measured>>> | undefined
  /** Corner model as a left corner, for joint axis against sweep. */
  readonly linkage?: Readonly<Partial<Record<Side, Mechanism>>> | undefined
  /** Half-width of the error of the linkage correction as a share of it; 0.5 when not given (typical points). */
  readonly linkageWithin?: number | undefined
  readonly plays?: readonly KnownPlay[] | undefined
}
