import { normalQuantile } from '../measure/index.ts'

/**
 * The interval of a share that was seen in so many of so many: the shares that would not have made this count surprising.
 *
 *     (p + z²/2n ± z √(p(1−p)/n + z²/4n²)) / (1 + z²/n)
 *
 * @param of 0 or more; of none nothing is known: 0 … 1
 * @param probability two-sided, between 0 and 1
 * @source E. B. Wilson: Probable inference, the law of succession, and statistical inference. J. Am. Stat. Assoc. 22 (1927)
 */
export function wilsonInterval(
  count: number,
  of: number,
  probability = 0.95,
): { readonly low: number; readonly high: number } {
  if (of === 0) return { low: 0, high: 1 }
  const z = normalQuantile((1 + probability) / 2)
  const p = count / of
  const middle = p + z ** 2 / (2 * of)
  const reach = z * Math.sqrt((p * (1 - p)) / of + z ** 2 / (4 * of ** 2))
  const whole = 1 + z ** 2 / of
  return {
    low: count === 0 ? 0 : Math.max(0, (middle - reach) / whole),
    high: count === of ? 1 : Math.min(1, (middle + reach) / whole),
  }
}
