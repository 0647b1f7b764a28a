/**
 * Minimum of ½ xᵀAx − bᵀx in a box, A symmetric and positive definite: solve for the free ones, walk until an
 * end is met, hold what leans on its end, again.
 *
 * @returns x; exact to rounding, or the best after 3n + 3 walks
 * @source active-set method for a quadratic in a box; own derivation: docs/methods/moves.md
 */
export function boxedMinimum(
  A: readonly Float64Array[],
  b: Float64Array,
  low: readonly number[],
  high: readonly number[],
): Float64Array {
  const n = b.length
  const x = new Float64Array(n)
  for (let p = 0; p < n; p++) x[p] = Math.min(high[p]!, Math.max(low[p]!, 0))
  for (let sweep = 0; sweep < 3 * n + 3; sweep++) {
    const free: number[] = []
    for (let p = 0; p < n; p++) {
      let pull = b[p]!
      for (let q = 0; q < n; q++) pull -= A[p]![q]! * x[q]!
      const atLow = x[p]! <= low[p]! && pull < 0
      const atHigh = x[p]! >= high[p]! && pull > 0
      if (!atLow && !atHigh) free.push(p)
    }
    const goal = solvedFree(A, b, x, free)
    // walk towards it until the first end is met
    let share = 1
    for (const p of free) {
      const step = goal[p]! - x[p]!
      if (step > 0) share = Math.min(share, (high[p]! - x[p]!) / step)
      if (step < 0) share = Math.min(share, (low[p]! - x[p]!) / step)
    }
    let moved = 0
    for (const p of free) {
      const next = Math.min(high[p]!, Math.max(low[p]!, x[p]! + share * (goal[p]! - x[p]!)))
      moved = Math.max(moved, Math.abs(next - x[p]!))
      x[p] = next
    }
    if (share >= 1 && moved < 1e-12) break
  }
  return x
}

/** Solves the rows of the free ones with the others held, by elimination; A is positive definite. */
function solvedFree(
  A: readonly Float64Array[],
  b: Float64Array,
  x: Float64Array,
  free: readonly number[],
): Float64Array {
  const m = free.length
  const M = free.map((p) => {
    const row = new Float64Array(m + 1)
    let right = b[p]!
    for (let q = 0; q < x.length; q++) if (!free.includes(q)) right -= A[p]![q]! * x[q]!
    free.forEach((q, k) => {
      row[k] = A[p]![q]!
    })
    row[m] = right
    return row
  })
  for (let k = 0; k < m; k++)
    for (let r = k + 1; r < m; r++) {
      const factor = M[r]![k]! / M[k]![k]!
      for (let c = k; c <= m; c++) M[r]![c]! -= factor * M[k]![c]!
    }
  const solved = x.slice()
  for (let k = m - 1; k >= 0; k--) {
    let value = M[k]![m]!
    for (let c = k + 1; c < m; c++) value -= M[k]![c]! * solved[free[c]!]!
    solved[free[k]!] = value / M[k]![k]!
  }
  return solved
}
