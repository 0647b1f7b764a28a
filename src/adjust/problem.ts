import type { AxleEnd, CornerPoints, Drive, ReadingName } from '../linkage/index.ts'
import type { Measured } from '../measure/index.ts'
import type { Adjuster } from './adjuster.ts'
import type { FaultKind } from './fault-kinds.ts'
import type { LearnedResponse } from './learned-response.ts'

/** One wheel as the moves see it, drawn as a LEFT corner. @source definition */
export interface WheelSetup {
  readonly points: CornerPoints
  /** Where it stood when it was read: travel from the design height, rack as the left-drawn corner sees it. */
  readonly drive: Drive
  readonly adjusters: readonly Adjuster[]
  /** Present setting by adjuster id, in the adjuster's own unit; null or absent when nobody knows. */
  readonly settings: Readonly<Record<string, number | null>>
  /** What recorded moves have taught about this corner; without it the points are taken as true. */
  readonly response?: LearnedResponse
}

/** Both wheels of one axle. @source definition */
export interface AxleSetup {
  readonly end: AxleEnd
  readonly left: WheelSetup
  readonly right: WheelSetup
}

/** A reading's limits, rad. @source definition */
export interface Limit {
  readonly low: number
  readonly high: number
  /** Default: the middle. */
  readonly preferred?: number
}

/** What the moves are found from. @source definition */
export interface MovesProblem {
  /** The axles that can be adjusted; readings of others still count. */
  readonly axles: readonly AxleSetup[]
  /** Readings of any wheel; errors shared between them carry the same source. */
  readonly readings: Readonly<Partial<Record<ReadingName, Measured>>>
  readonly limits: Readonly<Partial<Record<ReadingName, Limit>>>
  /** Kinds of fault that other evidence speaks against: not named for what is out of reach. */
  readonly unlikely?: readonly FaultKind[]
}

/** How the moves are found. @source definition */
export interface MovesOptions {
  /** Probability that counts as proven. Default 0.95. */
  readonly threshold?: number
  /** Default 1. The same problem and seed give the same moves. */
  readonly seed?: number
  /** Plausible sets of true readings to draw. Default 2000: an observed 95 % is then good to half a percent. */
  readonly draws?: number
}
