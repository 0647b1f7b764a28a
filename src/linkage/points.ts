import type { Metre, Radian } from '../quantity/index.ts'

/** [x, y, z] in metres, ISO 8855: x forward, y left, z up. @source definition */
export type Point = readonly [number, number, number]

/** The wheel at the design pose. Always a LEFT corner: outward is +y. A right corner is given mirrored. @source definition */
export interface WheelAtDesign {
  readonly wheelCentre: Point
  /** Top outward is positive. */
  readonly camber: Radian
  /** Front of the wheel towards the centre line is positive. */
  readonly toe: Radian
  /** Loaded radius. */
  readonly tyreRadius: Metre
}

/** Upper and lower arm with two inner pivots each, and a tie rod. @source definition */
export interface DoubleWishbone extends WheelAtDesign {
  readonly layout: 'double wishbone'
  readonly upperFrontInner: Point
  readonly upperRearInner: Point
  readonly upperOuter: Point
  readonly lowerFrontInner: Point
  readonly lowerRearInner: Point
  readonly lowerOuter: Point
  readonly tieInner: Point
  readonly tieOuter: Point
}

/** Lower arm, tie rod, and a strut whose line (through `strutLower` and `topMount` at design) runs through the top mount. @source definition */
export interface Strut extends WheelAtDesign {
  readonly layout: 'strut'
  readonly lowerFrontInner: Point
  readonly lowerRearInner: Point
  readonly lowerOuter: Point
  readonly topMount: Point
  readonly strutLower: Point
  readonly tieInner: Point
  readonly tieOuter: Point
}

/** One of five links; the one with `rack` is moved by the steering. @source definition */
export interface FiveLinkLink {
  readonly inner: Point
  readonly outer: Point
  readonly rack?: boolean
}

/** Five separate links. Its points are named inner0..inner4 and outer0..outer4. @source definition */
export interface FiveLink extends WheelAtDesign {
  readonly layout: 'five-link'
  readonly links: readonly [FiveLinkLink, FiveLinkLink, FiveLinkLink, FiveLinkLink, FiveLinkLink]
}

/** The points of one corner held by links, at the design pose. @source definition */
export type CornerPoints = DoubleWishbone | Strut | FiveLink

/**
 * A trailing or semi-trailing arm: the knuckle is the arm and turns about one hinge. Of the hinge's two bushes
 * `innerFront` is the one further forward (of a purely trailing arm: the outer one).
 *
 * @source definition
 */
export interface SemiTrailingArm extends WheelAtDesign {
  readonly layout: 'semi-trailing arm'
  readonly innerFront: Point
  readonly innerRear: Point
}

/** Every corner that poses are computed of: held by links, or hinged. @source definition */
export type AnyCornerPoints = CornerPoints | SemiTrailingArm

/** What an adjuster, a fault or an error does to the points, against the design. Link lengths stay unless named. @source definition */
export interface Displacement {
  /** Shift of body-fixed points, m: upperFrontInner, lowerRearInner, topMount, tieInner, inner0, innerFront … */
  readonly body?: Readonly<Record<string, Point>>
  /** Shift of knuckle-fixed points in the knuckle's design position, m: upperOuter, tieOuter, strutLower, strutTop (the strut's own line), wheelCentre, outer0, eyeFront and eyeRear (a trailing arm's own bush eyes) … */
  readonly knuckle?: Readonly<Record<string, Point>>
  /** Added to a link's length, m: tie, upperFront, upperRear, lowerFront, lowerRear, link0 … */
  readonly length?: Readonly<Record<string, number>>
  /** Rotation vector, rad, of the wheel's spin axis against the knuckle's joints. */
  readonly spin?: Point
}

/** What drives a corner. @source definition */
export interface Drive {
  /** Wheel centre above its design height; bump is positive. */
  readonly travel: Metre
  /** Inner tie-rod point along y; to the left is positive. */
  readonly rack: Metre
}
