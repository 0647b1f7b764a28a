/**
 * Turns rows and right sides until the rows are a triangle (Householder): what least squares needs of many rows stands
 * in as many rows as there are unknowns.
 *
 * @param rows [row · n + column], m rows, overwritten
 * @param right m numbers, overwritten by Qᵀ·right
 * @returns the upper triangle, n × n, [row · n + column]
 * @source Golub, Van Loan: Matrix Computations, 5.2.1 (Householder QR), from memory
 */
export function orthogonalTriangle(
  rows: Float64Array,
  right: Float64Array,
  m: number,
  n: number,
): Float64Array {
  for (let k = 0; k < Math.min(m, n); k++) {
    let below = 0
    for (let i = k; i < m; i++) below = Math.hypot(below, rows[i * n + k]!)
    if (below === 0) continue
    const alpha = rows[k * n + k]! > 0 ? -below : below
    // v = column − alpha·e, scaled so that v·v is −2·alpha·v₀
    const v0 = rows[k * n + k]! - alpha
    const scale = -alpha * v0
    rows[k * n + k] = v0
    for (let j = k + 1; j < n; j++) {
      let sum = 0
      for (let i = k; i < m; i++) sum += rows[i * n + k]! * rows[i * n + j]!
      const by = sum / scale
      for (let i = k; i < m; i++) rows[i * n + j]! -= by * rows[i * n + k]!
    }
    let sum = 0
    for (let i = k; i < m; i++) sum += rows[i * n + k]! * right[i]!
    const by = sum / scale
    for (let i = k; i < m; i++) right[i]! -= by * rows[i * n + k]!
    rows[k * n + k] = alpha
    for (let i = k + 1; i < m; i++) rows[i * n + k] = 0
  }
  const triangle = new Float64Array(n * n)
  for (let i = 0; i < Math.min(m, n); i++) for (let j = i; j < n; j++) triangle[i * n + j] = rows[i * n + j]!
  return triangle
}
