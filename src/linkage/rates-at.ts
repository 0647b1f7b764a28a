import { Refusal } from '../quantity/index.ts'
import { constraintRows, rowsRoom } from './constraint-rows.ts'
import { formRates } from './form-rates.ts'
import { partsOf } from './layout-parts.ts'
import type { LinkageRefusal } from './linkage-refusal.ts'
import type { Mechanism } from './mechanism.ts'
import { bodyAt, formSize, lengthAt, strutTopAt } from './numeric-form.ts'
import type { AnyCornerPoints, Displacement, Point } from './points.ts'
import type { Pose } from './pose.ts'
import { knucklePoint } from './pose-of-state.ts'
import { solveLinear } from './solve-linear.ts'
import { cross, dot, minus, norm, plus, times } from './vector.ts'

/** A way to go: any displacement, and the drive. The unit of what comes out is per unit of this. @source definition */
export interface Direction extends Displacement {
  readonly travel?: number
  readonly rack?: number
}

/** How fast a wheel's angles and place change. Angles in rad per unit of the direction, lengths in m. @source definition */
export interface WheelRates {
  readonly camber: number
  readonly toe: number
  /** Null for a five-link or a trailing arm, which have no joint axis. */
  readonly caster: number | null
  readonly sai: number | null
  readonly wheelCentre: Point
  /** Angular velocity of the knuckle, body axes. */
  readonly turn: Point
}

/**
 * Rates of the wheel's angles at a pose, for as many directions as wanted: the constraints' Jacobian is inverted
 * once, then each direction is a product (implicit function theorem). Height is held unless `travel` moves it.
 *
 *     J · (velocity, angular velocity) = −∂constraints/∂direction
 *
 * @param pose of the same mechanism, from `poseAt` or its kin
 * @throws {Refusal} `singular` at a pose where the wheel is not held
 * @source own derivation: docs/methods/pose-of-a-corner.md
 * @example ratesAt(m, from)({ rack: 1 }).toe // 6.94708 rad/m
 */
export function ratesAt(m: Mechanism, pose: Pose): (direction: Direction) => WheelRates {
  const rows = rowsRoom()
  constraintRows(m.facts, m.form, stateOf(m, pose), pose.rack, rows)
  const inverse = inverseRows(m, rows.jacobian)
  const turn = (a: Point): Point => [
    rows.turn[0]! * a[0] + rows.turn[1]! * a[1] + rows.turn[2]! * a[2],
    rows.turn[3]! * a[0] + rows.turn[4]! * a[1] + rows.turn[5]! * a[2],
    rows.turn[6]! * a[0] + rows.turn[7]! * a[1] + rows.turn[8]! * a[2],
  ]
  const { axis } = partsOf(m.points.layout)
  const lever = (name: string): Point => turn(minus(knucklePoint(m, name), knucklePoint(m, 'wheelCentre')))
  const column = new Float64Array(5)
  return (direction) => {
    formRates(m.facts, rows, formRateOf(m.points, direction), column)
    const lift = direction.travel ?? 0
    for (let i = 0; i < 5; i++) column[i]! += rows.jacobian[6 * i + 2]! * lift
    if (m.facts.rackLeg >= 0)
      column[m.facts.rackLeg]! -= rows.along[3 * m.facts.rackLeg + 1]! * (direction.rack ?? 0)
    const x = [0, 1, 2, 3, 4].map((i) => {
      let sum = 0
      for (let k = 0; k < 5; k++) sum -= inverse[5 * i + k]! * column[k]!
      return sum
    })
    const wheelCentre: Point = [x[0]!, x[1]!, lift]
    const omega: Point = [x[2]!, x[3]!, x[4]!]
    const s = pose.spinAxis
    const ds = plus(cross(omega, s), turn(spinRate(m, direction.spin)))
    const flat = s[0] * s[0] + s[1] * s[1]
    const knuckleShift = (name: string): Point =>
      turn(minus(direction.knuckle?.[name] ?? zero, direction.knuckle?.['wheelCentre'] ?? zero))
    const pointRate = (name: string): Point =>
      plus(plus(wheelCentre, cross(omega, lever(name))), knuckleShift(name))
    let caster: number | null = null
    let sai: number | null = null
    if (axis) {
      const top: Point = m.facts.strut
        ? plus(
            m.points.layout === 'strut' ? m.points.topMount : zero,
            m.displacement.body?.['topMount'] ?? zero,
          )
        : plus(pose.wheelCentre, lever(axis.upper))
      const k = minus(top, plus(pose.wheelCentre, lever(axis.lower)))
      const dk = minus(
        m.facts.strut ? (direction.body?.['topMount'] ?? zero) : pointRate(axis.upper),
        pointRate(axis.lower),
      )
      caster = (k[0] * dk[2] - dk[0] * k[2]) / (k[0] * k[0] + k[2] * k[2])
      sai = (k[1] * dk[2] - dk[1] * k[2]) / (k[1] * k[1] + k[2] * k[2])
    }
    return {
      camber: -ds[2] / Math.sqrt(flat),
      toe: (ds[0] * s[1] - s[0] * ds[1]) / flat,
      caster,
      sai,
      wheelCentre,
      turn: omega,
    }
  }
}

const zero: Point = [0, 0, 0]

/** State of a pose: wheel centre and turn. */
export function stateOf(m: Mechanism, pose: Pose): Float64Array {
  const turn = pose.turn ?? [1, 0, 0, 0]
  return Float64Array.of(pose.wheelCentre[0], pose.wheelCentre[1], m.home[2] + pose.travel, ...turn)
}

/** Inverse of the 5 × 5 Jacobian with the height held, rows: wheel centre x, y, turn x, y, z. */
function inverseRows(m: Mechanism, jacobian: Float64Array): Float64Array {
  const inverse = new Float64Array(25)
  for (let column = 0; column < 5; column++) {
    const a = new Float64Array(25)
    const b = new Float64Array(5)
    b[column] = 1
    for (let i = 0; i < 5; i++) {
      a[5 * i] = jacobian[6 * i]!
      a[5 * i + 1] = jacobian[6 * i + 1]!
      for (let k = 3; k < 6; k++) a[5 * i + k - 1] = jacobian[6 * i + k]! / m.size
    }
    if (solveLinear(a, b, 5) === 0 || !b.every(Number.isFinite))
      throw new Refusal<LinkageRefusal>({
        code: 'singular',
        at: 'pose',
        sentence: 'At this pose the links do not hold the wheel, so nothing can be said about small changes.',
        remedy: 'Ask for a pose further from the end of the travel.',
      })
    for (let i = 0; i < 5; i++) inverse[5 * i + column] = b[i]! / (i < 2 ? 1 : m.size)
  }
  return inverse
}

/** What a direction adds to the numbers of the form. */
function formRateOf(points: AnyCornerPoints, by: Displacement): Float64Array {
  const rate = new Float64Array(formSize)
  const parts = partsOf(points.layout)
  const hub = by.knuckle?.['wheelCentre'] ?? zero
  const onKnuckle = (name: string): Point => minus(by.knuckle?.[name] ?? zero, hub)
  for (const [i, leg] of parts.legs.entries()) {
    rate.set(onKnuckle(leg.outer), 3 * i)
    rate.set(by.body?.[leg.inner] ?? zero, bodyAt + 3 * i)
    rate[lengthAt + i] = by.length?.[leg.name] ?? 0
  }
  if (points.layout === 'semi-trailing arm') {
    for (let i = 0; i < 4; i++) rate.set(onKnuckle('eyeFront'), 3 * i)
    for (let i = 0; i < 3; i++) rate.set(by.body?.['innerFront'] ?? zero, bodyAt + 3 * i)
    rate.set(by.body?.['innerRear'] ?? zero, bodyAt + 9)
    rate.set(onKnuckle('eyeRear'), strutTopAt)
  }
  if (points.layout === 'strut') {
    rate.set(onKnuckle('strutLower'), 9)
    rate.set(by.body?.['topMount'] ?? zero, bodyAt + 9)
    rate.set(onKnuckle('strutTop'), strutTopAt)
  }
  return rate
}

/** Rate of the spin axis in the knuckle when the rotation vector of `spin` grows by `by` (left Jacobian of the turn). */
function spinRate(m: Mechanism, by: Point | undefined): Point {
  if (!by) return zero
  const now = m.displacement.spin ?? zero
  const angle = norm(now)
  if (angle < 1e-30) return cross(by, m.spin)
  const axis = times(1 / angle, now)
  const s = Math.sin(angle) / angle
  const c = (2 * Math.sin(angle / 2) ** 2) / angle
  const omega = plus(plus(times(s, by), times((1 - s) * dot(axis, by), axis)), times(c, cross(axis, by)))
  return cross(omega, m.spin)
}
