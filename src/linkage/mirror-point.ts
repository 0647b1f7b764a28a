import type { Point } from './points.ts'

/**
 * A point, or a shift, on the other side of the vehicle: y changes its sign. A right corner is given by the
 * mirror images of its points and is computed as a left one.
 *
 * @source definition (ISO 8855 axes)
 * @example mirrorPoint([0.1, -0.7, 0.2]) // [0.1, 0.7, 0.2]
 */
export const mirrorPoint = ([x, y, z]: Point): Point => [x, -y, z]
