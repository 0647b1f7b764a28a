/** A square matrix taken apart: matrix = left · diag(values) · rightᵀ. @source definition */
export interface SingularValues {
  /** Columns of length 1, square to each other; a column is zero where its value is. [row · n + column] */
  readonly left: Float64Array
  readonly values: Float64Array
  readonly right: Float64Array
}

/** Sweeps after which nothing turns any more; eight are usual. */
const mostSweeps = 40

/**
 * Singular values of an n × n matrix by turning its columns in pairs until all are square to each other
 * (one-sided Jacobi): small values keep their digits.
 *
 * @param matrix [row · n + column]
 * @source Demmel, Veselić: Jacobi's method is more accurate than QR (1992), algorithm 4.1, from memory
 * @example singularValues(Float64Array.of(3, 0, 0, 4), 2).values[1] // 4
 */
export function singularValues(matrix: Float64Array, n: number): SingularValues {
  const a = matrix.slice()
  const v = new Float64Array(n * n)
  for (let i = 0; i < n; i++) v[i * n + i] = 1
  for (let sweep = 0, turned = true; turned && sweep < mostSweeps; sweep++) {
    turned = false
    for (let p = 0; p < n - 1; p++) for (let q = p + 1; q < n; q++) if (turnPair(a, v, n, p, q)) turned = true
  }
  const values = new Float64Array(n)
  for (let j = 0; j < n; j++) {
    let sum = 0
    for (let i = 0; i < n; i++) sum += a[i * n + j]! ** 2
    const size = Math.sqrt(sum)
    values[j] = size
    for (let i = 0; i < n; i++) a[i * n + j] = size > 0 ? a[i * n + j]! / size : 0
  }
  return { left: a, values, right: v }
}

/** Turns two columns against each other until they are square; false when they already are. */
function turnPair(a: Float64Array, v: Float64Array, n: number, p: number, q: number): boolean {
  let pp = 0
  let qq = 0
  let pq = 0
  for (let i = 0; i < n; i++) {
    const x = a[i * n + p]!
    const y = a[i * n + q]!
    pp += x * x
    qq += y * y
    pq += x * y
  }
  if (!(Math.abs(pq) > Number.EPSILON * Math.sqrt(pp) * Math.sqrt(qq))) return false
  const zeta = (qq - pp) / (2 * pq)
  const t = (zeta < 0 ? -1 : 1) / (Math.abs(zeta) + Math.sqrt(1 + zeta * zeta))
  const cos = 1 / Math.sqrt(1 + t * t)
  const sin = cos * t
  for (const m of [a, v])
    for (let i = 0; i < n; i++) {
      const x = m[i * n + p]!
      const y = m[i * n + q]!
      m[i * n + p] = cos * x - sin * y
      m[i * n + q] = sin * x + cos * y
    }
  return true
}
