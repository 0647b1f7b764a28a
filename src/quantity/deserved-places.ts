import { quantityRefusal } from './quantity-refusal.ts'

/** Digits that survive the conversion between units; what is finer is noise of the binary number. */
export const NOISE_FREE = 13

const FIRST_THAT_NEEDS_ONE = 3

/**
 * The decimal place to which a spread, and the value beside it, are printed: two significant digits of the
 * spread when it begins with 1 or 2, else one. Negative: tens, hundreds.
 *
 * @param spread half-width in the unit that is printed, > 0
 * @returns decimals: 2 is hundredths, 0 is ones, −1 is tens
 * @throws {Refusal} `bad-spread` unless the spread is above zero and finite
 * @source JCGM 100:2008, 7.2.6 (at most two significant digits); the 1-or-2 rule: own derivation: docs/methods/printing-numbers.md
 * @example deservedPlaces(0.12) // 2
 * @example deservedPlaces(0.34) // 1
 */
export function deservedPlaces(spread: number): number {
  if (!(spread > 0 && Number.isFinite(spread)))
    throw quantityRefusal({
      code: 'bad-spread',
      at: 'spread',
      given: String(spread),
      sentence: `A spread of ${spread} says nothing about the digits.`,
      remedy: 'Give a spread above zero, or say how many digits are wanted.',
    })
  const [mantissa, exponent] = spread
    .toExponential(NOISE_FREE - 1)
    .split('e')
    .map(Number) as [number, number]
  return (mantissa < FIRST_THAT_NEEDS_ONE ? 1 : 0) - exponent
}
