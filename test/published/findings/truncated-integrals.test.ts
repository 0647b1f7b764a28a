import { describe } from 'vitest'
import { boxedIntegral } from '../../../src/findings/boxed-integral.ts'
import { type Truncated, truncatedNormal } from '../../../src/findings/truncated-normal.ts'
import { published } from '../../support/published.ts'

/** Inverse of a small symmetric matrix, by elimination. */
function inverse(rows: readonly (readonly number[])[]): Float64Array {
  const n = rows.length
  const a = rows.map((row, i) => [...row, ...row.map((_, j) => (i === j ? 1 : 0))])
  for (let k = 0; k < n; k++) {
    const pivot = a[k]![k]!
    a[k] = a[k]!.map((x) => x / pivot)
    for (let i = 0; i < n; i++)
      if (i !== k) {
        const factor = a[i]![k]!
        a[i] = a[i]!.map((x, j) => x - factor * a[k]![j]!)
      }
  }
  return Float64Array.from(a.flatMap((row) => row.slice(n)))
}

/** Share of a centred normal distribution with this covariance that lies in a box. */
function share(
  covariance: readonly (readonly number[])[],
  low: readonly number[],
  high: readonly number[],
): number {
  const precision = inverse(covariance)
  const none = new Float64Array(low.length)
  const [from, to] = [low.map(() => Number.NEGATIVE_INFINITY), low.map(() => Number.POSITIVE_INFINITY)]
  return Math.exp(
    boxedIntegral(precision, none, low, high).log - boxedIntegral(precision, none, from, to).log,
  )
}

const orthant = (covariance: readonly (readonly number[])[]): number =>
  share(
    covariance,
    covariance.map(() => 0),
    covariance.map(() => Number.POSITIVE_INFINITY),
  )
const alike = (n: number, r: number): number[][] =>
  Array.from({ length: n }, (_, i) => Array.from({ length: n }, (_, j) => (i === j ? 1 : r)))

const one = (low: number, high: number, what: keyof Truncated): number => {
  const found: Truncated = { logShare: 0, mean: 0, variance: 0 }
  truncatedNormal(low, high, found)
  return found[what]
}

// The method is an approximation: the tolerances are what it reaches, not the sources' digits.
const sheppard = 'Sheppard 1899: P(both above 0) = 1/4 + asin r / 2π'
const equal = 'Gupta 1963, equal correlations of 1/2: P(all above 0) = 1/(n + 1)'
const noEnd = Number.NEGATIVE_INFINITY

describe('FI1 the integral over a box', () => {
  published('orthants and a box', [
    { id: 'two, r = 0', got: () => orthant(alike(2, 0)), want: 0.25, within: 1e-9, source: sheppard },
    { id: 'two, r = 0.5', got: () => orthant(alike(2, 0.5)), want: 1 / 3, within: 1e-3, source: sheppard },
    {
      id: 'two, r = -0.8',
      got: () => orthant(alike(2, -0.8)),
      want: 0.25 + Math.asin(-0.8) / (2 * Math.PI),
      within: 4e-3,
      source: sheppard,
    },
    { id: 'three', got: () => orthant(alike(3, 0.5)), want: 1 / 4, within: 1.5e-3, source: equal },
    { id: 'five', got: () => orthant(alike(5, 0.5)), want: 1 / 6, within: 1.5e-3, source: equal },
    { id: 'ten', got: () => orthant(alike(10, 0.5)), want: 1 / 11, within: 1.5e-3, source: equal },
    {
      id: 'three, unlike',
      got: () =>
        share(
          [
            [1, 3 / 5, 1 / 3],
            [3 / 5, 1, 11 / 15],
            [1 / 3, 11 / 15, 1],
          ],
          [noEnd, noEnd, noEnd],
          [1, 4, 2],
        ),
      want: 0.82798,
      within: 5e-4,
      source:
        'Hothorn, Bretz, Genz: On Multivariate t and Gauss Probabilities in R, R News 1(2) 2001, section 2; value from memory',
      basis: 'from memory',
    },
  ])
  published('one dimension', [
    {
      id: 'upper half: mean √(2/π)',
      got: () => one(0, Number.POSITIVE_INFINITY, 'mean'),
      want: Math.sqrt(2 / Math.PI),
      within: 1e-12,
      source: 'Barr, Sherrill: The American Statistician 53 (1999)',
      basis: 'derived',
    },
    {
      id: 'upper half: variance 1 − 2/π',
      got: () => one(0, Number.POSITIVE_INFINITY, 'variance'),
      want: 1 - 2 / Math.PI,
      within: 1e-12,
      source: 'Barr, Sherrill: The American Statistician 53 (1999)',
      basis: 'derived',
    },
    {
      id: 'beyond 10: log of the share',
      got: () => one(10, Number.POSITIVE_INFINITY, 'logShare'),
      want: Math.log(7.61985302416e-24),
      within: 1e-9,
      source: 'tables of the normal tail: 1 − Φ(10) = 7.619853e-24; from memory',
      basis: 'from memory',
    },
    {
      id: 'beyond −10, mirrored',
      got: () => one(Number.NEGATIVE_INFINITY, -10, 'logShare'),
      want: Math.log(7.61985302416e-24),
      within: 1e-9,
      source: 'tables of the normal tail: 1 − Φ(10) = 7.619853e-24; from memory',
      basis: 'from memory',
    },
  ])
})
