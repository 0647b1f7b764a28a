import fc from 'fast-check'
import { expect, test } from 'vitest'
import {
  choleskyOf,
  combine,
  correlated,
  covarianceMatrix,
  drawJoint,
  type Measured,
  monteCarlo,
  normal,
  propagate,
  readTogether,
  rectangular,
  repeats,
  seededRandom,
  solveSymmetric,
  standardUncertainty,
} from '../../../src/measure/index.ts'
import { law, near, refuses } from '../../support/law.ts'
import { place, sharing, size } from './arbitraries.ts'

law(
  'ME5 slopes and draws agree where the model is straight',
  fc.tuple(sharing(3), place, place),
  ([ms, a, b]) => {
    const f = ([x, y, z]: readonly number[]) => a * x! + b * y! - z!
    const line = propagate(f, ms)
    const drawn = monteCarlo(f, ms, { draws: 4000, seed: 11 })
    const u = standardUncertainty(line)
    return (
      near(drawn.mean, line.value, { abs: (5 * u) / Math.sqrt(4000) + 1e-9 }) &&
      near(drawn.standardUncertainty, u, { abs: 0.06 * u + 1e-9 })
    )
  },
  { runs: 60 },
)

law('ME6 slopes by difference are the slopes given', fc.tuple(size, size), ([x, y]) => {
  const inputs = [normal(0.01 * x, 'x', x), rectangular(0.01 * y, 'y', y)]
  const f = ([a, b]: readonly number[]) => a! ** 2 * Math.sin(b!)
  const byHand = propagate(f, inputs, [2 * x * Math.sin(y), x * x * Math.cos(y)])
  const parts = propagate(f, inputs).parts
  return byHand.parts.every((part) =>
    near(parts.find((p) => p.source === part.source)?.effect ?? 0, part.effect, {
      abs: 1e-5 * x * x * 0.01 * (x + y),
    }),
  )
})

law(
  'ME9 the same seed draws the same, another does not',
  fc.tuple(sharing(2), fc.integer({ min: 0, max: 2 ** 32 - 2 })),
  ([ms, seed]) => {
    const draw = (s: number) => [...drawJoint(ms, { draws: 5, seed: s })].join()
    const spread = ms.some((m) => standardUncertainty(m) > 1e-9)
    return draw(seed) === draw(seed + 0) && (!spread || draw(seed) !== draw(seed + 1))
  },
)

law('ME9 an error two readings share is one draw', fc.tuple(place, place, size), ([x, y, a]) => {
  const shared = rectangular(a, 'floor')
  const out = drawJoint(
    [
      { ...shared, value: x },
      { ...shared, value: y },
    ],
    { draws: 50, seed: 3 },
  )
  for (let d = 0; d < 50; d++) near(out[2 * d]! - out[2 * d + 1]!, x - y, { abs: 1e-12 })
  return true
})

law(
  'ME9 draws have the stated means and covariances',
  sharing(3),
  (ms) => {
    const draws = 8000
    const out = drawJoint(ms, { draws, seed: 5 })
    const c = covarianceMatrix(ms)
    for (let i = 0; i < 3; i++)
      for (let j = 0; j <= i; j++) {
        let sum = 0
        for (let d = 0; d < draws; d++)
          sum += (out[3 * d + i]! - ms[i]!.value) * (out[3 * d + j]! - ms[j]!.value)
        near(sum / draws, c[i]![j]!, { abs: 0.07 * Math.sqrt(c[i]![i]! * c[j]![j]!) + 1e-9 })
      }
    return true
  },
  { runs: 40 },
)

test('ME9 a mean of three repeats is drawn as Student, not as normal', () => {
  const m = repeats([-1, 0, 1], 'a')
  const u = standardUncertainty(m)
  let beyond = 0
  for (const x of drawJoint([m], { draws: 40_000, seed: 1 })) if (Math.abs(x) > 4.303 * u) beyond++
  expect(beyond / 40_000).toBeGreaterThan(0.046)
  expect(beyond / 40_000).toBeLessThan(0.054)
})

test('ME15 uniform and normal numbers have their moments, and the seed decides', () => {
  const random = seededRandom(42)
  const n = 200_000
  const sums = [0, 0, 0, 0, 0]
  for (let i = 0; i < n; i++) {
    const u = random()
    const z = random.normal()
    sums[0]! += u / n
    sums[1]! += u ** 2 / n
    sums[2]! += z / n
    sums[3]! += z ** 2 / n
    sums[4]! += z ** 4 / n
  }
  // five standard errors each
  expect(Math.abs(sums[0]! - 1 / 2)).toBeLessThan(5 * Math.sqrt(1 / 12 / n))
  expect(Math.abs(sums[1]! - 1 / 3)).toBeLessThan(5 * Math.sqrt(4 / 45 / n))
  expect(Math.abs(sums[2]!)).toBeLessThan(5 / Math.sqrt(n))
  expect(Math.abs(sums[3]! - 1)).toBeLessThan(5 * Math.sqrt(2 / n))
  expect(Math.abs(sums[4]! - 3)).toBeLessThan(5 * Math.sqrt(96 / n))
})

test('ME15 chi-squared numbers have mean and variance of their degrees of freedom', () => {
  for (const dof of [1, 2, 5]) {
    const random = seededRandom(9)
    let mean = 0
    let square = 0
    const n = 100_000
    for (let i = 0; i < n; i++) {
      const x = random.chiSquared(dof)
      mean += x / n
      square += x ** 2 / n
    }
    expect(Math.abs(mean - dof)).toBeLessThan(5 * Math.sqrt((2 * dof) / n))
    expect(Math.abs(square - mean ** 2 - 2 * dof)).toBeLessThan(0.05 * 2 * dof)
  }
})

const anyMatrix = fc
  .array(fc.array(place, { minLength: 4, maxLength: 4 }), { minLength: 4, maxLength: 4 })
  .map((rows) =>
    rows.map((a, i) => rows.map((b, j) => a.reduce((sum, x, k) => sum + x * b[k]!, i === j ? 0.5 : 0))),
  )

law('ME13 the triangle times itself turned is the matrix', anyMatrix, (a) => {
  const l = choleskyOf(a)
  return a.every((row, i) =>
    row.every((x, j) =>
      near(
        l[i]!.reduce((s, y, k) => s + y * l[j]![k]!, 0),
        x,
        { abs: 1e-9 },
      ),
    ),
  )
})

law(
  'ME13 the solution solves',
  fc.tuple(anyMatrix, fc.array(place, { minLength: 4, maxLength: 4 })),
  ([a, b]) => {
    const x = solveSymmetric(a, b)
    return a.every((row, i) =>
      near(
        row.reduce((s, y, k) => s + y * x[k]!, 0),
        b[i]!,
        { abs: 1e-7 },
      ),
    )
  },
)

law('ME14 values made to a covariance have it', anyMatrix, (a) => {
  const ms = correlated([1, 2, 3, 4], a, ['a', 'b', 'c', 'd'])
  return covarianceMatrix(ms).every((row, i) => row.every((x, j) => near(x, a[i]![j]!, { abs: 1e-9 })))
})

test('ME14 quantities that repeat exactly together have no spread', () => {
  const [a, b] = readTogether(
    [
      [1, 1, 1],
      [2, 2, 2],
    ],
    'a',
  ) as [Measured, Measured]
  expect([a.parts.length, b.parts.length, b.value]).toEqual([0, 0, 2])
})

refuses('not-finite', () => seededRandom(-1))
refuses('not-finite', () => seededRandom(0.5))
refuses('too-few', () => drawJoint([normal(1, 'a')], { draws: 0, seed: 1 }))
refuses('source-conflict', () => drawJoint([normal(1, 'a'), rectangular(1, 'a')], { draws: 1, seed: 1 }))
refuses('too-few', () => monteCarlo(([x]) => x!, [normal(1, 'a')], { draws: 10, seed: 1 }))
refuses('bad-share', () => monteCarlo(([x]) => x!, [normal(1, 'a')], { draws: 100, seed: 1, coverage: 1 }))
refuses('not-finite', () => monteCarlo(([x]) => Math.sqrt(x!), [normal(1, 'a')], { draws: 100, seed: 1 }))
refuses('source-conflict', () =>
  monteCarlo(([x]) => x!, [normal(1, 'a'), rectangular(1, 'a')], { draws: 100, seed: 1 }),
)
refuses('not-finite', () => propagate(([x]) => 1 / x!, [normal(1, 'a', 0)]))
refuses('size-mismatch', () => propagate(([x]) => x!, [normal(1, 'a')], [1, 2]))
refuses('not-positive-definite', () =>
  choleskyOf([
    [1, 2],
    [2, 1],
  ]),
)
refuses('not-positive-definite', () => choleskyOf([[-1]]))
refuses('size-mismatch', () => choleskyOf([[1, 2]]))
refuses('not-finite', () => choleskyOf([[Number.NaN]]))
refuses('not-positive-definite', () =>
  solveSymmetric(
    [
      [1, 1],
      [1, 1],
    ],
    [1, 1],
  ),
)
refuses('size-mismatch', () => solveSymmetric([[1]], [1, 1]))
refuses('not-finite', () => solveSymmetric([[Number.NaN]], [1]))
refuses('size-mismatch', () => correlated([1, 2], [[1]], ['a', 'b']))
refuses('not-positive-definite', () =>
  correlated(
    [1, 2],
    [
      [1, 2],
      [2, 1],
    ],
    ['a', 'b'],
  ),
)
refuses('not-finite', () => correlated([Number.NaN], [[1]], ['a']))
refuses('too-few', () => readTogether([[1]], 'a'))
refuses('size-mismatch', () =>
  readTogether(
    [
      [1, 2],
      [1, 2, 3],
    ],
    'a',
  ),
)
refuses('not-finite', () => readTogether([[1, Number.NaN]], 'a'))
test('ME1 combining draws equals drawing the combination', () => {
  const ms = [
    normal(1, 'a', 1),
    combine([
      { of: normal(1, 'a'), times: 2 },
      { of: rectangular(1, 'b'), times: 1 },
    ]),
  ]
  const both = drawJoint(ms, { draws: 100, seed: 2 })
  const sum = drawJoint([...ms, combine(ms.map((of) => ({ of, times: 1 })))], { draws: 100, seed: 2 })
  for (let d = 0; d < 100; d++) expect(sum[3 * d + 2]).toBeCloseTo(both[2 * d]! + both[2 * d + 1]!, 12)
})
