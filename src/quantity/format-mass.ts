import { formatDecimal } from './format-decimal.ts'
import type { DecimalStyle, MassUnit } from './print-style.ts'
import type { Kilogram } from './tags.ts'

/**
 * A mass for people, to the digits that its spread deserves or to those asked for.
 *
 * @param value kg
 * @param style unit; spread (kg, half-width) or digits; sign
 * @returns number and unit, real minus sign, zero without a sign
 * @throws {Refusal} `no-digits`, `bad-spread`, `bad-style`, `not-finite`
 * @source JCGM 100:2008, 7.2.6; own derivation: docs/methods/printing-numbers.md
 * @example formatMass(kilogram(1500), { unit: 'kg', spread: 40 }) // 1500 kg
 */
export function formatMass(value: Kilogram, style: DecimalStyle<MassUnit>): string {
  return formatDecimal(value, 'mass', style).text
}
