import { type ReadOptions, readQuantity } from './read-quantity.ts'
import { type Radian, rad } from './tags.ts'

/**
 * An angle: decimal degrees, 0°15', 12°06'36", minutes alone; `'` is minutes. The sign stands for the whole.
 *
 * @param text number and unit; never a bare number
 * @returns rad
 * @throws {Refusal} `empty`, `not-a-number`, `ambiguous-number`, `no-unit`, `unknown-unit`, `wrong-kind`, `out-of-range`
 * @source NIST SP 811 (2008), B.8; which spellings: common practice, no source
 * @example inDegrees(parseAngle("-0°15'")) // -0.25
 * @example inDegrees(parseAngle('15′')) // 0.25
 */
export function parseAngle(text: string, options: ReadOptions = {}): Radian {
  return rad(readQuantity(text, 'angle', options))
}
