import { rad } from '../quantity/index.ts'
import { checkTwistBeam, effectivePoint } from './effective-point.ts'
import { mirrorPoint } from './mirror-point.ts'
import type { Point, SemiTrailingArm } from './points.ts'
import type { TwistBeam } from './twist-beam-points.ts'
import type { Side } from './wheel-angles.ts'

/**
 * One wheel of a twist beam as a hinged arm, for all doors of a single corner: `together` when the other wheel moves
 * as much, `apart` when it moves as much the other way. A right one comes as its mirror image, as every corner.
 *
 * @throws {Refusal} `not-finite`; `bad-input`; `coincident-pivots`; `singular`
 * @source own derivation: docs/methods/twist-beam.md
 * @example inDegrees(rateOf(mechanism(twistBeamArm(beam, 'left', 'apart')), ride, { travel: 1 }).camber) // -30.7118
 */
export function twistBeamArm(beam: TwistBeam, side: Side, how: 'together' | 'apart'): SemiTrailingArm {
  checkTwistBeam(beam)
  const { pivot, wheelCentre, camber, toe, tyreRadius } = beam[side]
  const shim = beam.shim?.[side]
  const other = how === 'apart' ? effectivePoint(beam) : beam[side === 'left' ? 'right' : 'left'].pivot
  const mirrored = (p: Point): Point => (side === 'left' ? p : mirrorPoint(p))
  return {
    layout: 'semi-trailing arm',
    innerFront: mirrored(pivot),
    innerRear: mirrored(other),
    wheelCentre: mirrored(wheelCentre),
    camber: rad(camber + (shim?.camber ?? 0)),
    toe: rad(toe + (shim?.toe ?? 0)),
    tyreRadius,
  }
}
