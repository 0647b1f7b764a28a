import { Refusal } from '../quantity/index.ts'

/**
 * Why this room says no.
 *
 * - `not-finite` a number is NaN or infinite
 * - `not-positive` a half-width, uncertainty or step below zero, or a count that must be above it
 * - `too-few` fewer values than the computation needs
 * - `size-mismatch` lists or matrices that do not belong together
 * - `source-conflict` one error name with two shapes or degrees of freedom
 * - `bad-limits` no limit at all, or the lower above the upper
 * - `bad-share` a coverage, probability or threshold outside its range
 * - `not-positive-definite` a matrix that is not a covariance, or cannot be solved
 *
 * @source definition
 */
export type MeasureRefusal =
  | 'not-finite'
  | 'not-positive'
  | 'too-few'
  | 'size-mismatch'
  | 'source-conflict'
  | 'bad-limits'
  | 'bad-share'
  | 'not-positive-definite'

/** A refusal of this room, with the code held to its union. */
export const measureRefusal = (
  code: MeasureRefusal,
  at: string,
  given: unknown,
  sentence: string,
  remedy: string,
): Refusal<MeasureRefusal> => new Refusal({ code, at, given: String(given), sentence, remedy })

/** Passes a finite number on. */
export function finite(value: number, at: string): number {
  if (Number.isFinite(value)) return value
  throw measureRefusal(
    'not-finite',
    at,
    value,
    `${at} is ${value}, which is not a number to compute with.`,
    'Type the reading again.',
  )
}

/** Passes a finite number of at least zero on. */
export function notNegative(value: number, at: string): number {
  if (finite(value, at) >= 0) return value
  throw measureRefusal(
    'not-positive',
    at,
    value,
    `${at} is ${value}; an uncertainty cannot be below zero.`,
    'Give it as zero or more.',
  )
}

/** Passes a share strictly between zero and one on. */
export function share(value: number, at: string): number {
  if (value > 0 && value < 1) return value
  throw measureRefusal(
    'bad-share',
    at,
    value,
    `${at} is ${value}; it must lie between 0 and 1.`,
    'Give 0.95 for ninety-five in a hundred.',
  )
}
