/** Digits that are kept of a number in a written file: more than any gauge has, fewer than rounding noise. */
const DIGITS = 12

/**
 * A number for a file: twelve significant digits, no exponent, no trailing zeros, never "-0".
 *
 * @source definition
 * @example plainDigits(352.10000000000002) // '352.1'
 */
export function plainDigits(value: number): string {
  if (!Number.isFinite(value)) throw new Error('Only a finite number can be written.')
  if (value === 0) return '0'
  const places = Math.min(30, Math.max(0, DIGITS - 1 - Math.floor(Math.log10(Math.abs(value)))))
  const text = value.toFixed(places)
  return places > 0 ? text.replace(/\.?0+$/, '') : text
}
