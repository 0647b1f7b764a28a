import type {
  AnyCornerPoints,
  AxleDrive,
  AxleEnd,
  Drive,
  ReadingName,
  SolidAxlePoints,
  TwistBeam,
} from '../linkage/index.ts'
import type { Measured } from '../measure/index.ts'
import type { Adjuster } from './adjuster.ts'
import type { FaultKind } from './fault-kinds.ts'
import type { LearnedResponse } from './learned-response.ts'

/** Adjusters and where they stand. @source definition */
export interface AdjusterSet {
  readonly adjusters: readonly Adjuster[]
  /** Present setting by adjuster id, in the adjuster's own unit; null or absent when nobody knows. */
  readonly settings: Readonly<Record<string, number | null>>
}

/** One wheel as the moves see it, drawn as a LEFT corner. @source definition */
export interface WheelSetup extends AdjusterSet {
  readonly points: AnyCornerPoints
  /** Where it stood when it was read: travel from the design height, rack as the left-drawn corner sees it. */
  readonly drive: Drive
  /** What recorded moves have taught about this corner; without it the points are taken as true. */
  readonly response?: LearnedResponse
}

/** Both wheels of an axle whose wheels hang by themselves. @source definition */
export interface CornersSetup {
  readonly end: AxleEnd
  readonly left: WheelSetup
  readonly right: WheelSetup
  /** What acts on both wheels: a sub-frame that can be shifted. */
  readonly both?: AdjusterSet
}

/** An axle that is one body (or one beam), with both wheels; its points are in vehicle axes. @source definition */
export interface WholeAxleSetup {
  readonly end: AxleEnd
  readonly axle: SolidAxlePoints | TwistBeam
  /** Where it stood when it was read; of a beam heave and roll count. */
  readonly drive: AxleDrive
  /** What sits at one wheel: offset sleeves, wedges. */
  readonly left: AdjusterSet
  readonly right: AdjusterSet
  /** What acts on both wheels: threads of tie rod, drag link or locating links. */
  readonly both?: AdjusterSet
}

/** Both wheels of one axle: `'axle' in setup` says which kind. @source definition */
export type AxleSetup = CornersSetup | WholeAxleSetup

/** A reading's limits, rad. @source definition */
export interface Limit {
  readonly low: number
  readonly high: number
  /** Default: the middle. */
  readonly preferred?: number
}

/** The steering wheel while front toe was read. @source definition */
export interface SteeringHeld {
  /** Turn of the steering wheel per turn of the road wheels, > 0. */
  readonly ratio: number
  /** Where it was held, rad, to the left positive. Default: straight, exactly. */
  readonly held?: Measured
  /** Where it may stand when the vehicle runs straight, rad; then moves centre it too. */
  readonly limit?: Limit
}

/** What the moves are found from. @source definition */
export interface MovesProblem {
  /** The axles that can be adjusted; readings of others still count. */
  readonly axles: readonly AxleSetup[]
  /** Readings of any wheel; errors shared between them carry the same source. */
  readonly readings: Readonly<Partial<Record<ReadingName, Measured>>>
  readonly limits: Readonly<Partial<Record<ReadingName, Limit>>>
  /** How the steering wheel stood while front toe was read; without it nothing is said of where it will stand. */
  readonly steering?: SteeringHeld
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
