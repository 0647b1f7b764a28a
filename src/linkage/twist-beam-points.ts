import type { Radian } from '../quantity/index.ts'
import type { Point, WheelAtDesign } from './points.ts'
import type { Side } from './wheel-angles.ts'

/** One side of a twist beam in VEHICLE axes (the right one has negative y); camber and toe mean the same on both sides. @source definition */
export interface TwistBeamSide extends WheelAtDesign {
  /** Middle of the bush that holds the arm to the body. */
  readonly pivot: Point
}

/**
 * Two trailing arms joined by a beam that lets itself be twisted. Both wheels together turn about the line through
 * both pivots; one against the other each turns about the line from its pivot to the effective point, which neither
 * side moves.
 *
 * @source definition
 */
export interface TwistBeam {
  readonly left: TwistBeamSide
  readonly right: TwistBeamSide
  /** Shear centre of the cross beam in the middle of the vehicle. */
  readonly shearCentre: Point
  /**
   * Where the effective point lies between the pivots' line (0: trailing arms) and the shear centre (1: a thin open
   * beam); measured behaviour may need another value.
   */
  readonly shape: number
  /** Shims between arm and hub: added to the wheel's camber and toe. */
  readonly shim?: Partial<Readonly<Record<Side, { readonly camber: Radian; readonly toe: Radian }>>>
}
