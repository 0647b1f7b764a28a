import type { Point } from './points.ts'

/** a − b. */
export const minus = (a: Point, b: Point): Point => [a[0] - b[0], a[1] - b[1], a[2] - b[2]]
/** a + b. */
export const plus = (a: Point, b: Point): Point => [a[0] + b[0], a[1] + b[1], a[2] + b[2]]
/** k · a. */
export const times = (k: number, a: Point): Point => [k * a[0], k * a[1], k * a[2]]
/** Inner product. */
export const dot = (a: Point, b: Point): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2]
/** Vector product a × b. */
export const cross = (a: Point, b: Point): Point => [
  a[1] * b[2] - a[2] * b[1],
  a[2] * b[0] - a[0] * b[2],
  a[0] * b[1] - a[1] * b[0],
]
/** Length. */
export const norm = (a: Point): number => Math.hypot(a[0], a[1], a[2])
/** a / |a|. */
export const unit = (a: Point): Point => times(1 / norm(a), a)

/** `a` turned by the rotation vector `by` (Rodrigues' formula). */
export function turned(a: Point, by: Point): Point {
  const angle = norm(by)
  // below this the turn is lost in rounding, and 1 / angle may overflow
  if (angle < 1e-30) return a
  const axis = times(1 / angle, by)
  const c = Math.cos(angle)
  return plus(plus(times(c, a), times(Math.sin(angle), cross(axis, a))), times((1 - c) * dot(axis, a), axis))
}
