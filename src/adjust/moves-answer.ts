import type { AxleEnd, ReadingName } from '../linkage/index.ts'
import type { Measured } from '../measure/index.ts'
import type { ActsOn, Adjuster } from './adjuster.ts'
import type { Hand } from './hand.ts'
import type { Job } from './job-of.ts'
import type { OutOfReach } from './out-of-reach.ts'

/** One thing the hand does. @source definition */
export interface Move {
  /** 1 for the first. */
  readonly order: number
  readonly end: AxleEnd
  /** The wheel it sits at, or both for what acts on both wheels of the axle. */
  readonly side: ActsOn
  readonly adjuster: Adjuster
  readonly job: Job
  /** Setting now and setting to make, in the adjuster's own unit; `known` false: only their difference counts. */
  readonly from: number
  readonly to: number
  readonly known: boolean
  readonly hand: Hand
  /** What must be done before it, each time; empty where nothing. */
  readonly before: string
}

/** What is foreseen of one reading. @source definition */
export interface Foreseen {
  readonly name: ReadingName
  readonly now: Measured
  /** After all moves: reading errors as now, plus play, step and response of what is touched. */
  readonly after: Measured
  /** Value after each move in turn, rad. */
  readonly path: readonly number[]
  /** Probability to be inside its own limit; null where it has none. */
  readonly insideNow: number | null
  readonly insideAfter: number | null
}

/**
 * Where the steering wheel stands when the vehicle runs straight: both front wheels then share their toe about the
 * thrust line. Rad, to the left positive.
 * @source definition
 */
export interface SteeringWheel {
  readonly now: Measured
  readonly after: Measured
  /** Probability to be inside its limit; null where it has none. */
  readonly insideNow: number | null
  readonly insideAfter: number | null
}

/** An adjuster that could help, if it were known how it is fitted now. @source definition */
export interface ToReadFirst {
  readonly end: AxleEnd
  readonly side: ActsOn
  readonly adjuster: Adjuster
}

/** Moves and what is to be expected of them. @source definition */
export interface Moves {
  readonly moves: readonly Move[]
  readonly foreseen: readonly Foreseen[]
  /** Probability that every reading with a limit is inside, all at once. */
  readonly insideNow: number
  readonly insideAfter: number
  /** The same for those readings only that adjusters can bring inside: what the moves are chosen by. */
  readonly reachableNow: number
  readonly reachableAfter: number
  /** Null where its ratio was not given, or toe of all four wheels was not read. */
  readonly steeringWheel: SteeringWheel | null
  readonly outOfReach: readonly OutOfReach[]
  /** Limits whose reading is missing. */
  readonly notRead: readonly ReadingName[]
  /** Sleeves and wedges that nobody has looked at: no move is told for them before. */
  readonly readFirst: readonly ToReadFirst[]
  /** What is done and what comes after, in a sentence. */
  readonly sentence: string
}
