import type { Metre, Radian } from '../quantity/index.ts'
import type { Point } from './points.ts'
import type { AxleDrive } from './solid-axle-points.ts'

/** One wheel of an axle's pose. Places in vehicle axes; angles, scrub and trail mean the same on both sides (signs.md). @source definition */
export interface AxleWheelPose {
  readonly camber: Radian
  readonly toe: Radian
  /** Of the kingpin axis; null where the wheel is not steered, as the five below. */
  readonly caster: Radian | null
  readonly sai: Radian | null
  readonly scrub: Metre | null
  readonly trail: Metre | null
  /** The same in the steered wheel's own axes. */
  readonly scrubWheel: Metre | null
  readonly trailWheel: Metre | null
  /** Turn of the knuckle about its kingpin from design; to the left is positive, 0 where it is not steered. */
  readonly steer: Radian
  readonly wheelCentre: Point
  /** Unit, outward. */
  readonly spinAxis: Point
  readonly contact: Point
}

/** Where an axle is, and every angle that comes from it. @source definition */
export interface AxlePose extends AxleDrive {
  readonly left: AxleWheelPose
  readonly right: AxleWheelPose
  /** Middle between the hubs at straight ahead, a point of the axle. */
  readonly middle: Point
  /** Turn of the axle from its design attitude: unit quaternion w, x, y, z. */
  readonly turn: readonly [number, number, number, number]
  /** Largest rod error left, m. */
  readonly residual: Metre
}
