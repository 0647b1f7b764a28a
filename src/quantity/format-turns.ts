import { formatDecimal } from './format-decimal.ts'
import { fractionText } from './fraction-text.ts'
import type { DecimalStyle, FractionStyle } from './print-style.ts'
import type { Turn } from './tags.ts'

const TWELFTHS = [12]

/**
 * Turns for the hand: the nearest fraction ("turn fraction", twelfths unless other denominators are given)
 * or a decimal to the digits that its spread deserves.
 *
 * @param value turns
 * @param style denominators, or spread (turns, half-width) or digits; sign
 * @returns "5/12 turn", "1 1/2 turns", "0 turns"
 * @throws {Refusal} `no-digits`, `bad-spread`, `bad-style`, `not-finite`
 * @source JCGM 100:2008, 7.2.6; own derivation: docs/methods/printing-numbers.md
 * @example formatTurns(turn(0.4), { unit: 'turn fraction' }) // 5/12 turn
 * @example formatTurns(turn(-1.5), { unit: 'turn fraction' }) // −1 1/2 turns
 */
export function formatTurns(
  value: Turn,
  style: DecimalStyle<'turn'> | FractionStyle<'turn fraction'>,
): string {
  if (style.unit === 'turn') return formatDecimal(value, 'turns', style).text
  const { denominators = TWELFTHS, sign } = style as FractionStyle<'turn fraction'>
  const text = fractionText(value, { denominators, sign })
  const single = /^[−+]?(\d+\/\d+|1)$/.test(text)
  return `${text} ${single ? 'turn' : 'turns'}`
}
