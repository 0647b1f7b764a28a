import { errorDistribution } from './error-distribution.ts'
import { finite, share } from './measure-refusal.ts'
import type { Measured } from './measured.ts'
import { chanceInside, checkedLimits, type Limits, type Prior } from './probability-inside.ts'

/**
 * The four answers; a fifth does not exist.
 *
 * @source definition
 */
export type Verdict = 'inside' | 'inside, not proven' | 'outside, not proven' | 'outside'

/**
 * A verdict with the probability it stands on.
 *
 * @source definition
 */
export interface Decision {
  /** That the true value is inside, 0 … 1. */
  readonly probability: number
  readonly verdict: Verdict
  /** Whether a reading in the very middle would be proven inside; false: this method cannot decide these limits. */
  readonly provable: boolean
}

/**
 * Inside when that is at least as probable as the threshold, outside when it is at most one minus the threshold,
 * else by the estimate and not proven.
 *
 * @param limits SI; at least one side
 * @throws {Refusal} `bad-limits`; `bad-share` unless ½ < threshold < 1; `not-finite`; `not-positive`
 * @source JCGM 106:2012, 8.3; ISO 14253-1:2017, default 95 %; docs/methods/decisions.md
 * @example decide(normal(1, 'a', 5), { low: 0 }).verdict // inside
 */
export function decide(
  m: Measured,
  limits: Limits,
  { threshold = 0.95, prior = 'flat' as Prior } = {},
): Decision {
  share(threshold, 'threshold')
  share(2 * threshold - 1, 'threshold')
  const { low, high } = checkedLimits(limits)
  const error = errorDistribution(m)
  const probability = chanceInside(finite(m.value, 'value'), error, { low, high }, prior)
  const middle = (low + high) / 2
  const provable =
    probability >= threshold ||
    !Number.isFinite(middle) ||
    chanceInside(middle, error, { low, high }, prior) >= threshold
  return {
    probability,
    verdict: verdictOf(probability, threshold, m.value >= low && m.value <= high),
    provable,
  }
}

function verdictOf(probability: number, threshold: number, estimateInside: boolean): Verdict {
  if (probability >= threshold) return 'inside'
  if (probability <= 1 - threshold) return 'outside'
  return estimateInside ? 'inside, not proven' : 'outside, not proven'
}
