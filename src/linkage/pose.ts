import type { Metre, Radian } from '../quantity/index.ts'
import type { Drive, Point } from './points.ts'

/** Where the knuckle is, and every angle that comes from it. Definitions and signs: docs/methods/signs.md. @source definition */
export interface Pose extends Drive {
  readonly camber: Radian
  readonly toe: Radian
  /** Side view of the joint axis; null for a five-link or a trailing arm, which have no joint axis. */
  readonly caster: Radian | null
  /** Front view of the joint axis; null as caster. */
  readonly sai: Radian | null
  readonly wheelCentre: Point
  /** Unit, outward. */
  readonly spinAxis: Point
  readonly contact: Point
  /** Present place of the knuckle's points by name: upperOuter, lowerOuter, tieOuter, strutLower, outer0 … */
  readonly points: Readonly<Record<string, Point>>
  /** Arm angles from design, bump positive; null where there is no such arm. A trailing arm's own is `armLower`. */
  readonly armUpper: Radian | null
  readonly armLower: Radian | null
  /** Scrub radius and trail in the body's axes. */
  readonly scrub: Metre | null
  readonly trail: Metre | null
  /** The same in the steered wheel's own axes. */
  readonly scrubWheel: Metre | null
  readonly trailWheel: Metre | null
  /** Top mount to strutLower; null where there is no strut. */
  readonly strutLength: Metre | null
  /** Largest link error left, m. */
  readonly residual: Metre
  /** Turn of the knuckle from its design attitude: unit quaternion w, x, y, z. Present in every computed pose. */
  readonly turn?: readonly [number, number, number, number]
}
