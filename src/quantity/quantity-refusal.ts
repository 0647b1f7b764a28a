import { Refusal } from './refusal.ts'

/**
 * Why a text is not taken for a quantity, or a quantity not printed.
 *
 * @source definition
 */
export type QuantityRefusal =
  | 'empty'
  | 'not-a-number'
  | 'ambiguous-number'
  | 'no-unit'
  | 'unknown-unit'
  | 'wrong-kind'
  | 'out-of-range'
  | 'needs-diameter'
  | 'needs-flats'
  | 'not-finite'
  | 'no-digits'
  | 'bad-spread'
  | 'bad-style'

/** A refusal of this room, with the code held to its union. */
export const quantityRefusal = (facts: {
  code: QuantityRefusal
  at: string
  given: string
  sentence: string
  remedy: string
}): Refusal<QuantityRefusal> => new Refusal(facts)
