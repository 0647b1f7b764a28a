import { normalQuantile, standardUncertainty } from '../measure/index.ts'
import type { ReadingRow } from './reading-rows.ts'

/** What the search wants of one row; a row without one is only watched. */
export interface Aim {
  /** Preferred value, rad. */
  readonly target: number
  readonly middle: number
  readonly half: number
  /** How far from the middle it may lie and still be inside in spite of its spread; 0 when the spread fills the limits. */
  readonly safe: number
}

/**
 * Aims from limits: half-widths less a guard band, so wide that m readings are inside together about as
 * surely as the threshold asks (the chance to be outside is shared out among them).
 *
 *     guard = z(1 − (1 − threshold)/m) · u
 *
 * @source ISO 14253-1 (guard band); sharing out: Bonferroni's inequality
 */
export function aimsOf(rows: readonly ReadingRow[], threshold: number): (Aim | null)[] {
  const limited = rows.filter((row) => row.limit).length
  const z = normalQuantile(1 - (1 - threshold) / Math.max(1, limited))
  return rows.map((row) => {
    if (!row.limit) return null
    const { low, high, preferred } = row.limit
    const half = (high - low) / 2
    const spread = standardUncertainty(row.now)
    return {
      target: preferred,
      middle: (low + high) / 2,
      half,
      safe: Math.max(0, half - z * spread),
    }
  })
}
