import type { ActsOn, Adjuster } from './adjuster.ts'

/** One adjuster as a direction to search in. */
export interface Axis {
  readonly adjuster: Adjuster
  /** Place of its axle in the problem. */
  readonly axle: number
  /** The wheel it sits at, or both. */
  readonly on: ActsOn
  /** Place among the adjusters of its set. */
  readonly column: number
  /** False when nobody knows the present setting; then the middle stands in for it. */
  readonly known: boolean
  /** Present setting and the stroke it gives. */
  readonly base: number
  readonly baseStroke: number
  /** Strokes at the ends of the range, lower first. */
  readonly low: number
  readonly high: number
  /** First of its inputs among those of the space; an offset sleeve has two, all others one. */
  readonly input: number
}
