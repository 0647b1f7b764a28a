import { Refusal, type RefusalFacts } from '../quantity/index.ts'

/**
 * Why this room says no.
 *
 * - `not-finite`, `not-positive`, `bad-range`, `bad-date` a number or date that cannot be meant
 * - `unknown-thread`, `ambiguous-thread`, `unknown-strength` a designation that names none, or more than one
 * - `above-proof` the value would pass the proof load of this thread
 * - `no-lever`, `outside-range`, `no-mark`, `not-calibrated`, `wrong-setting` the wrench cannot give it
 * - `bad-count`, `bad-stages` a circle or stages that cannot be
 * - `wrong-joint` a rule of one kind of joint asked of another
 * - `never-back`, `past-slot`, `click-means-stop`, `old-pin`, `hub-not-turned`, `end-float` rules of a nut with a pin
 * - `wrong-position`, `used-before`, `wrench-to-undo`, `out-of-order`, `wrong-angle` steps that may not be taken now
 *
 * @source definition
 */
export type FastenRefusal =
  | 'not-finite'
  | 'not-positive'
  | 'bad-range'
  | 'bad-date'
  | 'unknown-thread'
  | 'ambiguous-thread'
  | 'unknown-strength'
  | 'above-proof'
  | 'no-lever'
  | 'outside-range'
  | 'no-mark'
  | 'not-calibrated'
  | 'wrong-setting'
  | 'bad-count'
  | 'bad-stages'
  | 'wrong-joint'
  | 'never-back'
  | 'past-slot'
  | 'click-means-stop'
  | 'old-pin'
  | 'hub-not-turned'
  | 'end-float'
  | 'wrong-position'
  | 'used-before'
  | 'wrench-to-undo'
  | 'out-of-order'
  | 'wrong-angle'

/** A refusal of this room, with the code held to its union. */
export const fastenRefusal = (facts: RefusalFacts<FastenRefusal>): Refusal<FastenRefusal> =>
  new Refusal(facts)

/** Passes a finite number on. */
export function finite(value: number, at: string): number {
  if (Number.isFinite(value)) return value
  throw fastenRefusal({
    code: 'not-finite',
    at,
    given: String(value),
    sentence: `${at} is ${value}, which is not a number to compute with.`,
    remedy: 'Type it again.',
  })
}

/** Passes a finite number above zero on. */
export function positive(value: number, at: string): number {
  if (finite(value, at) > 0) return value
  throw fastenRefusal({
    code: 'not-positive',
    at,
    given: String(value),
    sentence: `${at} is ${value}; it must be above zero.`,
    remedy: 'Type it again, above zero.',
  })
}

/** Passes a finite number of at least zero on. */
export function notNegative(value: number, at: string): number {
  if (finite(value, at) >= 0) return value
  throw fastenRefusal({
    code: 'not-positive',
    at,
    given: String(value),
    sentence: `${at} is ${value}; it cannot be below zero.`,
    remedy: 'Type it again, zero or more.',
  })
}

/** Holds low ≤ high, both finite and at least zero. */
export function inOrder({ low, high }: { readonly low: number; readonly high: number }, at: string): void {
  notNegative(low, `${at} low`)
  notNegative(high, `${at} high`)
  if (low <= high) return
  throw fastenRefusal({
    code: 'bad-range',
    at,
    given: `${low} … ${high}`,
    sentence: `${at} goes from ${low} up to ${high}: the low end stands above the high end.`,
    remedy: 'Type both ends again, low first.',
  })
}
