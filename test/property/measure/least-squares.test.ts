import fc from 'fast-check'
import { expect, test } from 'vitest'
import { leastSquares, seededRandom, solveSymmetric } from '../../../src/measure/index.ts'
import { law, near, refuses } from '../../support/law.ts'

/** Rows of a straight problem: A·x − b. */
const straight = (a: readonly (readonly number[])[], b: readonly number[]) => (x: ArrayLike<number>) => ({
  residuals: a.map((row, i) => row.reduce((sum, value, j) => sum + value * x[j]!, -b[i]!)),
  slopes: a,
})

law(
  'ME18 straight rows: the solution and the covariance of the normal equations, from anywhere',
  fc.tuple(
    fc.integer({ min: 0, max: 2 ** 32 - 1 }),
    fc.integer({ min: 1, max: 6 }),
    fc.integer({ min: 0, max: 5 }),
  ),
  ([seed, n, more]) => {
    const { normal } = seededRandom(seed)
    const draw = (count: number) => Array.from({ length: count }, normal)
    const a = Array.from({ length: n + more }, (_, i) => draw(n).map((x, j) => x + (i === j ? 3 : 0)))
    const b = draw(n + more)
    const found = leastSquares({ start: draw(n), rows: straight(a, b) })
    const product = (p: number, q: number) => a.reduce((sum, row) => sum + row[p]! * row[q]!, 0)
    const matrix = Array.from({ length: n }, (_, p) => Array.from({ length: n }, (_, q) => product(p, q)))
    const right = Array.from({ length: n }, (_, p) => a.reduce((sum, row, i) => sum + row[p]! * b[i]!, 0))
    const want = solveSymmetric(matrix, right)
    expect(found.settled).toBe(true)
    return want.every((value, j) => {
      const unit = want.map((_, i) => (i === j ? 1 : 0))
      const column = solveSymmetric(matrix, unit)
      return (
        near(found.at[j]!, value, { abs: 1e-10 }) &&
        column.every((c, i) => near(found.covariance[i]![j]!, c, { abs: 1e-10, rel: 1e-9 }))
      )
    })
  },
)

test('ME18 a prior is rows: a reading and a prior share the unknown by their weights', () => {
  const found = leastSquares({
    start: [0],
    // read 4 ± 1, known before as 1 ± 2
    rows: ([x]) => ({ residuals: [x! - 4, (x! - 1) / 2], slopes: [[1], [0.5]] }),
  })
  near(found.at[0]!, (4 + 1 / 4) / (1 + 1 / 4), { abs: 1e-12 })
  near(found.covariance[0]![0]!, 1 / (1 + 1 / 4), { abs: 1e-12 })
})

test('ME18 where nothing can be computed is gone round', () => {
  // √x has no value below 0; the plain step from 9 would go to −3
  const found = leastSquares({
    start: [9],
    rows: ([x]) => (x! < 0 ? null : { residuals: [Math.sqrt(x!) - 1], slopes: [[0.5 / Math.sqrt(x!)]] }),
  })
  near(found.at[0]!, 1, { abs: 1e-10 })
})

test('ME18 when the evaluations run out it says so', () => {
  const far = leastSquares({
    start: [1, 1],
    rows: ([x, y]) => ({
      residuals: [10 * (y! - x! ** 2), 1 - x!],
      slopes: [
        [-20 * x!, 10],
        [-1, 0],
      ],
    }),
    most: 2,
  })
  expect(far.evaluations).toBeLessThanOrEqual(2)
  const cut = leastSquares({
    start: [-1.2, 1],
    rows: ([x, y]) => ({
      residuals: [10 * (y! - x! ** 2), 1 - x!],
      slopes: [
        [-20 * x!, 10],
        [-1, 0],
      ],
    }),
    most: 4,
  })
  expect(cut.settled).toBe(false)
})

refuses('too-few', () => leastSquares({ start: [1, 2], rows: straight([[1, 1]], [1]) }))
refuses('not-positive-definite', () =>
  leastSquares({
    start: [1, 2],
    rows: straight(
      [
        [1, 1],
        [2, 2],
      ],
      [1, 2],
    ),
  }),
)
refuses('not-finite', () => leastSquares({ start: [1], rows: () => null }))
refuses('not-finite', () => leastSquares({ start: [Number.NaN], rows: straight([[1]], [1]) }))
