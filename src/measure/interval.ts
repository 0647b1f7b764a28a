import { errorDistribution } from './error-distribution.ts'
import { share } from './measure-refusal.ts'
import type { Measured } from './measured.ts'

const HALVINGS = 60

/**
 * From low to high, SI.
 *
 * @source definition
 */
export interface Interval {
  readonly low: number
  readonly high: number
}

/**
 * The interval that holds the true value with this probability, from the true shapes of the errors: one box of
 * half-width a gives ± 0.95 a, not ± 1.96 a/√3.
 *
 * @param coverage strictly between 0 and 1
 * @returns symmetric about the value, as the errors are
 * @throws {Refusal} `bad-share`
 * @source JCGM 101:2008, 7.7; own derivation: docs/methods/uncertainty.md
 * @example interval(rectangular(1, 'a')).high // 0.95
 */
export function interval(m: Measured, coverage = 0.95): Interval {
  const half = halfWidth(m, share(coverage, 'coverage'))
  return { low: m.value - half, high: m.value + half }
}

/**
 * Half the width of `interval`.
 *
 * @throws {Refusal} `bad-share`
 * @source JCGM 101:2008, 7.7
 * @example halfWidth(rectangular(1, 'a'), 0.95) // 0.95
 */
export function halfWidth(m: Measured, coverage = 0.95): number {
  const { cdf, u } = errorDistribution(m)
  const p = (1 + share(coverage, 'coverage')) / 2
  if (u === 0) return 0
  let low = 0
  let high = u
  while (cdf(high) < p) {
    low = high
    high *= 2
  }
  for (let i = 0; i < HALVINGS && high - low > 1e-12 * high; i++) {
    const middle = (low + high) / 2
    if (cdf(middle) < p) low = middle
    else high = middle
  }
  return (low + high) / 2
}
