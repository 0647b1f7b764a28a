import { type ReadOptions, readQuantity } from './read-quantity.ts'
import { type Newton, newton } from './tags.ts'

/**
 * A force: N, kN, lbf, kgf.
 *
 * @param text number and unit; never a bare number
 * @returns N
 * @throws {Refusal} `empty`, `not-a-number`, `ambiguous-number`, `no-unit`, `unknown-unit`, `wrong-kind`, `out-of-range`
 * @source NIST SP 811 (2008), B.8; which spellings: common practice, no source
 * @example parseForce('1 lbf') // 4.448222
 * @example parseForce('2 kN') // 2000
 */
export function parseForce(text: string, options: ReadOptions = {}): Newton {
  return newton(readQuantity(text, 'force', options))
}
