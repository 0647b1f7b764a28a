import type { Pose, WheelAngle } from '../../linkage/index.ts'
import type { Seen } from './seen-lazily.ts'

/** A pose of a corner with the slopes of its angles. */
export interface Posed {
  readonly pose: Pose
  /** An angle, and its slope by each unknown, drive held. */
  readonly angle: (name: WheelAngle) => Seen
  /** Slope of an angle by the rack, rad/m. */
  readonly perRack: (name: WheelAngle) => number
}
