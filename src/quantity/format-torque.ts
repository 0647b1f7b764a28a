import { formatDecimal } from './format-decimal.ts'
import type { DecimalStyle, TorqueUnit } from './print-style.ts'
import type { NewtonMetre } from './tags.ts'

/**
 * A torque for people, to the digits that its spread deserves or to those asked for.
 *
 * @param value N·m
 * @param style unit; spread (N·m, half-width) or digits; sign
 * @returns number and unit, real minus sign, zero without a sign
 * @throws {Refusal} `no-digits`, `bad-spread`, `bad-style`, `not-finite`
 * @source JCGM 100:2008, 7.2.6; own derivation: docs/methods/printing-numbers.md
 * @example formatTorque(Nm(190), { unit: 'N·m', digits: 0 }) // 190 N·m
 */
export function formatTorque(value: NewtonMetre, style: DecimalStyle<TorqueUnit>): string {
  return formatDecimal(value, 'torque', style).text
}
