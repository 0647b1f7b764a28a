import type { FindingsSheet } from '../../sheet/index.ts'
import type { Edit, Plain, Units } from './messages.ts'

/** What the page asks about a job's findings. */
export interface FindingsAsk {
  readonly turn: number
  readonly job: string
  /** Of the log, as its row has it. */
  readonly version: string
  readonly edits: readonly Edit[]
  readonly units: Units
  /** Number of the round; null for the first that was read. */
  readonly round: number | null
}

/** What comes back. */
export interface FindingsAnswer {
  readonly turn: number
  readonly sheet: FindingsSheet | null
  /** How long the ranking took, ms. */
  readonly took: number
  readonly trouble: Plain | null
}
