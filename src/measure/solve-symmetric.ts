import { choleskyOf, type Matrix } from './cholesky-of.ts'
import { measureRefusal } from './measure-refusal.ts'

/**
 * The solution x of matrix · x = right for a symmetric matrix that is positive along every direction.
 *
 * @throws {Refusal} `not-positive-definite` when a direction has no weight; `size-mismatch`; `not-finite`
 * @source Cholesky's method; Golub, Van Loan: Matrix Computations, 4.2 (from memory)
 * @example solveSymmetric([[4, 2], [2, 5]], [8, 8])[0] // 1.5
 */
export function solveSymmetric(matrix: Matrix, right: readonly number[]): number[] {
  const n = matrix.length
  if (right.length !== n)
    throw measureRefusal(
      'size-mismatch',
      'right',
      right.length,
      `${right.length} right-hand sides for ${n} unknowns.`,
      'Give one number per row.',
    )
  const l = choleskyOf(matrix)
  const x = [...right]
  for (let i = 0; i < n; i++) {
    if (l[i]![i] === 0)
      throw measureRefusal(
        'not-positive-definite',
        `column ${i + 1}`,
        0,
        `Nothing determines unknown ${i + 1}.`,
        'Add a reading or a prior that does.',
      )
    for (let k = 0; k < i; k++) x[i]! -= l[i]![k]! * x[k]!
    x[i]! /= l[i]![i]!
  }
  for (let i = n - 1; i >= 0; i--) {
    for (let k = i + 1; k < n; k++) x[i]! -= l[k]![i]! * x[k]!
    x[i]! /= l[i]![i]!
  }
  return x
}
