import { formatDecimal } from './format-decimal.ts'
import type { DecimalStyle, DistanceUnit } from './print-style.ts'
import type { Metre } from './tags.ts'

/**
 * A distance for people, to the digits that its spread deserves or to those asked for.
 *
 * @param value m
 * @param style unit; spread (m, half-width) or digits; sign
 * @returns number and unit, real minus sign, zero without a sign
 * @throws {Refusal} `no-digits`, `bad-spread`, `bad-style`, `not-finite`
 * @source JCGM 100:2008, 7.2.6; own derivation: docs/methods/printing-numbers.md
 * @example formatDistance(metre(80000), { unit: 'km', digits: 0 }) // 80 km
 */
export function formatDistance(value: Metre, style: DecimalStyle<DistanceUnit>): string {
  return formatDecimal(value, 'distance', style).text
}
