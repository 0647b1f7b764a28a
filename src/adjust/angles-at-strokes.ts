import {
  displaced,
  type Mechanism,
  mechanism,
  newtonPose,
  type Pose,
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
  wheel: WheelSetup,
  shared: readonly Adjuster[] = [],
): (strokes: ArrayLike<number>) => Float64Array {
  const set = mechanismAt(wheel, shared)
  return (strokes) => anglesOf(poseAt(set(strokes), wheel.drive))
}

/**
 * The same near some strokes, found from the pose there: for the many poses of a polynomial.
 *
 * @throws {Refusal} what the linkage says when the corner cannot be assembled there
 * @source definition
 */
export function anglesNearStrokes(
  wheel: WheelSetup,
  strokes: ArrayLike<number>,
  shared: readonly Adjuster[] = [],
): (strokes: ArrayLike<number>) => Float64Array {
  const set = mechanismAt(wheel, shared)
  const from = poseAt(set(strokes), wheel.drive)
  return (there) => anglesOf(newtonPose(set(there), wheel.drive, from))
}

function mechanismAt(
  { points, adjusters }: WheelSetup,
  shared: readonly Adjuster[],
): (strokes: ArrayLike<number>) => Mechanism {
  const all = [...adjusters, ...shared]
  let drawn: Mechanism | null = null
  return (strokes) => {
    const displacements = all.map((adjuster, i) => displacementByStroke(adjuster, points, strokes[i]!))
    drawn ??= mechanism(points)
    return displaced(drawn, sumOfDisplacements(displacements))
  }
}

const anglesOf = ({ camber, caster, sai, toe }: Pose): Float64Array =>
  Float64Array.of(camber, caster ?? 0, sai ?? 0, toe)
