import { Refusal } from '../quantity/index.ts'
import { inBody, linkRows } from './axle-place.ts'
import type { AxlePose } from './axle-pose.ts'
import { axlePoseOf, axleStateAt } from './axle-pose-at.ts'
import { type AxleState, dropEnd, knuckleInBody } from './axle-state.ts'
import { knuckleTurn } from './knuckle-on-axle.ts'
import type { LinkageRefusal } from './linkage-refusal.ts'
import { mirrorPoint } from './mirror-point.ts'
import type { Point } from './points.ts'
import { turnedBy } from './quaternion.ts'
import type { SolidAxle } from './solid-axle.ts'
import type { AxleDrive, KingpinTilt } from './solid-axle-points.ts'
import { solveLinear } from './solve-linear.ts'
import { cross, dot, minus, norm, plus, times, unit } from './vector.ts'
import type { Side } from './wheel-angles.ts'

/** A way to go for an axle: how fast its drive and its settings change. Results are per unit of it. @source definition */
export interface AxleDirection {
  readonly heave?: number
  readonly roll?: number
  readonly drop?: number
  readonly tieRod?: number
  readonly dragLink?: number
  readonly links?: readonly [number, number, number, number]
  readonly tilt?: Partial<Readonly<Record<Side, { readonly camber: number; readonly caster: number }>>>
  readonly shim?: Partial<Readonly<Record<Side, { readonly camber: number; readonly toe: number }>>>
}

/** How fast the angles of an axle's wheels change, rad per unit of the direction. @source definition */
export interface AxleWheelRates {
  readonly camber: number
  readonly toe: number
  /** Null where the wheel is not steered. */
  readonly caster: number | null
  readonly sai: number | null
}

/** Velocity of a body: of its point `at`, and its angular velocity. */
interface Twist {
  readonly at: Point
  readonly v: Point
  readonly w: Point
}
const zero: Point = [0, 0, 0]
const velocity = ({ at, v, w }: Twist, point: Point): Point => plus(v, cross(w, minus(point, at)))

/**
 * Rates of all angles of both wheels at a drive, by the implicit function theorem: axle first, then each knuckle
 * about its pin so that its rod keeps its length.
 *
 *     steer rate = (L·L′ − d·(v_outer − v_inner)) / d·(k × r),   d from the rod's inner to its outer end
 *
 * @throws {Refusal} as `axlePoseAt`; `singular` at the end of a way
 * @source own derivation: docs/methods/solid-axle.md
 * @example axleRates(solidAxle(axlePoints), straight)({ tieRod: 1 }).right.toe // 5.62933 rad/m
 */
export function axleRates(
  a: SolidAxle,
  drive: AxleDrive,
): (direction: AxleDirection) => Readonly<Record<Side, AxleWheelRates>> {
  const state = axleStateAt(a, drive)
  const pose = axlePoseOf(a, drive, state)
  return (direction) => {
    const axle = axleTwist(a, drive, state, direction)
    const seats = {
      left: seatTwist(a, state, 'left', axle, direction),
      right: seatTwist(a, state, 'right', axle, direction),
    }
    const knuckles = steered(a, drive, state, seats, direction)
    const of = (side: Side): AxleWheelRates => ratesOf(a, pose, state, side, axle, knuckles[side], direction)
    return { left: of('left'), right: of('right') }
  }
}

function axleTwist(a: SolidAxle, drive: AxleDrive, { place }: AxleState, by: AxleDirection): Twist {
  const lean = Math.cos(a.tilt + drive.roll) * (by.roll ?? 0)
  if (a.leaf) {
    const { axis, through } = a.leaf
    const e = turnedBy(place.turn, a.hubLine)
    const lift = cross(axis, e)[2]
    if (Math.abs(lift) < 1e-9) throw stuck('location')
    const w = times(lean / lift, axis)
    // the roll axis rises with the axle: its point stays below or above itself
    const [x, y] = cross(w, turnedBy(place.turn, minus(a.middle, through)))
    return { at: place.middle, v: [x, y, by.heave ?? 0], w }
  }
  const { jacobian } = linkRows(a, place, drive.heave, drive.roll)
  // against length: f = (|d|² − L²) / 2L falls by 1 per metre where it is 0
  const x = Float64Array.from([0, 1, 2, 3], (i) => by.links?.[i] ?? 0)
  const right = Float64Array.of(...x, by.heave ?? 0, lean)
  if (solveLinear(jacobian, right, 6) === 0 || !right.every(Number.isFinite)) throw stuck('location')
  return { at: place.middle, v: [right[0]!, right[1]!, right[2]!], w: [right[3]!, right[4]!, right[5]!] }
}

/** A knuckle's twist while its steer angle stays: with the axle, and about the pin's foot as the sleeve tilts it. */
function seatTwist(a: SolidAxle, { place }: AxleState, side: Side, axle: Twist, by: AxleDirection): Twist {
  const { pin } = a[side]
  if (!pin) return axle
  const at = inBody(a, place, pin.lower)
  const tilt = by.tilt?.[side]
  const w = tilt ? cross(pin.k, pinRate(pin.k, tilt, side)) : zero
  return { at, v: velocity(axle, at), w: plus(axle.w, turnedBy(place.turn, w)) }
}

/** How fast a pin's direction changes when its caster grows and its SAI falls; in the axle's design position. */
function pinRate(k: Point, tilt: { camber: number; caster: number } | KingpinTilt, side: Side): Point {
  const [x, y, z] = side === 'left' ? k : mirrorPoint(k)
  // k = n / |n|, n = (−tan caster, −tan sai, 1)
  const n: Point = [x / z, y / z, 1]
  const rate: Point = [-(1 + n[0] ** 2) * tilt.caster, (1 + n[1] ** 2) * tilt.camber, 0]
  const size = norm(n)
  const unitRate = minus(times(1 / size, rate), times(dot(n, rate) / size ** 3, n))
  return side === 'left' ? unitRate : mirrorPoint(unitRate)
}

/** Both knuckles' twists with the steer rates that keep drag link and tie rod at their lengths. */
function steered(
  a: SolidAxle,
  drive: AxleDrive,
  state: AxleState,
  seats: Readonly<Record<Side, Twist>>,
  by: AxleDirection,
): Readonly<Record<Side, Twist>> {
  const { steering } = a.points
  if (!steering || !a.steering) return seats
  const { drags, dragOuter, dropAxis, tieLeft, tieRight } = steering
  const pinned = (
    side: Side,
    outer: Point,
    end: Point,
    endSpeed: Point,
    lengthRate: number,
    at: string,
  ): Twist => {
    const seat = seats[side]
    const k = turnedBy(state.place.turn, a[side].pin!.k)
    const d = minus(outer, end)
    const lever = dot(d, cross(k, minus(outer, seat.at)))
    if (Math.abs(lever) < 1e-9 * norm(d)) throw stuck(at)
    const rate = (norm(d) * lengthRate - dot(d, minus(velocity(seat, outer), endSpeed))) / lever
    return { ...seat, w: plus(seat.w, times(rate, k)) }
  }
  const end = dropEnd(a, drive.drop)
  const armSpeed = times(by.drop ?? 0, cross(unit(minus(dropAxis[1], dropAxis[0])), minus(end, dropAxis[0])))
  const driven = pinned(
    drags,
    knuckleInBody(a, state, drags, dragOuter),
    end,
    armSpeed,
    by.dragLink ?? 0,
    'dragLink',
  )
  const ties = {
    left: knuckleInBody(a, state, 'left', tieLeft),
    right: knuckleInBody(a, state, 'right', tieRight),
  }
  const other: Side = drags === 'left' ? 'right' : 'left'
  const led = pinned(other, ties[other], ties[drags], velocity(driven, ties[drags]), by.tieRod ?? 0, 'tieRod')
  return drags === 'left' ? { left: driven, right: led } : { left: led, right: driven }
}

function ratesOf(
  a: SolidAxle,
  pose: AxlePose,
  state: AxleState,
  side: Side,
  axle: Twist,
  knuckle: Twist,
  by: AxleDirection,
): AxleWheelRates {
  const mirrored = (p: Point): Point => (side === 'left' ? p : mirrorPoint(p))
  const { place } = state
  const wheel = pose[side]
  const s = mirrored(wheel.spinAxis)
  const ds = plus(mirrored(cross(knuckle.w, wheel.spinAxis)), shimRate(a, state, side, by))
  const flat = s[0] ** 2 + s[1] ** 2
  const { pin } = a[side]
  let [caster, sai]: [number | null, number | null] = [null, null]
  if (pin) {
    const inBodyK = turnedBy(place.turn, pin.k)
    const tilt = by.tilt?.[side]
    const own = tilt ? turnedBy(place.turn, pinRate(pin.k, tilt, side)) : zero
    const k = mirrored(inBodyK)
    const dk = mirrored(plus(cross(axle.w, inBodyK), own))
    caster = (k[0] * dk[2] - dk[0] * k[2]) / (k[0] ** 2 + k[2] ** 2)
    sai = (k[1] * dk[2] - dk[1] * k[2]) / (k[1] ** 2 + k[2] ** 2)
  }
  return {
    camber: -ds[2] / Math.sqrt(flat),
    toe: (ds[0] * s[1] - s[0] * ds[1]) / flat,
    caster,
    sai,
  }
}

/** Rate of the spin axis by shims, in the mirror image of a right wheel. */
function shimRate(a: SolidAxle, { place, steer }: AxleState, side: Side, by: AxleDirection): Point {
  const shim = by.shim?.[side]
  if (!shim) return zero
  const own = a[side].spin
  const s0 = side === 'left' ? own : mirrorPoint(own)
  const camber = -Math.asin(s0[2])
  const toe = Math.atan2(s0[0], s0[1])
  const [c, sc, t, st] = [Math.cos(camber), Math.sin(camber), Math.cos(toe), Math.sin(toe)]
  const rate: Point = [
    -sc * st * shim.camber + c * t * shim.toe,
    -sc * t * shim.camber - c * st * shim.toe,
    -c * shim.camber,
  ]
  const onSide = (p: Point): Point => (side === 'left' ? p : mirrorPoint(p))
  return onSide(turnedBy(place.turn, turnedBy(knuckleTurn(a[side], steer[side]), onSide(rate))))
}

const stuck = (at: string): Refusal<LinkageRefusal> =>
  new Refusal<LinkageRefusal>({
    code: 'singular',
    at,
    sentence: 'The axle stands at the end of a way, so nothing can be said about small changes.',
    remedy: 'Ask for a pose further from the end.',
  })
