import { partsOf } from './layout-parts.ts'
import type { Mechanism } from './mechanism.ts'
import type { Point } from './points.ts'
import { bodyPoint, knucklePoint } from './pose-of-state.ts'
import { cross, dot, minus, norm, plus, times, unit } from './vector.ts'

/** A circle that an arm's outer point moves on: centre, and the two radii that span its plane. */
interface Circle {
  readonly centre: Point
  readonly radius: number
  /** Unit, at the place where the arm stands at design. */
  readonly u: Point
  readonly v: Point
}

/** How many numbers the closed form of a layout needs. */
const closedSize = 48

// Packed numbers of the closed forms (SI):
//   0…2 centre, 3…5 radius·u, 6…8 radius·v of the lower outer point's circle
//   9…11 tie inner point (rack 0), 12 tie length squared
//   13 sign of the tie rod's closure
// double wishbone:
//   14…16 centre, 17…19 u, 20…22 v, 23 radius of the upper outer point's circle, 24 distance of the outer points
//   squared, 25 that distance, 26 sign of the upper closure
//   27, 28 tie outer along and across the steering axis; 29…31 wheel centre and 32…34 spin axis in (e1, e2, e3)
// strut:
//   14…16 top mount, 17…19 strut line and 20…22 strutLower, both against the lower outer point, in the knuckle
//   23 sign of the closure on the line
//   24…26 tie outer, 27…29 wheel centre against the lower outer point, 30…32 spin axis, in the knuckle

/** Numbers of the closed form, signs of the closures as at design; null for a layout that has none. */
export function closedNumbers(m: Mechanism): Float64Array | null {
  const { points } = m
  if (points.layout === 'five-link' || points.layout === 'semi-trailing arm') return null
  const k = new Float64Array(closedSize)
  const put = (at: number, [x, y, z]: Point): void => k.set([x, y, z], at)
  const lower = circleOf(m, 'lower')
  put(0, lower.centre)
  put(3, times(lower.radius, lower.u))
  put(6, times(lower.radius, lower.v))
  put(9, bodyPoint(m, 'tieInner'))
  const length = (name: string, a: Point, b: Point): number =>
    norm(minus(a, b)) + (m.displacement.length?.[name] ?? 0)
  k[12] = length('tie', points.tieInner, points.tieOuter) ** 2
  const outer = knucklePoint(m, 'lowerOuter')
  const tie = minus(knucklePoint(m, 'tieOuter'), outer)
  const hub = minus(knucklePoint(m, 'wheelCentre'), outer)
  const rod = minus(points.tieOuter, points.tieInner)
  if (points.layout === 'strut') {
    const line = unit(minus(knucklePoint(m, 'strutTop'), knucklePoint(m, 'strutLower')))
    const foot = minus(knucklePoint(m, 'strutLower'), outer)
    put(14, bodyPoint(m, 'topMount'))
    put(17, line)
    put(20, foot)
    k[23] = Math.sign(dot(minus(points.topMount, points.lowerOuter), line))
    put(24, tie)
    put(27, hub)
    put(30, m.spin)
    k[13] = Math.sign(
      dot(minus(points.topMount, points.lowerOuter), cross(minus(points.tieOuter, points.lowerOuter), rod)),
    )
    return k
  }
  const upper = circleOf(m, 'upper')
  const axis = minus(knucklePoint(m, 'upperOuter'), outer)
  put(14, upper.centre)
  put(17, upper.u)
  put(20, upper.v)
  k[23] = upper.radius
  k[24] = dot(axis, axis)
  k[25] = norm(axis)
  const e1 = unit(axis)
  const along = dot(tie, e1)
  const across = minus(tie, times(along, e1))
  const e2 = unit(across)
  const e3 = cross(e1, e2)
  k[27] = along
  k[28] = norm(across)
  put(29, [dot(hub, e1), dot(hub, e2), dot(hub, e3)])
  put(32, [dot(m.spin, e1), dot(m.spin, e2), dot(m.spin, e3)])
  const designAxis = minus(points.upperOuter, points.lowerOuter)
  k[26] = Math.sign(dot(upperPush(m), designAxis))
  k[13] = Math.sign(dot(designAxis, cross(minus(points.tieOuter, points.lowerOuter), rod)))
  return k
}

/** Direction in which the upper outer point moves at design when the arm turns. */
function upperPush(m: Mechanism): Point {
  if (m.points.layout !== 'double wishbone') return [0, 0, 0]
  const { upperFrontInner, upperRearInner, upperOuter } = m.points
  return cross(minus(upperFrontInner, upperRearInner), minus(upperOuter, upperRearInner))
}

/** The circle of an arm's outer point from its two leg lengths and the (displaced) inner axis. */
function circleOf(m: Mechanism, name: 'upper' | 'lower'): Circle {
  const arm = partsOf(m.points.layout).arms.find((each) => each.name === name)!
  const front = bodyPoint(m, arm.frontInner)
  const rear = bodyPoint(m, arm.rearInner)
  const leg = (inner: string, place: string): number => {
    const points = m.points as unknown as Readonly<Record<string, Point>>
    return norm(minus(points[arm.outer]!, points[inner]!)) + (m.displacement.length?.[`${name}${place}`] ?? 0)
  }
  const long = norm(minus(front, rear))
  const axis = unit(minus(front, rear))
  const a = leg(arm.rearInner, 'Rear')
  const b = leg(arm.frontInner, 'Front')
  const along = (a * a - b * b + long * long) / (2 * long)
  const centre = plus(rear, times(along, axis))
  const radius = Math.sqrt(Math.max(0, a * a - along * along))
  const design = minus((m.points as unknown as Readonly<Record<string, Point>>)[arm.outer]!, centre)
  const u = unit(minus(design, times(dot(design, axis), axis)))
  return { centre, radius, u, v: cross(axis, u) }
}
