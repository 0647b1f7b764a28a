import { type ReadOptions, readQuantity } from './read-quantity.ts'
import { type Pascal, pascal } from './tags.ts'

/**
 * A pressure: kPa, bar, psi, MPa, ksi, kgf/cm², N/mm², Pa. A tyre's is a gauge pressure, and so it stays.
 *
 * @param text number and unit; never a bare number
 * @returns Pa
 * @throws {Refusal} `empty`, `not-a-number`, `ambiguous-number`, `no-unit`, `unknown-unit`, `wrong-kind`, `out-of-range`
 * @source NIST SP 811 (2008), B.8; which spellings: common practice, no source
 * @example parsePressure('2,4 bar') // 240000
 * @example parsePressure('32 psi') // 220632
 */
export function parsePressure(text: string, options: ReadOptions = {}): Pascal {
  return pascal(readQuantity(text, 'pressure', options))
}
