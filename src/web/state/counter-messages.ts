import type { ArrivalSheet, HandoverSheet } from '../../sheet/index.ts'
import type { Edit, Plain, Units } from './messages.ts'

/** The two sheets of the counter, where a vehicle comes in and goes out. */
export interface CounterSheets {
  readonly arrival: ArrivalSheet
  readonly handover: HandoverSheet
}

/** What the page asks about a vehicle's coming in and going out. */
export interface CounterAsk {
  readonly turn: number
  readonly which: keyof CounterSheets
  readonly job: string
  /** Of the log, as its row has it. */
  readonly version: string
  readonly edits: readonly Edit[]
  readonly units: Units
  /** Whose clock the times are told by: "+01:00". */
  readonly offset: string
  /** The day on which the work goes on. */
  readonly today: string
}

/** What comes back. */
export interface CounterAnswer {
  readonly turn: number
  readonly sheet: CounterSheets[keyof CounterSheets] | null
  readonly trouble: Plain | null
}
