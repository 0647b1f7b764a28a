import type { WheelAngle } from '../linkage/index.ts'

/**
 * What recorded moves have taught about one corner: a correction, added to the slopes that its points give,
 * with its covariance. Two wheels whose responses carry the same source share the same error (both sides of
 * one vehicle, drawn once).
 * @source definition
 */
export interface LearnedResponse {
  readonly source: string
  /** Ids, in the order of the columns. */
  readonly adjusters: readonly string[]
  /** In the order of the rows. */
  readonly angles: readonly WheelAngle[]
  /** Correction of the slope, rad of angle per m of stroke, [angle · adjusters + adjuster]. */
  readonly mean: readonly number[]
  /** Its covariance, (rad/m)², [first · count + second] with the same order of first and second. */
  readonly covariance: readonly number[]
  /** How many moves it has seen. */
  readonly moves: number
}
