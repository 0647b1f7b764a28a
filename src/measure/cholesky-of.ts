import { finite, measureRefusal } from './measure-refusal.ts'

/**
 * A matrix as rows.
 *
 * @source definition
 */
export type Matrix = readonly (readonly number[])[]

const ROUNDING = 1e-12
/** A graded matrix of low rank loses this much more in its last pivots. */
const BELOW = 1000

/**
 * The lower triangle L with L·Lᵀ = matrix. A matrix without full rank is taken, its empty columns stay zero;
 * one with a negative direction is refused.
 *
 * @param matrix square, symmetric (the lower triangle is read)
 * @throws {Refusal} `not-positive-definite`; `size-mismatch`; `not-finite`
 * @source Cholesky's method; Golub, Van Loan: Matrix Computations, 4.2 and 4.2.8 (from memory)
 * @example choleskyOf([[4, 2], [2, 5]])[1][1] // 2
 */
export function choleskyOf(matrix: Matrix): number[][] {
  const n = matrix.length
  for (const row of matrix)
    if (row.length !== n)
      throw measureRefusal(
        'size-mismatch',
        'matrix',
        row.length,
        `A row of ${row.length} numbers in a matrix of ${n}.`,
        'Give a square matrix.',
      )
  const l = matrix.map(() => new Array<number>(n).fill(0))
  for (let j = 0; j < n; j++) {
    let pivot = finite(matrix[j]![j]!, 'matrix')
    const room = ROUNDING * n * Math.abs(pivot)
    for (let k = 0; k < j; k++) pivot -= l[j]![k]! ** 2
    if (pivot < -BELOW * room) throw negative(j, pivot)
    const root = pivot > room ? Math.sqrt(pivot) : 0
    l[j]![j] = root
    for (let i = j + 1; i < n; i++) {
      let sum = finite(matrix[i]![j]!, 'matrix')
      for (let k = 0; k < j; k++) sum -= l[i]![k]! * l[j]![k]!
      if (root > 0) l[i]![j] = sum / root
      else if (Math.abs(sum) > ROUNDING_ROOT * Math.sqrt(Math.abs(matrix[i]![i]! * matrix[j]![j]!)))
        throw negative(j, pivot)
    }
  }
  return l
}

const ROUNDING_ROOT = Math.sqrt(ROUNDING)

const negative = (j: number, pivot: number) =>
  measureRefusal(
    'not-positive-definite',
    `column ${j + 1}`,
    pivot,
    `The matrix is no covariance: in column ${j + 1} a variance of ${pivot} is left.`,
    'Check the signs and the correlations; none may pass 1.',
  )
