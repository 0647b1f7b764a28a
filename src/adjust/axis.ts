import type { Side } from '../linkage/index.ts'
import type { Adjuster } from './adjuster.ts'

/** One adjuster of one wheel as a direction to search in. */
export interface Axis {
  readonly adjuster: Adjuster
  /** 2 · axle + (0 left, 1 right). */
  readonly wheel: number
  /** Place among the adjusters of its wheel. */
  readonly column: number
  readonly side: Side
  /** False when nobody knows the present setting; then the middle stands in for it. */
  readonly known: boolean
  /** Present setting and the stroke it gives. */
  readonly base: number
  readonly baseStroke: number
  /** Strokes at the ends of the range, lower first. */
  readonly low: number
  readonly high: number
}
