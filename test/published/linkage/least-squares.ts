import { levenbergMarquardt } from 'ml-levenberg-marquardt'
import type { Point } from '../../../src/linkage/index.ts'

// A general-purpose fitter as a judge: it is given distances and places, and knows nothing of axles.

/** a − b. */
export const minus = (a: Point, b: Point): Point => [a[0] - b[0], a[1] - b[1], a[2] - b[2]]
/** a + b. */
export const plus = (a: Point, b: Point): Point => [a[0] + b[0], a[1] + b[1], a[2] + b[2]]
/** Distance of two points. */
export const distance = (a: Point, b: Point): number => Math.hypot(...minus(a, b))

/** Turned by a rotation vector, by its matrix. */
export function turned(a: Point, by: Point): Point {
  const angle = Math.hypot(...by)
  if (angle === 0) return a
  const [x, y, z] = by.map((e) => e / angle) as unknown as Point
  const [c, s] = [Math.cos(angle), Math.sin(angle)]
  const d = (1 - c) * (x * a[0] + y * a[1] + z * a[2])
  return [
    c * a[0] + s * (y * a[2] - z * a[1]) + d * x,
    c * a[1] + s * (z * a[0] - x * a[2]) + d * y,
    c * a[2] + s * (x * a[1] - y * a[0]) + d * z,
  ]
}

/** Spin axis of a wheel, outward; `outward` is 1 on the left, −1 on the right. */
export const spinOf = (camber: number, toe: number, outward: 1 | -1): Point => [
  Math.cos(camber) * Math.sin(toe),
  outward * Math.cos(camber) * Math.cos(toe),
  -Math.sin(camber),
]
/** Camber of a spin axis, rad. */
export const camberOf = (s: Point): number => -Math.asin(s[2])
/** Toe of a spin axis, rad. */
export const toeOf = (s: Point): number => Math.atan2(s[0], Math.abs(s[1]))

/** Values that make all errors as small as they can be, from a start. Differences of 1e-6 leave about 1e-9. */
export function byLeastSquares(
  errors: (values: readonly number[]) => readonly number[],
  start: readonly number[],
): number[] {
  const count = errors(start).length
  let values = [...start]
  for (let round = 0; round < 3; round++)
    values = levenbergMarquardt(
      { x: Array.from({ length: count }, (_, i) => i), y: new Array(count).fill(0) },
      (v: number[]) => {
        const e = errors(v)
        return (i: number) => e[i]!
      },
      {
        initialValues: values,
        damping: 1e-6,
        gradientDifference: 1e-6,
        centralDifference: true,
        maxIterations: 60,
        errorTolerance: 1e-30,
        improvementThreshold: 1e-12,
      },
    ).parameterValues
  return values
}
