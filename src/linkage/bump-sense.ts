import type { AnyCornerPoints } from './points.ts'
import { cross, minus } from './vector.ts'

/**
 * 1 where a turn about the arm's axis, rear pivot → front pivot, lifts the wheel, −1 where it lowers it: a leading
 * arm, or a hinge whose bushes were named the other way round. Arms of links point outward and have 1.
 */
export function bumpSense(points: AnyCornerPoints): 1 | -1 {
  if (points.layout !== 'semi-trailing arm') return 1
  const axis = minus(points.innerFront, points.innerRear)
  return cross(axis, minus(points.wheelCentre, points.innerRear))[2] < 0 ? -1 : 1
}
