import { type ReadOptions, readQuantity } from './read-quantity.ts'
import { type Metre, metre } from './tags.ts'

/**
 * A length as the trade writes it: mm, cm, m, in, ft, thou, µm; fractions; `"` is inches and `'` feet.
 *
 * @param text number and unit; never a bare number
 * @returns m
 * @throws {Refusal} `empty`, `not-a-number`, `ambiguous-number`, `no-unit`, `unknown-unit`, `wrong-kind`, `out-of-range`
 * @source NIST SP 811 (2008), B.8; which spellings: common practice, no source
 * @example parseLength('1 1/4 in') // 0.03175
 * @example parseLength('2,5 mm') // 0.0025
 */
export function parseLength(text: string, options: ReadOptions = {}): Metre {
  return metre(readQuantity(text, 'length', options))
}
