import { choleskyOf } from '../measure/index.ts'

/** One thing that scatters, at one standard deviation: on the rows, and on the vehicle as it stands. */
export interface Scatter {
  readonly rows: Float64Array
  readonly present: Float64Array
}

/** Rows in units of their joint errors. */
interface Whitening {
  readonly white: (column: Float64Array) => Float64Array
  /** Log of the density of the first rows at nothing. */
  readonly logDet: (to: number) => number
  /** How far each row above the limits stands off what all others say of it, of a residual in units. */
  readonly standing: (left: Float64Array) => Float64Array
}

/**
 * The joint covariance of limits (their own variances), readings (their noise) and all that scatters, as a triangle.
 *
 * @source Cholesky's triangle: textbooks; a row against all others, K·r over the root of K's diagonal, K the precision: own derivation
 */
export function whitening({
  own,
  noise,
  scatter,
}: {
  readonly own: readonly number[]
  readonly noise: readonly (readonly number[])[]
  readonly scatter: readonly Scatter[]
}): Whitening {
  const m = own.length
  const n = m + noise.length
  const covariance = Array.from({ length: n }, () => new Array<number>(n).fill(0))
  own.forEach((variance, i) => {
    covariance[i]![i] = variance
  })
  noise.forEach((line, i) => {
    line.forEach((x, j) => {
      covariance[m + i]![m + j] = x
    })
  })
  for (const { rows } of scatter)
    for (let i = 0; i < n; i++) {
      const x = rows[i]!
      if (x === 0) continue
      const line = covariance[i]!
      for (let j = 0; j <= i; j++) line[j]! += x * rows[j]!
    }
  for (let i = 0; i < n; i++) for (let j = 0; j < i; j++) covariance[j]![i] = covariance[i]![j]!
  const triangle = Float64Array.from(choleskyOf(covariance).flat())
  let precise: Float64Array | null = null
  return {
    white: (column) => {
      const out = new Float64Array(n)
      for (let i = 0; i < n; i++) {
        let sum = column[i]!
        for (let j = 0; j < i; j++) sum -= triangle[i * n + j]! * out[j]!
        out[i] = sum / triangle[i * n + i]!
      }
      return out
    },
    logDet: (to) => {
      let sum = -0.5 * to * Math.log(2 * Math.PI)
      for (let i = 0; i < to; i++) sum -= Math.log(triangle[i * n + i]!)
      return sum
    },
    standing: (left) => {
      precise ??= rootsOfPrecision(triangle, n)
      const pulled = Float64Array.from(left)
      for (let i = n - 1; i >= 0; i--) {
        pulled[i]! /= triangle[i * n + i]!
        for (let j = 0; j < i; j++) pulled[j]! -= triangle[i * n + j]! * pulled[i]!
      }
      return Float64Array.from({ length: n - m }, (_, k) => pulled[m + k]! / precise![m + k]!)
    },
  }
}

/** Roots of the precision's diagonal: lengths of the columns of the inverse triangle. */
function rootsOfPrecision(triangle: Float64Array, n: number): Float64Array {
  const column = new Float64Array(n)
  return Float64Array.from({ length: n }, (_, i) => {
    column[i] = 1 / triangle[i * n + i]!
    let precision = column[i]! ** 2
    for (let r = i + 1; r < n; r++) {
      let sum = 0
      for (let j = i; j < r; j++) sum -= triangle[r * n + j]! * column[j]!
      column[r] = sum / triangle[r * n + r]!
      precision += column[r]! ** 2
    }
    return Math.sqrt(precision)
  })
}
