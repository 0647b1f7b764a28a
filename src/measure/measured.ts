/**
 * The shape of one independent error; `student` is a mean of repeats with its degrees of freedom.
 *
 * @source definition
 */
export type Shape = 'normal' | 'rectangular' | 'triangular' | 'arcsine' | 'student'

/**
 * What one independent error does to a value. Two parts with the same `source` are the same error.
 *
 * @source definition
 */
export interface Part {
  /** Names the error wherever it appears: "floor, bay 2, front left pad". Same name, same error. */
  readonly source: string
  /** Signed standard uncertainty it puts on the value, in the value's SI unit. */
  readonly effect: number
  readonly shape: Shape
  /** Degrees of freedom; Infinity when it is not from repeats. */
  readonly dof: number
}

/**
 * A value with everything that makes it uncertain. Correlation between two values is carried by the
 * sources they share, so a tape, a floor or a zero common to both wheels counts once.
 *
 * @source definition
 */
export interface Measured {
  /** Estimate, SI. */
  readonly value: number
  readonly parts: readonly Part[]
}
