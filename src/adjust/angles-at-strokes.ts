import {
  displaced,
  type Mechanism,
  mechanism,
  poseAt,
  sumOfDisplacements,
  type WheelAngle,
} from '../linkage/index.ts'
import type { Adjuster } from './adjuster.ts'
import { displacementByStroke } from './displacement-by-stroke.ts'
import type { WheelSetup } from './problem.ts'

/** The angles of a wheel, in the order in which this room keeps them. */
export const angleOrder: readonly WheelAngle[] = ['camber', 'caster', 'sai', 'toe']

/**
 * A wheel's angles as a function of its adjusters' strokes, exactly: the corner's points are displaced and the
 * pose is solved at the height and rack at which the wheel was read.
 *
 * @param shared adjusters that act on both wheels, after the wheel's own
 * @returns from strokes, one per adjuster in that order, to rad in `angleOrder`; an angle that the layout does not
 *   have (caster of a five-link) stays 0
 * @throws {Refusal} what the linkage says when the corner cannot be assembled there
 * @source definition
 */
export function anglesAtStrokes(
  { points, drive, adjusters }: WheelSetup,
  shared: readonly Adjuster[] = [],
): (strokes: ArrayLike<number>) => Float64Array {
  const all = [...adjusters, ...shared]
  let drawn: Mechanism | null = null
  return (strokes) => {
    const displacements = all.map((adjuster, i) => displacementByStroke(adjuster, points, strokes[i]!))
    drawn ??= mechanism(points)
    const pose = poseAt(displaced(drawn, sumOfDisplacements(displacements)), drive)
    return Float64Array.of(pose.camber, pose.caster ?? 0, pose.sai ?? 0, pose.toe)
  }
}
