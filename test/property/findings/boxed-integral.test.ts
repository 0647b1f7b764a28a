import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { boxedIntegral } from '../../../src/findings/boxed-integral.ts'
import { type Truncated, truncatedNormal } from '../../../src/findings/truncated-normal.ts'
import { law, near } from '../../support/law.ts'

/** The integral by the midpoint rule, for two dimensions. */
function brute(precision: Float64Array, pull: Float64Array, low: number[], high: number[]): number {
  const cells = 400
  const [dx, dy] = [0, 1].map((i) => (high[i]! - low[i]!) / cells)
  let top = Number.NEGATIVE_INFINITY
  const logs: number[] = []
  for (let i = 0; i < cells; i++)
    for (let j = 0; j < cells; j++) {
      const [x, y] = [low[0]! + (i + 0.5) * dx!, low[1]! + (j + 0.5) * dy!]
      const log =
        -0.5 * (precision[0]! * x * x + 2 * precision[1]! * x * y + precision[3]! * y * y) +
        pull[0]! * x +
        pull[1]! * y
      logs.push(log)
      top = Math.max(top, log)
    }
  return top + Math.log(logs.reduce((sum, log) => sum + Math.exp(log - top), 0) * dx! * dy!)
}

const number = (min: number, max: number) => fc.double({ min, max, noNaN: true })

describe('FI1 the integral over a box', () => {
  law(
    'FI1 agrees with brute force in two dimensions, in the middle and out of reach',
    fc.record({
      a: number(0.3, 30),
      b: number(0.3, 30),
      r: number(-0.9, 0.9),
      p: number(-12, 12),
      q: number(-12, 12),
    }),
    ({ a, b, r, p, q }) => {
      const off = r * Math.sqrt(a * b)
      const precision = Float64Array.of(a, off, off, b)
      const pull = Float64Array.of(p, q)
      const [low, high] = [
        [-1, -1.5],
        [1, 0.8],
      ]
      const { log } = boxedIntegral(precision, pull, low!, high!)
      return near(log, brute(precision, pull, low!, high!), { abs: 0.05 })
    },
    { runs: 60 },
  )
  test('FI1 a ridge that leaves the box loses all of its mass, not some', () => {
    // two adjusters that do the same: their sum is known to a hundredth
    const sum = (s: number): number => {
      const stiff = 1e4
      const precision = Float64Array.of(stiff + 0.01, stiff, stiff, stiff + 0.01)
      return (
        boxedIntegral(precision, Float64Array.of(stiff * s, stiff * s), [-1, -1], [1, 1]).log -
        0.5 * stiff * s * s
      )
    }
    // lengths of the ridge inside the box: (2 − s)·√2, across √(π/stiff); own derivation
    for (const s of [0, 1, 1.9])
      expect(Math.abs(sum(s) - Math.log((2 - s) * Math.sqrt((2 * Math.PI) / 1e4)))).toBeLessThan(0.15)
    expect(sum(2.5)).toBeLessThan(-1000)
  })
  test('FI1 a warm start ends where a cold one does', () => {
    const precision = Float64Array.of(4, 1, 0.5, 1, 3, -0.7, 0.5, -0.7, 2)
    const pull = Float64Array.of(5, -3, 2)
    const [low, high] = [
      [-1, -1, 0],
      [1, 1, 2],
    ]
    const cold = boxedIntegral(precision, pull, low!, high!)
    const warm = boxedIntegral(precision, pull, low!, high!, cold.edges)
    expect(Math.abs(cold.log - warm.log)).toBeLessThan(1e-3)
  })
  law(
    'FI1 share, mean and variance of a cut normal agree with brute force',
    fc.record({ low: number(-6, 6), width: number(0.0001, 8) }),
    ({ low, width }) => {
      const found: Truncated = { logShare: 0, mean: 0, variance: 0 }
      truncatedNormal(low, low + width, found)
      const cells = 20000
      let [share, mean, square] = [0, 0, 0]
      for (let i = 0; i < cells; i++) {
        const x = low + ((i + 0.5) / cells) * width
        const density = Math.exp(-0.5 * x * x) / Math.sqrt(2 * Math.PI)
        share += density
        mean += density * x
        square += density * (x - low) ** 2
      }
      const middle = mean / share
      near(found.logShare, Math.log((share * width) / cells), { abs: 1e-4 })
      near(found.mean, middle, { abs: 1e-4 * width })
      return near(found.variance, square / share - (middle - low) ** 2, { rel: 1e-3 })
    },
    { runs: 100 },
  )
})
