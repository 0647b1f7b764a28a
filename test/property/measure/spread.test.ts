import fc from 'fast-check'
import {
  budget,
  choleskyOf,
  combine,
  correlation,
  covariance,
  covarianceMatrix,
  effectiveDof,
  exact,
  normal,
  rectangular,
  repeats,
  standardUncertainty,
} from '../../../src/measure/index.ts'
import { law, near, refuses } from '../../support/law.ts'
import { anyMeasured, place, sharing, size } from './arbitraries.ts'

law(
  'ME1 an error common to two values leaves their difference',
  fc.tuple(size, place, place),
  ([a, x, y]) => {
    const shared = rectangular(a, 'zero')
    const d = combine([
      { of: { ...shared, value: x }, times: 1 },
      { of: { ...shared, value: y }, times: -1 },
    ])
    return near(d.value, x - y, { abs: 1e-12 }) && d.parts.length === 0
  },
)

law('ME1 the same error twice counts double, two errors as the root of the squares', size, (a) => {
  const twice = combine([
    { of: normal(a, 'one'), times: 1 },
    { of: normal(a, 'one'), times: 1 },
  ])
  const both = combine([
    { of: normal(a, 'one'), times: 1 },
    { of: normal(a, 'other'), times: 1 },
  ])
  return (
    near(standardUncertainty(twice), 2 * a, { rel: 1e-12 }) &&
    near(standardUncertainty(both), Math.SQRT2 * a, { rel: 1e-12 })
  )
})

law('ME1 combining is linear: variance of a sum is the full quadratic form', sharing(3), (ms) => {
  const weights = [1, -2, 0.5]
  const c = covarianceMatrix(ms)
  let variance = 0
  for (let i = 0; i < 3; i++) for (let j = 0; j < 3; j++) variance += weights[i]! * weights[j]! * c[i]![j]!
  const sum = combine(ms.map((of, i) => ({ of, times: weights[i]! })))
  return near(standardUncertainty(sum) ** 2, variance, { abs: 1e-9, rel: 1e-9 })
})

law('ME2 covariances are symmetric and never negative along a direction', sharing(5), (ms) => {
  const c = covarianceMatrix(ms)
  choleskyOf(c)
  return c.every((row, i) =>
    row.every(
      (x, j) =>
        near(x, c[j]![i]!, { abs: 1e-12 }) &&
        near(x, covariance(ms[i]!, ms[j]!), { abs: 1e-12 }) &&
        (i !== j || near(x, standardUncertainty(ms[i]!) ** 2, { abs: 1e-9 })),
    ),
  )
})

law('ME2 correlation stays within one', sharing(2), ([a, b]) => {
  if (standardUncertainty(a!) === 0 || standardUncertainty(b!) === 0) return true
  return Math.abs(correlation(a!, b!)) <= 1
})

law('ME10 shares of a budget add to one, largest first', anyMeasured('a'), (m) => {
  const lines = budget(m)
  let sum = 0
  for (const [i, line] of lines.entries()) {
    if (i > 0 && line.share > lines[i - 1]!.share) return false
    sum += line.share
  }
  return near(sum, 1, { abs: 1e-12 })
})

law('ME10 one mean of repeats keeps its degrees of freedom', fc.integer({ min: 2, max: 30 }), (n) =>
  near(
    effectiveDof(
      repeats(
        Array.from({ length: n }, (_, i) => i ** 2),
        'a',
      ),
    ),
    n - 1,
    { rel: 1e-12 },
  ),
)

law('ME16 exact values stay exact', place, (x) => {
  const m = combine([{ of: exact(x), times: 3 }], 1)
  return m.parts.length === 0 && near(m.value, 3 * x + 1, { abs: 1e-12 }) && effectiveDof(m) === Infinity
})

refuses('not-finite', () => exact(Number.NaN))
refuses('not-finite', () => combine([{ of: exact(1), times: Number.POSITIVE_INFINITY }]))
refuses('not-positive', () => rectangular(-0.1, 'a'))
refuses('not-positive', () => correlation(exact(1), normal(1, 'a')))
refuses('too-few', () => repeats([1], 'a'))
refuses('too-few', () => repeats([], 'a'))
refuses('not-finite', () => repeats([1, Number.NaN], 'a'))
refuses('source-conflict', () =>
  combine([
    { of: normal(1, 'a'), times: 1 },
    { of: rectangular(1, 'a'), times: 1 },
  ]),
)
