/**
 * Solves A x = b in place by elimination with row exchange; `a` is row-major n × n and is destroyed, `b` becomes x.
 *
 * @returns the determinant of A; 0 when a pivot is exactly 0 (then `b` is not a solution)
 */
export function solveLinear(a: Float64Array, b: Float64Array, n: number): number {
  let determinant = 1
  for (let k = 0; k < n; k++) {
    let p = k
    let big = Math.abs(a[k * n + k]!)
    for (let i = k + 1; i < n; i++) {
      const size = Math.abs(a[i * n + k]!)
      if (size > big) {
        big = size
        p = i
      }
    }
    if (!(big > 0)) return 0
    if (p !== k) {
      for (let j = k; j < n; j++) {
        const t = a[k * n + j]!
        a[k * n + j] = a[p * n + j]!
        a[p * n + j] = t
      }
      const t = b[k]!
      b[k] = b[p]!
      b[p] = t
      determinant = -determinant
    }
    const pivot = a[k * n + k]!
    determinant *= pivot
    for (let i = k + 1; i < n; i++) {
      const factor = a[i * n + k]! / pivot
      if (factor === 0) continue
      for (let j = k + 1; j < n; j++) a[i * n + j] = a[i * n + j]! - factor * a[k * n + j]!
      b[i] = b[i]! - factor * b[k]!
    }
  }
  for (let i = n - 1; i >= 0; i--) {
    let sum = b[i]!
    for (let j = i + 1; j < n; j++) sum -= a[i * n + j]! * b[j]!
    b[i] = sum / a[i * n + i]!
  }
  return determinant
}
