/**
 * A probability for people: whole percent, never surer than drawing can be.
 *
 * @param probability 0 … 1
 * @source own derivation: docs/methods/printing-numbers.md
 * @example formatChance(0.924) // 92 %
 * @example formatChance(0.997) // more than 99 %
 */
export function formatChance(probability: number): string {
  if (probability > 0.99) return 'more than 99 %'
  if (probability < 0.01) return 'less than 1 %'
  return `${Math.round(probability * 100)} %`
}
