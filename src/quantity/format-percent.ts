import { formatDecimal } from './format-decimal.ts'

/**
 * A share of one as a percentage for people.
 *
 * @param share 1 = 100 %
 * @param style spread (share, half-width) or digits behind the point; sign
 * @returns "92 %"
 * @throws {Refusal} `no-digits`, `bad-spread`, `bad-style`, `not-finite`
 * @source JCGM 100:2008, 7.2.6; ISO 80000-1:2009, 7.4.2 (space before %)
 * @example formatPercent(0.923, { digits: 0 }) // 92 %
 */
export function formatPercent(
  share: number,
  style: {
    readonly spread?: number | undefined
    readonly digits?: number | undefined
    readonly sign?: boolean | undefined
  },
): string {
  return formatDecimal(share, 'share', { ...style, unit: '%' }).text
}
