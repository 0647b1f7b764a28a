import { angleOnCircle } from './angle-on-circle.ts'
import type { Point } from './points.ts'
import { noTurn, type Quaternion, turnAbout, turnAfter, turnBack, turnedBy } from './quaternion.ts'
import type { SolidAxle } from './solid-axle.ts'
import { solveLinear } from './solve-linear.ts'
import { cross, dot, minus, norm, plus, times } from './vector.ts'

/** Where an axle is: its middle between the hubs, and its turn from the design attitude. */
export interface AxlePlace {
  readonly middle: Point
  readonly turn: Quaternion
}

/** Where a point given in the axle's design position stands in the body. */
export const inBody = (a: SolidAxle, { middle, turn }: AxlePlace, point: Point): Point =>
  plus(middle, turnedBy(turn, minus(point, a.middle)))
/** Where a point of the body stands in the axle's design position. */
export const inAxle = (a: SolidAxle, { middle, turn }: AxlePlace, point: Point): Point =>
  plus(a.middle, turnedBy(turnBack(turn), minus(point, middle)))

/**
 * The axle on leaf springs: turned about its roll axis until the line of its hubs has the tilt, then lifted straight
 * up until its middle has the height. Null when the line cannot be tilted so far.
 *
 * @source own derivation: docs/methods/solid-axle.md
 */
export function onLeaves(a: SolidAxle, heave: number, roll: number): AxlePlace | null {
  const { through, axis } = a.leaf!
  const e = a.hubLine
  const level = dot(e, axis) * axis[2]
  const angle =
    roll === 0 ? 0 : angleOnCircle(e[2] - level, cross(axis, e)[2], Math.sin(a.tilt + roll) - level, true)
  if (angle === null) return null
  const turn = roll === 0 ? noTurn : turnAbout(axis, angle)
  const middle = plus(through, turnedBy(turn, minus(a.middle, through)))
  return { middle: [middle[0], middle[1], a.middle[2] + heave], turn }
}

/** Room of one evaluation of an axle on links. */
export interface LinkRows {
  /** Errors: four links, height, sine of the tilt; m, m, 1. */
  readonly error: Float64Array
  /** 6 × 6 against velocity and angular velocity. */
  readonly jacobian: Float64Array
}

/** Errors and Jacobian of an axle on links: (|d|² − L²) / 2L each, height of the middle, z of the hubs' line. */
export function linkRows(a: SolidAxle, place: AxlePlace, heave: number, roll: number): LinkRows {
  const error = new Float64Array(6)
  const jacobian = new Float64Array(36)
  for (const [i, { inner, outer, length }] of a.links.entries()) {
    const r = turnedBy(place.turn, minus(outer, a.middle))
    const d = minus(plus(place.middle, r), inner)
    const now = norm(d)
    error[i] = ((now - length) * (now + length)) / (2 * length)
    const u = times(1 / length, d)
    jacobian.set([...u, ...cross(r, u)], 6 * i)
  }
  const e = turnedBy(place.turn, a.hubLine)
  error[4] = place.middle[2] - a.middle[2] - heave
  jacobian[26] = 1
  error[5] = e[2] - Math.sin(a.tilt + roll)
  jacobian.set([e[1], -e[0]], 33)
  return { error, jacobian }
}

/** A place moved by a small velocity and turn. */
export function movedPlace({ middle, turn }: AxlePlace, by: Float64Array, share = 1): AxlePlace {
  const w: Point = [share * by[3]!, share * by[4]!, share * by[5]!]
  const angle = norm(w)
  const half: Quaternion = angle < 1e-30 ? noTurn : turnAbout(times(1 / angle, w), angle)
  return {
    middle: plus(middle, [share * by[0]!, share * by[1]!, share * by[2]!]),
    turn: turnAfter(half, turn),
  }
}

/** How far one Newton run may lead: parts of the axle's size. */
const longest = 0.1

/**
 * The axle on four links near a place: Newton. Null when it does not settle, has to jump, or comes to another
 * assembly (sign of the determinant).
 *
 * @source own derivation: docs/methods/solid-axle.md
 */
export function onLinks(a: SolidAxle, heave: number, roll: number, near: AxlePlace): AxlePlace | null {
  let place = near
  let before = longest * a.size
  for (let turn = 0; turn < 12; turn++) {
    const { error, jacobian } = linkRows(a, place, heave, roll)
    const step = error.map((x) => -x)
    const determinant = solveLinear(Float64Array.from(jacobian), step, 6)
    if (determinant * a.sign <= 0) return null
    const far = Math.hypot(step[0]!, step[1]!, step[2]!) + a.size * Math.hypot(step[3]!, step[4]!, step[5]!)
    if (!(far < before || far < 1e-12 * a.size)) return null
    place = movedPlace(place, step)
    if (far < 1e-9 * a.size) return place
    before = 0.7 * far
  }
  return null
}
