import type { ArrivalSheet } from '../../sheet/index.ts'
import type { Edit, Plain } from './messages.ts'

/** What the page asks about a vehicle's coming in. */
export interface CounterAsk {
  readonly turn: number
  readonly job: string
  /** Of the log, as its row has it. */
  readonly version: string
  readonly edits: readonly Edit[]
  /** Whose clock the times are told by: "+01:00". */
  readonly offset: string
  /** The day on which the work goes on. */
  readonly today: string
}

/** What comes back. */
export interface CounterAnswer {
  readonly turn: number
  readonly sheet: ArrivalSheet | null
  readonly trouble: Plain | null
}
