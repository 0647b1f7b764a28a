import { formatDecimal } from './format-decimal.ts'
import { fractionText } from './fraction-text.ts'
import type { DecimalStyle, FractionStyle, LengthUnit } from './print-style.ts'
import { inInches, type Metre } from './tags.ts'

const THIRTY_SECONDS = [32]

/**
 * A length for people: to the digits that its spread deserves or to those asked for, or as inches and the
 * nearest fraction ("in fraction", thirty-seconds unless other denominators are given).
 *
 * @param value m
 * @param style unit; spread (m, half-width) or digits, or denominators; sign
 * @returns number and unit, real minus sign, zero without a sign
 * @throws {Refusal} `no-digits`, `bad-spread`, `bad-style`, `not-finite`
 * @source JCGM 100:2008, 7.2.6; own derivation: docs/methods/printing-numbers.md
 * @example formatLength(mm(1.52), { unit: 'mm', spread: mm(0.4) }) // 1.5 mm
 * @example formatLength(inch(0.094), { unit: 'in fraction' }) // 3/32 in
 */
export function formatLength(
  value: Metre,
  style: DecimalStyle<LengthUnit> | FractionStyle<'in fraction'>,
): string {
  if (style.unit !== 'in fraction') return formatDecimal(value, 'length', style).text
  const { denominators = THIRTY_SECONDS, sign } = style as FractionStyle<'in fraction'>
  return `${fractionText(inInches(value), { denominators, sign })} in`
}
