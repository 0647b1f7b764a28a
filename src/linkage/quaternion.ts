import type { Point } from './points.ts'
import { cross, dot, plus, times } from './vector.ts'

/** A turn: unit quaternion w, x, y, z. */
export type Quaternion = readonly [w: number, x: number, y: number, z: number]

/** No turn. */
export const noTurn: Quaternion = [1, 0, 0, 0]

/** The turn about a unit axis by the right-hand rule. */
export const turnAbout = (axis: Point, angle: number): Quaternion => [
  Math.cos(angle / 2),
  ...times(Math.sin(angle / 2), axis),
]

/** The least turn that takes one unit direction to another; they are not opposite. */
export function leastTurn(from: Point, to: Point): Quaternion {
  const [x, y, z] = cross(from, to)
  return sized([1 + dot(from, to), x, y, z])
}

/** First `b`, then `a`. */
export const turnAfter = ([a, b, c, d]: Quaternion, [e, f, g, h]: Quaternion): Quaternion =>
  sized([
    a * e - b * f - c * g - d * h,
    a * f + b * e + c * h - d * g,
    a * g - b * h + c * e + d * f,
    a * h + b * g - c * f + d * e,
  ])

/** The turn back. */
export const turnBack = ([w, x, y, z]: Quaternion): Quaternion => [w, -x, -y, -z]

/** A point or direction, turned. */
export function turnedBy([w, x, y, z]: Quaternion, a: Point): Point {
  const v: Point = [x, y, z]
  const t = times(2, cross(v, a))
  return plus(plus(a, times(w, t)), cross(v, t))
}

function sized([w, x, y, z]: Quaternion): Quaternion {
  const size = Math.hypot(w, x, y, z)
  return [w / size, x / size, y / size, z / size]
}
