import { type ReadOptions, readQuantity } from './read-quantity.ts'

/**
 * A percentage as a share of one: "40 %" is 0.4.
 *
 * @param text number and "%"; a bare number is refused, since 0.4 and 40 are both written
 * @returns share, 1 = 100 %
 * @throws {Refusal} `empty`, `not-a-number`, `ambiguous-number`, `no-unit`, `unknown-unit`, `wrong-kind`, `out-of-range`
 * @source definition (ISO 80000-1:2009, 7.4.2 note on the symbol %)
 * @example parsePercent('40 %') // 0.4
 */
export function parsePercent(text: string, options: ReadOptions = {}): number {
  return readQuantity(text, 'share', options)
}
