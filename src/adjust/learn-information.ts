import { choleskyOf, type Matrix } from '../measure/index.ts'

/**
 * What data say of an unknown x, as the logarithm of a likelihood: c + bᵀx − ½ xᵀA x. A may lack rank: what was never
 * seen has no weight.
 *
 * @source definition
 */
export interface Information {
  readonly A: Matrix
  readonly b: readonly number[]
  readonly c: number
}

/** A normal belief. @source definition */
export interface Belief {
  readonly mean: readonly number[]
  readonly covariance: Matrix
}

/**
 * The information in readings y = H x + noise.
 *
 * @param noise covariance of the noise, positive along every direction
 * @source Gaussian likelihood
 */
export function informationIn(H: Matrix, y: readonly number[], noise: Matrix): Information {
  const L = choleskyOf(noise)
  const columns = (H[0] ?? []).map((_, j) =>
    forward(
      L,
      H.map((row) => row[j]!),
    ),
  )
  const white = forward(L, y)
  return {
    A: columns.map((p) => columns.map((q) => dot(p, q))),
    b: columns.map((p) => dot(p, white)),
    c: -dot(white, white) / 2 - logRoot(L) - (y.length * Math.log(2 * Math.PI)) / 2,
  }
}

/** Nothing known of n unknowns. @source definition */
export const noInformation = (n: number): Information => ({
  A: Array.from({ length: n }, () => new Array<number>(n).fill(0)),
  b: new Array<number>(n).fill(0),
  c: 0,
})

/** Independent information put together, each with a weight. @source definition */
export const together = (
  n: number,
  parts: readonly Information[],
  weights?: readonly number[],
): Information =>
  parts.reduce((sum, part, k) => {
    const w = weights?.[k] ?? 1
    return {
      A: sum.A.map((row, i) => row.map((value, j) => value + w * part.A[i]![j]!)),
      b: sum.b.map((value, i) => value + w * part.b[i]!),
      c: sum.c + w * part.c,
    }
  }, noInformation(n))

/**
 * What is known of the parent p when x = p + e was seen and e is normal with this variance in every direction.
 *
 *     S = I + variance · A,   A' = S⁻¹A,   b' = S⁻¹b,   c' = c − ½ log|S| + ½ variance · bᵀS⁻¹b
 *
 * @source own derivation: docs/methods/learned-response.md (a Gaussian integral)
 */
export function informationAbove({ A, b, c }: Information, variance: number): Information {
  const L = choleskyOf(A.map((row, i) => row.map((value, j) => (i === j ? 1 : 0) + variance * value)))
  const solved = A.map((row) => solve(L, row))
  const Sb = solve(L, b)
  return {
    A: solved.map((row, i) => row.map((value, j) => (value + solved[j]![i]!) / 2)),
    b: Sb,
    c: c - logRoot(L) + (variance * dot(b, Sb)) / 2,
  }
}

/**
 * A belief that has taken information in, and how well it had foreseen it.
 *
 *     C = R Rᵀ,   S = I + RᵀA R,   covariance' = R S⁻¹Rᵀ,   mean' = mean + covariance' (b − A mean)
 *
 * @returns `evidence`: logarithm of the density of the data under the belief
 * @source own derivation: docs/methods/learned-response.md (Gaussian conditioning)
 */
export function conditionedOn(
  { mean, covariance }: Belief,
  { A, b, c }: Information,
): Belief & { readonly evidence: number } {
  const n = mean.length
  const R = choleskyOf(covariance)
  const AR = A.map((row) => mean.map((_, k) => row.reduce((sum, value, j) => sum + value * R[j]![k]!, 0)))
  const L = choleskyOf(
    mean.map((_, p) =>
      mean.map((__, q) => (p === q ? 1 : 0) + R.reduce((sum, row, i) => sum + row[p]! * AR[i]![q]!, 0)),
    ),
  )
  const Am = A.map((row) => dot(row, mean))
  const off = b.map((value, i) => value - Am[i]!)
  const Ro = mean.map((_, k) => R.reduce((sum, row, i) => sum + row[k]! * off[i]!, 0))
  const half = R.map((row) => forward(L, row))
  const white = forward(L, Ro)
  return {
    mean: mean.map((value, i) => value + dot(half[i]!, white)),
    covariance: Array.from({ length: n }, (_, i) => half.map((other) => dot(half[i]!, other))),
    evidence: c + dot(b, mean) - dot(mean, Am) / 2 - logRoot(L) + dot(white, white) / 2,
  }
}

const dot = (a: readonly number[], b: readonly number[]) => a.reduce((sum, x, k) => sum + x * b[k]!, 0)
/** ½ log of the determinant. */
const logRoot = (L: Matrix) => L.reduce((sum, row, i) => sum + Math.log(row[i]!), 0)

function forward(L: Matrix, right: readonly number[]): number[] {
  const x = [...right]
  for (let i = 0; i < x.length; i++) {
    for (let k = 0; k < i; k++) x[i]! -= L[i]![k]! * x[k]!
    x[i]! /= L[i]![i]!
  }
  return x
}

function solve(L: Matrix, right: readonly number[]): number[] {
  const x = forward(L, right)
  for (let i = x.length - 1; i >= 0; i--) {
    for (let k = i + 1; k < x.length; k++) x[i]! -= L[k]![i]! * x[k]!
    x[i]! /= L[i]![i]!
  }
  return x
}
