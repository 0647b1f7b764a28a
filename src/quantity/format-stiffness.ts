import { formatDecimal } from './format-decimal.ts'
import type { DecimalStyle, StiffnessUnit } from './print-style.ts'
import { inDegrees, type NewtonMetrePerRadian } from './tags.ts'

/**
 * Stiffness of a bush in torsion for people, to the digits that its spread deserves or to those asked for.
 *
 * @param value N·m/rad
 * @param style unit; spread (N·m/rad, half-width) or digits
 * @returns number and unit
 * @throws {Refusal} `no-digits`, `bad-spread`, `bad-style`, `not-finite`
 * @source JCGM 100:2008, 7.2.6; own derivation: docs/methods/printing-numbers.md
 * @example formatStiffness(NmPerRad(108.862), { unit: 'N·m/°', digits: 1 }) // 1.9 N·m/°
 */
export function formatStiffness(
  value: NewtonMetrePerRadian,
  { unit, spread, ...style }: DecimalStyle<StiffnessUnit>,
): string {
  const [torque = '', angle = ''] = unit.split('/')
  const perAngle = (stiffness: number) => (angle === 'rad' ? stiffness : stiffness / inDegrees(1))
  const given = spread === undefined ? {} : { spread: perAngle(spread) }
  return `${formatDecimal(perAngle(value), 'torque', { ...style, ...given, unit: torque }).text}/${angle}`
}
