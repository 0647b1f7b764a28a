/** One limited reading after a set of moves, ready to be judged draw by draw. */
export interface JudgedRow {
  /** Plausible true values now, rad, one per draw. */
  readonly drawn: Float64Array
  /** Change by the moves, rad. */
  readonly change: number
  readonly low: number
  readonly high: number
  /** What else moves it: draws that several rows may share, and the effect on this row per unit of them. */
  readonly noises: readonly { readonly drawn: Float64Array; readonly effect: number }[]
}

/**
 * Probability that all rows are inside at once: the share of the draws for which they are. Rows that are
 * the least sure should come first: the first one outside settles a draw.
 *
 * @returns 0 … 1; 1 for no rows
 * @source JCGM 101:2008, 7 (propagation of distributions by drawing)
 */
export function chanceInside(rows: readonly JudgedRow[], draws: number): number {
  if (rows.length === 0) return 1
  // draws that are still inside everything so far
  let left = draws
  const inside = new Int32Array(draws)
  for (let k = 0; k < draws; k++) inside[k] = k
  for (const { drawn, change, low, high, noises } of rows) {
    let kept = 0
    for (let p = 0; p < left; p++) {
      const k = inside[p]!
      let value = drawn[k]! + change
      for (let n = 0; n < noises.length; n++) value += noises[n]!.effect * noises[n]!.drawn[k]!
      if (value >= low && value <= high) inside[kept++] = k
    }
    left = kept
  }
  return left / draws
}
