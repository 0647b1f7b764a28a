import { mirrorPoint } from './mirror-point.ts'
import type { Point } from './points.ts'
import { leastTurn, noTurn, type Quaternion, turnAbout, turnAfter, turnedBy } from './quaternion.ts'
import type { AxleSettings, SolidAxlePoints } from './solid-axle-points.ts'
import { dot, minus, plus, times, unit } from './vector.ts'
import type { Side } from './wheel-angles.ts'

/** A knuckle on its axle, in the axle's design position. */
export interface AxleKnuckle {
  readonly side: Side
  /** Foot and unit direction (upward) of the kingpin axis, tilted; null where the wheel is not steered. */
  readonly pin: { readonly lower: Point; readonly k: Point } | null
  /** The turn that the tilt of the pin gives the knuckle about the pin's lower end. */
  readonly seat: Quaternion
  /** Unit, outward, before it is seated. */
  readonly spin: Point
}

/** Direction of a left kingpin from its caster and SAI (projections), upward. */
const pinOf = (caster: number, sai: number): Point => unit([-Math.tan(caster), -Math.tan(sai), 1])

/** A knuckle as set: sleeves tilt its pin, shims its wheel. */
export function axleKnuckle(points: SolidAxlePoints, by: AxleSettings, side: Side): AxleKnuckle {
  const wheel = points[side]
  const shim = by.shim?.[side]
  const camber = wheel.camber + (shim?.camber ?? 0)
  const toe = wheel.toe + (shim?.toe ?? 0)
  const mirrored = (p: Point): Point => (side === 'left' ? p : mirrorPoint(p))
  const spin = mirrored([
    Math.cos(camber) * Math.sin(toe),
    Math.cos(camber) * Math.cos(toe),
    -Math.sin(camber),
  ])
  if (!wheel.kingpin) return { side, pin: null, seat: noTurn, spin }
  const { lower, upper } = wheel.kingpin
  const design = unit(minus(upper, lower))
  const tilt = by.tilt?.[side]
  if (!tilt || (tilt.camber === 0 && tilt.caster === 0))
    return { side, pin: { lower, k: design }, seat: noTurn, spin }
  const [x, y, z] = mirrored(design)
  const k = mirrored(pinOf(Math.atan2(-x, z) + tilt.caster, Math.atan2(-y, z) - tilt.camber))
  return { side, pin: { lower, k }, seat: leastTurn(design, k), spin }
}

/** The turn of a knuckle against its axle's design attitude when it is steered by an angle about its pin. */
export const knuckleTurn = ({ pin, seat }: AxleKnuckle, steer: number): Quaternion =>
  pin ? turnAfter(turnAbout(pin.k, steer), seat) : seat

/** Where a point of the knuckle stands on the axle when it is steered. */
export const onKnuckle = (knuckle: AxleKnuckle, steer: number, point: Point): Point =>
  knuckle.pin
    ? plus(knuckle.pin.lower, turnedBy(knuckleTurn(knuckle, steer), minus(point, knuckle.pin.lower)))
    : point

/** Numbers of a rod that holds a knuckle: w · Rot(steer) b = level + p cos steer + q sin steer. */
export interface RodOnPin {
  readonly p: number
  readonly q: number
  /** What p cos + q sin has to be. */
  readonly value: number
  /** Lengths that the rod could have at the two dead centres, m. */
  readonly shortest: number
  readonly longest: number
}

/**
 * A rod of a length from a point `end` (in the axle's design position) to a knuckle point: the point goes round the
 * pin, the rod holds it on a sphere.
 *
 *     w · Rot(steer) b = (|b|² + |w|² − L²) / 2,   b seated point, w end, both against the pin's foot
 */
export function rodOnPin(knuckle: AxleKnuckle, outer: Point, end: Point, length: number): RodOnPin {
  const { lower, k } = knuckle.pin!
  const b = turnedBy(knuckle.seat, minus(outer, lower))
  const w = minus(end, lower)
  const level = dot(w, k) * dot(b, k)
  const p = dot(w, b) - level
  const q = dot(w, [k[1] * b[2] - k[2] * b[1], k[2] * b[0] - k[0] * b[2], k[0] * b[1] - k[1] * b[0]])
  const sum = dot(b, b) + dot(w, w)
  const reach = Math.hypot(p, q)
  return {
    p,
    q,
    value: (sum - length * length) / 2 - level,
    shortest: Math.sqrt(Math.max(0, sum - 2 * (level + reach))),
    longest: Math.sqrt(sum - 2 * (level - reach)),
  }
}

/** Middle of the two hubs at design: the axle's own origin. */
export const middleOf = ({ left, right }: SolidAxlePoints): Point =>
  times(0.5, plus(left.wheelCentre, right.wheelCentre))
