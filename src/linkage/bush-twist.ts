import { type Radian, rad } from '../quantity/index.ts'
import { bumpSense } from './bump-sense.ts'
import { partsOf } from './layout-parts.ts'
import type { Mechanism } from './mechanism.ts'
import type { Pose } from './pose.ts'
import { bodyPoint } from './pose-of-state.ts'
import { cross, dot, minus, norm, unit } from './vector.ts'

/**
 * How far each inner pivot is turned between two poses: the twist that a bonded bush tightened in `from` carries
 * in `to`. Bump is positive. Both pivots of an arm turn with the arm about its axis. A link of a five-link turns
 * about no one axis: its whole swing is given, positive when its outer end rises.
 *
 * @returns rad by the name of the inner pivot; tie rods have ball joints and are left out
 * @assumes arms stiff; a five-link's bolts square to the plane that the link swings in
 * @source own derivation: docs/methods/pose-of-a-corner.md
 * @example bushTwist(m, { from, to: poseAt(m, { travel: mm(-60), rack: mm(0) }) }).lowerFrontInner // -0.176533 rad
 */
export function bushTwist(
  m: Mechanism,
  { from, to }: { readonly from: Pose; readonly to: Pose },
): Readonly<Record<string, Radian>> {
  const parts = partsOf(m.points.layout)
  const twist: Record<string, Radian> = {}
  for (const arm of parts.arms) {
    const rear = bodyPoint(m, arm.rearInner)
    const axis = unit(minus(bodyPoint(m, arm.frontInner), rear))
    const u = minus(from.points[arm.outer]!, rear)
    const v = minus(to.points[arm.outer]!, rear)
    const angle =
      bumpSense(m.points) * Math.atan2(dot(axis, cross(u, v)), dot(u, v) - dot(u, axis) * dot(v, axis))
    twist[arm.frontInner] = rad(angle)
    twist[arm.rearInner] = rad(angle)
  }
  if (m.points.layout === 'five-link')
    for (const leg of parts.legs) {
      const inner = bodyPoint(m, leg.inner)
      const u = minus(from.points[leg.outer]!, inner)
      const v = minus(to.points[leg.outer]!, inner)
      const swing = Math.atan2(norm(cross(u, v)), dot(u, v))
      twist[leg.inner] = rad(v[2] < u[2] ? -swing : swing)
    }
  return twist
}
