import { formatDecimal } from './format-decimal.ts'
import type { DecimalStyle, ForceUnit } from './print-style.ts'
import type { Newton } from './tags.ts'

/**
 * A force for people, to the digits that its spread deserves or to those asked for.
 *
 * @param value N
 * @param style unit; spread (N, half-width) or digits; sign
 * @returns number and unit, real minus sign, zero without a sign
 * @throws {Refusal} `no-digits`, `bad-spread`, `bad-style`, `not-finite`
 * @source JCGM 100:2008, 7.2.6; own derivation: docs/methods/printing-numbers.md
 * @example formatForce(newton(33700), { unit: 'kN', digits: 1 }) // 33.7 kN
 */
export function formatForce(value: Newton, style: DecimalStyle<ForceUnit>): string {
  return formatDecimal(value, 'force', style).text
}
