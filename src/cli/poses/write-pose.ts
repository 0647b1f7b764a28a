import type { Pose } from '../../linkage/index.ts'
import { inDegrees } from '../../quantity/index.ts'

const degreesOrNull = (angle: number | null): number | null => (angle === null ? null : inDegrees(angle))
/** "upperOuter" → "upper_outer". */
const snake = (name: string): string => name.replace(/[A-Z]/g, (letter) => `_${letter.toLowerCase()}`)

/** A pose as the exchange file's `out`: degrees and metres. */
export function writePose(pose: Pose): Record<string, unknown> {
  return {
    camber: inDegrees(pose.camber),
    toe: inDegrees(pose.toe),
    caster: degreesOrNull(pose.caster),
    sai: degreesOrNull(pose.sai),
    wheel_center: pose.wheelCentre,
    spin_axis: pose.spinAxis,
    points: Object.fromEntries(Object.entries(pose.points).map(([name, at]) => [snake(name), at])),
    contact: pose.contact,
    arm_upper: degreesOrNull(pose.armUpper),
    arm_lower: degreesOrNull(pose.armLower),
    scrub: pose.scrub,
    trail: pose.trail,
    scrub_wheel: pose.scrubWheel,
    trail_wheel: pose.trailWheel,
    ...(pose.strutLength === null ? {} : { strut_length: pose.strutLength }),
  }
}
