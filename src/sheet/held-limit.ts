import type { WearLimit } from '../kit/index.ts'
import type { Measured } from '../measure/index.ts'
import type { Metre } from '../quantity/index.ts'

/** A limit, and what is held against it; a rule without a number has none. */
export type HeldLimit = Omit<WearLimit, 'limit'> & {
  readonly limit: Metre | null
  /** The play as this limit measures it. */
  readonly of: Measured
}
