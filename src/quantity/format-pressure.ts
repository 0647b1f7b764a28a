import { formatDecimal } from './format-decimal.ts'
import type { DecimalStyle, PressureUnit } from './print-style.ts'
import type { Pascal } from './tags.ts'

/**
 * A pressure for people, to the digits that its spread deserves or to those asked for.
 *
 * @param value Pa
 * @param style unit; spread (Pa, half-width) or digits; sign
 * @returns number and unit, real minus sign, zero without a sign
 * @throws {Refusal} `no-digits`, `bad-spread`, `bad-style`, `not-finite`
 * @source JCGM 100:2008, 7.2.6; own derivation: docs/methods/printing-numbers.md
 * @example formatPressure(pascal(240000), { unit: 'bar', digits: 1 }) // 2.4 bar
 */
export function formatPressure(value: Pascal, style: DecimalStyle<PressureUnit>): string {
  return formatDecimal(value, 'pressure', style).text
}
