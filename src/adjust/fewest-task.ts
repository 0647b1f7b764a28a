import type { Aim } from './aim.ts'
import type { Judge } from './judge.ts'
import type { SearchSpace } from './search-space.ts'

/** What a search for the fewest adjusters needs to know. */
export interface FewestTask {
  readonly space: SearchSpace
  readonly judge: Judge
  readonly aims: readonly (Aim | null)[]
  readonly offsets: Float64Array
  /** Rows that count. */
  readonly judged: readonly number[]
  readonly threshold: number
}
