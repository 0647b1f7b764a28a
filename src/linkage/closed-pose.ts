import { type ClosedKernel, closedAngle, closedKernel } from './closed-kernel.ts'
import type { Mechanism } from './mechanism.ts'
import type { Drive, Point } from './points.ts'
import type { Pose } from './pose.ts'
import { checkedDrive, poseAt } from './pose-at.ts'
import { knucklePoint, poseOfState } from './pose-of-state.ts'
import { cross, dot, minus, plus, times, unit } from './vector.ts'

/**
 * The pose of a double wishbone or strut in closed form, driven by wheel height. Close to a dead centre or to the
 * turn of the travel, and for a five-link, it is left to `poseAt`; both agree to rounding.
 *
 * @throws {Refusal} `not-finite`; `unreachable`; `degenerate`, as `poseAt`
 * @source own derivation: docs/methods/pose-of-a-corner.md
 * @example inDegrees(closedPose(m, { travel: mm(10), rack: mm(0) }).toe) // 0.0057334
 */
export function closedPose(m: Mechanism, drive: Drive): Pose {
  const { travel, rack } = checkedDrive(drive)
  const kernel = closedKernel(m)
  const phi = kernel ? closedAngle(kernel, travel, rack, travel / kernel.rate) : Number.NaN
  return kernel && !Number.isNaN(phi)
    ? poseOfState(m, stateOfClosed(m, kernel), { travel, rack })
    : poseAt(m, drive)
}

/** Wheel centre and turn from two directions known in the knuckle and in space. */
function stateOfClosed(m: Mechanism, { out }: ClosedKernel): Float64Array {
  const at = (i: number): Point => [out[i]!, out[i + 1]!, out[i + 2]!]
  const e1 = at(6)
  const e2 = at(12)
  const outer = knucklePoint(m, 'lowerOuter')
  const inKnuckle = axisInKnuckle(m, at(9), outer)
  const tie = minus(knucklePoint(m, 'tieOuter'), outer)
  const i2 = unit(minus(tie, times(dot(tie, inKnuckle), inKnuckle)))
  const [space, knuckle] = [
    [e1, e2, cross(e1, e2)],
    [inKnuckle, i2, cross(inKnuckle, i2)],
  ]
  const r = (i: number, j: number): number =>
    space[0]![i]! * knuckle[0]![j]! + space[1]![i]! * knuckle[1]![j]! + space[2]![i]! * knuckle[2]![j]!
  return Float64Array.of(out[0]!, out[1]!, out[2]!, ...quaternionOf(r))
}

/** Steering axis in the knuckle's design attitude. */
function axisInKnuckle(m: Mechanism, lower: Point, outer: Point): Point {
  if (m.points.layout !== 'strut') return unit(minus(knucklePoint(m, 'upperOuter'), outer))
  const foot = minus(knucklePoint(m, 'strutLower'), outer)
  const line = unit(minus(knucklePoint(m, 'strutTop'), knucklePoint(m, 'strutLower')))
  const top = plus(m.points.topMount, m.displacement.body?.['topMount'] ?? [0, 0, 0])
  const reach = dot(minus(top, lower), minus(top, lower))
  const along = dot(foot, line)
  const root = Math.sqrt(Math.max(0, along * along - dot(foot, foot) + reach))
  const side = Math.sign(dot(minus(m.points.topMount, m.points.lowerOuter), line))
  return unit(plus(foot, times(side * root - along, line)))
}

/** Unit quaternion of a rotation matrix (the largest component first, w ≥ 0 where it can be). */
function quaternionOf(r: (i: number, j: number) => number): [number, number, number, number] {
  const trace = r(0, 0) + r(1, 1) + r(2, 2)
  if (trace > 0) {
    const s = 2 * Math.sqrt(trace + 1)
    return [s / 4, (r(2, 1) - r(1, 2)) / s, (r(0, 2) - r(2, 0)) / s, (r(1, 0) - r(0, 1)) / s]
  }
  const i = r(0, 0) > r(1, 1) ? (r(0, 0) > r(2, 2) ? 0 : 2) : r(1, 1) > r(2, 2) ? 1 : 2
  const j = (i + 1) % 3
  const k = (i + 2) % 3
  const s = 2 * Math.sqrt(1 + r(i, i) - r(j, j) - r(k, k))
  const q: [number, number, number, number] = [(r(k, j) - r(j, k)) / s, 0, 0, 0]
  q[1 + i] = s / 4
  q[1 + j] = (r(j, i) + r(i, j)) / s
  q[1 + k] = (r(k, i) + r(i, k)) / s
  return q
}
