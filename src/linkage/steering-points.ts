import type { Metre } from '../quantity/index.ts'
import type { Mechanism } from './mechanism.ts'
import type { Point } from './points.ts'

/** A rack: both inner tie-rod points move along y. @source definition */
export interface RackSteering {
  readonly kind: 'rack'
  /** Rack to the left per turn of the steering wheel to the left; below 0 where the rods lie behind the axle. */
  readonly perTurn: Metre
}

/**
 * A steering box with drop arm, idler arm and centre link, in vehicle axes at straight ahead. Both inner tie-rod points
 * sit on the centre link. Arms turn about their axes by the right-hand rule, first point → second.
 *
 * @source definition
 */
export interface BoxSteering {
  readonly kind: 'box'
  readonly dropAxis: readonly [Point, Point]
  /** Joint of drop arm and centre link. */
  readonly dropJoint: Point
  readonly idlerAxis: readonly [Point, Point]
  /** Joint of idler arm and centre link. */
  readonly idlerJoint: Point
  /** Turn of the steering wheel to the left per turn of the drop arm; below 0 where they turn against each other. */
  readonly ratio: number
}

/** An axle steered on both sides: corners as always, the right one given and computed as a left one. @source definition */
export interface SteeredAxle {
  readonly steering: RackSteering | BoxSteering
  readonly left: Mechanism
  readonly right: Mechanism
}
