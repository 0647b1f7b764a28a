/**
 * Least squares with bounds: the x between `low` and `high` that makes the sum of columns · x nearest to `want`, with
 * a ridge that keeps idle unknowns at 0. One unknown after another, until none moves: the problem is convex.
 */
export function bounded({
  columns,
  want,
  low,
  high,
  ridge = 1e-6,
}: {
  readonly columns: readonly (readonly number[])[]
  readonly want: readonly number[]
  readonly low: readonly number[]
  readonly high: readonly number[]
  readonly ridge?: number
}): number[] {
  const x = columns.map((_, k) => Math.min(high[k]!, Math.max(low[k]!, 0)))
  const left = want.map((w, i) => w - columns.reduce((sum, c, k) => sum + c[i]! * x[k]!, 0))
  const square = columns.map((c) => c.reduce((sum, ci) => sum + ci * ci, 0) + ridge)
  for (let round = 0; round < 400; round++) {
    let moved = 0
    for (const [k, c] of columns.entries()) {
      let slope = -ridge * x[k]!
      for (let i = 0; i < left.length; i++) slope += c[i]! * left[i]!
      const next = Math.min(high[k]!, Math.max(low[k]!, x[k]! + slope / square[k]!))
      const by = next - x[k]!
      if (by === 0) continue
      x[k] = next
      for (let i = 0; i < left.length; i++) left[i]! -= c[i]! * by
      moved = Math.max(moved, Math.abs(by) * Math.sqrt(square[k]!))
    }
    if (moved < 1e-5) break
  }
  return x
}
