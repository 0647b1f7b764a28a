import type { Measured } from '../../measure/index.ts'
import type { CornerAt } from './corner-at.ts'
import type { Seen } from './seen-lazily.ts'

/**
 * Something about a corner that can be measured or asked: how it follows from the unknowns, and how it changes with
 * each of them.
 *
 * @source definition
 */
export interface Observable {
  /** As a person says it: "upper front pivot to upper outer". */
  readonly says: string
  readonly unit: 'm' | 'rad'
  readonly at: (corner: CornerAt) => Seen
  /**
   * How far the straight slopes mislead while the unknowns are this uncertain, as a standard uncertainty. Absent where they
   * hardly do.
   */
  readonly bend?: (corner: CornerAt, covariance: readonly (readonly number[])[]) => number
}

/** An observable that was measured. @source definition */
export interface CornerMeasurement {
  readonly of: Observable
  /** m or rad, with its errors; readings that share a zero share its source. */
  readonly read: Measured
}
