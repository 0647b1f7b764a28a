import { formatDecimal } from './format-decimal.ts'
import type { AngleUnit, DecimalStyle } from './print-style.ts'
import type { Radian } from './tags.ts'

/**
 * An angle for people, to the digits that its spread deserves or to those asked for.
 *
 * @param value rad
 * @param style unit; spread (rad, half-width) or digits; sign
 * @returns number and unit, real minus sign, zero without a sign
 * @throws {Refusal} `no-digits`, `bad-spread`, `bad-style`, `not-finite`
 * @source JCGM 100:2008, 7.2.6; own derivation: docs/methods/printing-numbers.md
 * @example formatAngle(deg(-0.9234), { unit: '°', spread: deg(0.12) }) // −0.92°
 * @example formatAngle(deg(-0.25), { unit: '°′', digits: 0 }) // −0°15′
 */
export function formatAngle(value: Radian, style: DecimalStyle<AngleUnit>): string {
  return formatDecimal(value, 'angle', style).text
}
