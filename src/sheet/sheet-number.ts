import { interval, type Measured } from '../measure/index.ts'
import { formatMeasured, type KindInUnit } from '../quantity/index.ts'
import type { SheetNumber } from './sheet.ts'

/** Digits where nothing is uncertain: what a person could read off a rule or an angle finder. */
const exactDigits = { angle: 2, length: 1, torque: 1 } as const

/**
 * A measured value for people: its 95 % interval, and text with the digits that the interval deserves.
 *
 * @param sign print a plus before positive values
 * @source own derivation: docs/methods/printing-numbers.md
 */
export function sheetNumber(
  measured: Measured,
  { sign = false, ...kind }: { sign?: boolean } & KindInUnit,
): SheetNumber {
  const { low, high } = interval(measured)
  const halfWidth = (high - low) / 2
  const digits = exactDigits[kind.kind as keyof typeof exactDigits] ?? 1
  const { text, spread } = formatMeasured({ value: measured.value, halfWidth, sign, digits, ...kind })
  return { value: measured.value, low, high, text, spread }
}
