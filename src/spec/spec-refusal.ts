import { Refusal } from '../quantity/index.ts'

/** Why the spec room says no. @source definition */
export type SpecRefusal =
  | 'unknown-jurisdiction'
  | 'needs-diameter'
  | 'out-of-range'
  | 'not-a-number-of-this-rule'
  | 'not-a-vin'
  | 'not-a-tyre'
  | 'unknown-load-index'

/** A refusal of this room, with the code held to its union. */
export const specRefusal = (facts: {
  code: SpecRefusal
  at: string
  given: string
  sentence: string
  remedy: string
}): Refusal<SpecRefusal> => new Refusal(facts)
