import { mechanism, poseAt, sumOfDisplacements, type WheelAngle } from '../linkage/index.ts'
import { displacementByStroke } from './displacement-by-stroke.ts'
import type { WheelSetup } from './problem.ts'

/** The angles of a wheel, in the order in which this room keeps them. */
export const angleOrder: readonly WheelAngle[] = ['camber', 'caster', 'sai', 'toe']

/**
 * The wheel's angles with its adjusters at given strokes, exactly: the corner's points are displaced and the
 * pose is solved at the height and rack at which the wheel was read.
 *
 * @param strokes m, one per adjuster of the wheel, in its order
 * @returns rad in `angleOrder`; an angle that the layout does not have (caster of a five-link) stays 0
 * @throws {Refusal} what the linkage says when the corner cannot be assembled there
 * @source definition
 */
export function anglesAtStrokes(wheel: WheelSetup, strokes: ArrayLike<number>): Float64Array {
  const displacements = wheel.adjusters.map((adjuster, i) =>
    displacementByStroke(adjuster, wheel.points, strokes[i]!),
  )
  const pose = poseAt(mechanism(wheel.points, sumOfDisplacements(displacements)), wheel.drive)
  return Float64Array.of(pose.camber, pose.caster ?? 0, pose.sai ?? 0, pose.toe)
}
