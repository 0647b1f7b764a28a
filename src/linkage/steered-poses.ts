import { type Metre, metre, type Radian, Refusal } from '../quantity/index.ts'
import { partsOf } from './layout-parts.ts'
import type { LinkageRefusal } from './linkage-refusal.ts'
import { displaced, type Mechanism } from './mechanism.ts'
import { mirrorPoint } from './mirror-point.ts'
import type { Point } from './points.ts'
import type { Pose } from './pose.ts'
import { poseAt } from './pose-at.ts'
import { bodyPoint } from './pose-of-state.ts'
import { rackForSide } from './rack-for-side.ts'
import type { SteeredAxle } from './steering-points.ts'
import { rackAt, steeringShift } from './steering-shift.ts'
import { sumOfDisplacements } from './sum-of-displacements.ts'
import type { Side } from './wheel-angles.ts'

/** What drives an axle that is steered on both sides. @source definition */
export interface SteeredDrive {
  /** Steering wheel from straight ahead, to the left positive. */
  readonly wheel: Radian
  readonly travel: Readonly<Record<Side, Metre>>
}

/**
 * Poses of both front wheels at a steering wheel angle and their travels. The right one is computed as a left one:
 * its angles mean the same, its places are mirrored.
 *
 * @throws {Refusal} as `poseAt` and `idlerAngle`: `not-finite`; `unreachable`; `not-for-this-layout` when a corner has
 *   nothing that the steering moves
 * @source own derivation: docs/methods/steering.md
 * @example inDegrees(steeredPoses(axle, { wheel: deg(90), travel: level }).left.toe) // -5.754946
 */
export function steeredPoses(
  { steering, left, right }: SteeredAxle,
  { wheel, travel }: SteeredDrive,
): Readonly<Record<Side, Pose>> {
  const names = { left: steeredPoint(left, 'left'), right: steeredPoint(right, 'right') }
  if (steering.kind === 'rack') {
    const rack = metre(rackAt(steering, wheel))
    const at = (m: Mechanism, side: Side): Pose =>
      poseAt(m, { travel: travel[side], rack: rackForSide({ side, rack }) })
    return { left: at(left, 'left'), right: at(right, 'right') }
  }
  const inner = {
    left: bodyPoint(left, names.left),
    right: mirrorPoint(bodyPoint(right, names.right)),
  }
  const { shift } = steeringShift(steering, { wheel, inner })
  const at = (m: Mechanism, side: Side, by: Point): Pose =>
    poseAt(displaced(m, sumOfDisplacements([m.displacement, { body: { [names[side]]: by } }])), {
      travel: travel[side],
      rack: metre(0),
    })
  return { left: at(left, 'left', shift.left), right: at(right, 'right', mirrorPoint(shift.right)) }
}

/** Name of the body point that steers a corner. */
function steeredPoint(m: Mechanism, side: Side): string {
  const leg = partsOf(m.points.layout).legs[m.facts.rackLeg]
  if (leg) return leg.inner
  throw new Refusal<LinkageRefusal>({
    code: 'not-for-this-layout',
    at: side,
    given: m.points.layout,
    sentence: `Nothing of the ${side} corner is moved by the steering.`,
    remedy: 'Mark the steered link, or leave this axle out.',
  })
}
