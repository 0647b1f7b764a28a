import fc from 'fast-check'
import { expect, test } from 'vitest'
import {
  decide,
  exact,
  normal,
  normalCdf,
  probabilityInside,
  rectangular,
} from '../../../src/measure/index.ts'
import { law, near, refuses } from '../../support/law.ts'
import { anyMeasured, place, size } from './arbitraries.ts'

const withLimits = fc.tuple(anyMeasured('a'), place, size)

law('ME7 below, inside and above add to one', withLimits, ([m, low, width]) => {
  const high = low + width
  const sum =
    probabilityInside(m, { high: low }) +
    probabilityInside(m, { low, high }) +
    probabilityInside(m, { low: high })
  return near(sum, 1, { abs: 1e-9 })
})

law(
  'ME7 wider limits are never less probable',
  withLimits,
  ([m, low, width]) =>
    probabilityInside(m, { low: low - 1, high: low + width }) >=
    probabilityInside(m, { low, high: low + width }) - 1e-12,
)

law(
  'ME7 a population much wider than the spread says nothing',
  withLimits,
  ([m, low, width]) => {
    const limits = { low, high: low + width }
    return near(probabilityInside(m, limits, { mean: 0, sd: 1e5 }), probabilityInside(m, limits), {
      abs: 2e-3,
    })
  },
  { runs: 60 },
)

// Normal error and normal population: the posterior is normal with the weighted mean.
law(
  'ME7 normal population and normal error: the closed form',
  fc.tuple(place, size, place, size, place),
  ([y, u, mean, sd, low]) => {
    const weight = sd ** 2 / (sd ** 2 + u ** 2)
    const centre = weight * y + (1 - weight) * mean
    const spread = Math.sqrt(weight) * u
    const limits = { low, high: low + 3 }
    const want = normalCdf((limits.high - centre) / spread) - normalCdf((limits.low - centre) / spread)
    // Masses far in the tails of both are computed as nothing; there the population alone would answer.
    if (Math.abs(y - mean) > 5 * Math.hypot(u, sd)) return true
    return near(probabilityInside(normal(u, 'a', y), limits, { mean, sd }), want, { abs: 2e-4 })
  },
)

law('ME7 a population known as a range cuts the rest off', fc.tuple(place, size), ([y, a]) => {
  const prior = { low: y - a / 2, high: y + 5 * a }
  const p = probabilityInside(rectangular(a, 'a', y), { low: y, high: y + 10 * a }, prior)
  return near(p, 2 / 3, { abs: 1e-9 })
})

law(
  'ME8 the verdict follows from probability, threshold and estimate',
  fc.tuple(withLimits, fc.double({ min: 0.55, max: 0.99, noNaN: true })),
  ([[m, low, width], threshold]) => {
    const limits = { low, high: low + width }
    const { probability, verdict } = decide(m, limits, { threshold })
    const between = m.value >= low && m.value <= low + width ? 'inside, not proven' : 'outside, not proven'
    return (
      verdict === (probability >= threshold ? 'inside' : probability <= 1 - threshold ? 'outside' : between)
    )
  },
)

law('ME8 mirrored reading and limits give the mirrored answer', withLimits, ([m, low, width]) => {
  const a = decide(m, { low, high: low + width })
  const b = decide({ ...m, value: -m.value }, { low: -low - width, high: -low })
  return a.verdict === b.verdict && near(a.probability, b.probability, { abs: 1e-9 })
})

test('ME8 a method too rough for the limits says that nothing can be proven inside', () => {
  expect(decide(normal(1, 'a', 0), { low: -0.5, high: 0.5 }).provable).toBe(false)
  expect(decide(normal(1, 'a', 9), { low: -5, high: 5 }).provable).toBe(true)
  expect(decide(normal(1, 'a', 9), { low: -5 }).provable).toBe(true)
})

test('ME8 the four verdicts, and an exact value', () => {
  const at = (y: number) => decide(normal(1, 'a', y), { low: 0, high: 10 }).verdict
  expect([at(5), at(0.5), at(-0.5), at(-5)]).toEqual([
    'inside',
    'inside, not proven',
    'outside, not proven',
    'outside',
  ])
  expect(decide(exact(0), { low: 0 }).verdict).toBe('inside')
  expect(decide(exact(-0.001), { low: 0 }).verdict).toBe('outside')
})

refuses('bad-limits', () => probabilityInside(normal(1, 'a'), {}))
refuses('bad-limits', () => probabilityInside(normal(1, 'a'), { low: 1, high: 1 }))
refuses('bad-limits', () => decide(normal(1, 'a'), { low: 2, high: 1 }))
refuses('bad-limits', () => decide(normal(1, 'a'), { low: Number.NaN }))
refuses('bad-share', () => decide(normal(1, 'a'), { low: 1 }, { threshold: 1 }))
refuses('bad-share', () => decide(normal(1, 'a'), { low: 1 }, { threshold: 0.5 }))
refuses('not-positive', () => decide(normal(1, 'a'), { low: 1 }, { prior: { mean: 0, sd: 0 } }))
refuses('not-positive', () => probabilityInside(normal(1, 'a'), { low: 1 }, { mean: 0, sd: Number.NaN }))
refuses('not-finite', () => probabilityInside({ ...normal(1, 'a'), value: Number.NaN }, { low: 1 }))
refuses('not-finite', () => decide({ ...normal(1, 'a'), value: Number.NaN }, { low: 1 }))
