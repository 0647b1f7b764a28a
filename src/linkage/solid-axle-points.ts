import type { Metre, Radian } from '../quantity/index.ts'
import type { Point, WheelAtDesign } from './points.ts'
import type { Side } from './wheel-angles.ts'

/**
 * One wheel of a solid axle, in VEHICLE axes (the right one has negative y); camber and toe mean the same on both
 * sides. `kingpin` is the axis that the knuckle turns about, fixed in the axle; null where the wheel is not steered.
 *
 * @source definition
 */
export interface AxleWheel extends WheelAtDesign {
  readonly kingpin: { readonly lower: Point; readonly upper: Point } | null
}

/** A rod from the body (`inner`) to the axle (`outer`). @source definition */
export interface AxleLink {
  readonly inner: Point
  readonly outer: Point
}

/**
 * What guides the axle. Leaf springs: it rises straight up and rolls about an axis that rises with it. Links: four of
 * them, or three and a track bar; the bar is one of the four.
 *
 * @source definition
 */
export type AxleLocation =
  | { readonly kind: 'leaf'; readonly rollAxis: readonly [rear: Point, front: Point] }
  | { readonly kind: 'links'; readonly links: readonly [AxleLink, AxleLink, AxleLink, AxleLink] }

/** Drop arm, drag link and tie rod. The drop arm turns about its axis by the right-hand rule, first point → second. @source definition */
export interface AxleSteering {
  readonly dropAxis: readonly [Point, Point]
  /** End of the drop arm. */
  readonly dragInner: Point
  /** On the knuckle that the drag link moves. */
  readonly dragOuter: Point
  readonly drags: Side
  readonly tieLeft: Point
  readonly tieRight: Point
}

/** The points of a solid axle at its design pose, in vehicle axes. @source definition */
export interface SolidAxlePoints {
  readonly location: AxleLocation
  readonly left: AxleWheel
  readonly right: AxleWheel
  /** Null for an axle that is not steered. */
  readonly steering: AxleSteering | null
}

/** How a kingpin axis is tilted, as the change of the angles: camber + (top outward), caster + (top rearward). @source definition */
export interface KingpinTilt {
  readonly camber: Radian
  readonly caster: Radian
}

/** What adjusters or faults do to an axle, against its design. @source definition */
export interface AxleSettings {
  /** By offset sleeves at the upper end of the kingpin: see `sleeveTilt`. */
  readonly tilt?: Partial<Readonly<Record<Side, KingpinTilt>>>
  /** Shims between axle or knuckle and hub: added to the wheel's camber and toe. */
  readonly shim?: Partial<Readonly<Record<Side, { readonly camber: Radian; readonly toe: Radian }>>>
  /** Added to the tie rod's length. */
  readonly tieRod?: Metre
  /** Added to the drag link's length. */
  readonly dragLink?: Metre
  /** Added to the lengths of the four links. */
  readonly links?: readonly [Metre, Metre, Metre, Metre]
}

/** What drives an axle. @source definition */
export interface AxleDrive {
  /** Middle between the hubs above its design height; bump is positive. */
  readonly heave: Metre
  /** Of the line through both hubs against its design tilt, seen from behind; left wheel up is positive. */
  readonly roll: Radian
  /** Turn of the drop arm from design; nothing on an axle that is not steered. */
  readonly drop: Radian
}
