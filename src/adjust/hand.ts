import type { Looks } from './adjuster.ts'

/** A change of setting in the words of a hand. @source definition */
export interface Hand {
  /** "34° clockwise", "5/12 turn longer", "add 1 mm + 0.5 mm shims", "1.5 mm out", "fit a 0.5° wedge" */
  readonly amount: string
  /** "from 10 to 11 o'clock", "turn the rod clockwise: its top goes to the rear" */
  readonly how: string
  /** "seen from the front"; empty where it does not matter. */
  readonly seenFrom: string
  /** Clock angle of the mark of an eccentric or an offset sleeve before and after, rad clockwise from 12 o'clock; null for others. */
  readonly dial: { readonly from: number; readonly to: number } | null
  /** Which way it is turned, seen from `seenFrom`; null when nothing is turned. */
  readonly looks: Looks | null
  /** "within 10° of its end" and the like; empty when there is none. */
  readonly warning: string
}

/**
 * A change of setting, in the adjuster's own unit; `known` false when only the amount is sure.
 *
 * @source definition
 */
export interface Turning {
  readonly from: number
  readonly to: number
  readonly known?: boolean
}

/** A change in words, without its warning. */
export type HandWords = Omit<Hand, 'warning'>
