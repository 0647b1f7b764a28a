import { type ReadOptions, readQuantity } from './read-quantity.ts'
import { type Metre, metre } from './tags.ts'

/**
 * A distance driven: km, mi, m. "125.000 km" has two readings and is refused.
 *
 * @param text number and unit; never a bare number
 * @returns m, not below zero
 * @throws {Refusal} `empty`, `not-a-number`, `ambiguous-number`, `no-unit`, `unknown-unit`, `wrong-kind`, `out-of-range`
 * @source NIST SP 811 (2008), B.8; which spellings: common practice, no source
 * @example parseDistance('80 km') // 80000
 * @example parseDistance('1 mi') // 1609.344
 */
export function parseDistance(text: string, options: ReadOptions = {}): Metre {
  return metre(readQuantity(text, 'distance', options))
}
