import { metre, type Radian, Refusal, rad } from '../quantity/index.ts'
import { bumpSense } from './bump-sense.ts'
import { constraintRows, rowsRoom } from './constraint-rows.ts'
import { designPoint, partsOf } from './layout-parts.ts'
import type { LinkageRefusal } from './linkage-refusal.ts'
import type { Mechanism } from './mechanism.ts'
import type { Drive, Point } from './points.ts'
import type { Pose } from './pose.ts'
import { cross, dot, minus, plus, times, unit } from './vector.ts'

/** Everything a pose says, from the knuckle's state (wheel centre, unit quaternion). Formulas: docs/methods/signs.md. */
export function poseOfState(m: Mechanism, state: Float64Array, { travel, rack }: Drive): Pose {
  const rows = rowsRoom()
  constraintRows(m.facts, m.form, state, rack, rows)
  const turn = ([x, y, z]: Point): Point => [
    rows.turn[0]! * x + rows.turn[1]! * y + rows.turn[2]! * z,
    rows.turn[3]! * x + rows.turn[4]! * y + rows.turn[5]! * z,
    rows.turn[6]! * x + rows.turn[7]! * y + rows.turn[8]! * z,
  ]
  const wheelCentre: Point = [state[0]!, state[1]!, state[2]!]
  const place = (name: string): Point =>
    plus(wheelCentre, turn(minus(knucklePoint(m, name), knucklePoint(m, 'wheelCentre'))))
  const parts = partsOf(m.points.layout)
  const points = Object.fromEntries(parts.shown.map((name) => [name, place(name)]))
  const spinAxis = turn(m.spin)
  const toe = Math.atan2(spinAxis[0], spinAxis[1])
  const contact = contactOf(wheelCentre, spinAxis, m.points.tyreRadius)
  const ends = parts.axis && {
    lower: place(parts.axis.lower),
    upper: m.facts.strut ? bodyPoint(m, parts.axis.upper) : place(parts.axis.upper),
  }
  return {
    travel,
    rack,
    camber: rad(-Math.asin(Math.min(1, Math.max(-1, spinAxis[2])))),
    toe: rad(toe),
    ...steeringAxisOf(ends, contact, toe),
    wheelCentre,
    spinAxis,
    contact,
    points,
    armUpper: armAngle(m, 'upper', points),
    armLower: armAngle(m, 'lower', points),
    strutLength: parts.shown.includes('strutLower')
      ? metre(Math.hypot(...minus(bodyPoint(m, 'topMount'), points['strutLower']!)))
      : null,
    residual: metre(Math.max(...rows.error.map(Math.abs), Math.abs(wheelCentre[2] - m.home[2] - travel))),
    turn: [state[3]!, state[4]!, state[5]!, state[6]!],
  }
}

/** A body point as displaced. */
export const bodyPoint = (m: Mechanism, name: string): Point =>
  plus(designPoint(m.points, name), m.displacement.body?.[name] ?? [0, 0, 0])

/** A knuckle point as displaced, in the knuckle's design position. */
export const knucklePoint = (m: Mechanism, name: string): Point =>
  plus(designPoint(m.points, name), m.displacement.knuckle?.[name] ?? [0, 0, 0])

/** Lowest point of the wheel: W + r d, d downhill in the wheel's plane. */
export function contactOf(wheelCentre: Point, s: Point, radius: number): Point {
  const down: Point = [s[2] * s[0], s[2] * s[1], s[2] * s[2] - 1]
  const size = Math.hypot(...down)
  if (size < 1e-9)
    throw new Refusal<LinkageRefusal>({
      code: 'degenerate',
      at: 'spinAxis',
      sentence: 'In this pose the wheel lies flat, so it has no lowest point and no toe.',
      remedy: 'Check the points and ask for a smaller travel.',
    })
  return plus(wheelCentre, times(radius / size, down))
}

type AxisAngles = Pick<Pose, 'caster' | 'sai' | 'scrub' | 'trail' | 'scrubWheel' | 'trailWheel'>

/** Caster, SAI and where the joint axis meets the level of the contact point. */
export function steeringAxisOf(
  ends: { readonly lower: Point; readonly upper: Point } | null,
  contact: Point,
  toe: number,
): AxisAngles {
  if (!ends) return { caster: null, sai: null, scrub: null, trail: null, scrubWheel: null, trailWheel: null }
  const k = minus(ends.upper, ends.lower)
  const caster = rad(Math.atan2(-k[0], k[2]))
  const sai = rad(Math.atan2(-k[1], k[2]))
  // an axis that lies level never meets the level of the contact point
  if (Math.abs(k[2]) < 1e-9 * Math.hypot(...k))
    return { caster, sai, scrub: null, trail: null, scrubWheel: null, trailWheel: null }
  const pierce = plus(ends.lower, times((contact[2] - ends.lower[2]) / k[2], k))
  const [x, y] = minus(contact, pierce)
  const [sin, cos] = [Math.sin(toe), Math.cos(toe)]
  return {
    caster,
    sai,
    scrub: metre(y),
    trail: metre(-x),
    scrubWheel: metre(x * sin + y * cos),
    trailWheel: metre(-x * cos + y * sin),
  }
}

/** Angle of an arm about its (displaced) inner axis, from the design outer point to the present one. */
function armAngle(
  m: Mechanism,
  name: 'upper' | 'lower',
  points: Readonly<Record<string, Point>>,
): Radian | null {
  const arm = partsOf(m.points.layout).arms.find((each) => each.name === name)
  if (!arm) return null
  const rear = bodyPoint(m, arm.rearInner)
  const axis = unit(minus(bodyPoint(m, arm.frontInner), rear))
  const u = minus(designPoint(m.points, arm.outer), rear)
  const v = minus(points[arm.outer]!, rear)
  const angle = Math.atan2(dot(axis, cross(u, v)), dot(u, v) - dot(u, axis) * dot(v, axis))
  return rad(bumpSense(m.points) * angle)
}
