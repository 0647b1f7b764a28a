import { type ErrorDistribution, errorDistribution } from './error-distribution.ts'
import { finite, measureRefusal } from './measure-refusal.ts'
import type { Measured } from './measured.ts'
import { normalCdf, normalDensity } from './normal-cdf.ts'

/**
 * What must hold of the true value; one side may be open.
 *
 * @source definition
 */
export interface Limits {
  readonly low?: number | undefined
  readonly high?: number | undefined
}

/**
 * What was known before reading: nothing, a population with mean and standard deviation, or a range.
 *
 * @source definition
 */
export type Prior =
  | 'flat'
  | { readonly mean: number; readonly sd: number }
  | { readonly low: number; readonly high: number }

const CELLS = 2000
const REACH = 9

/**
 * Probability that the true value lies inside the limits, given the reading and what was known before.
 *
 * @param limits SI; at least one side
 * @param prior `flat` is timid where most vehicles are good; the workshop's own population is better
 * @returns 0 … 1
 * @throws {Refusal} `bad-limits`; `not-finite`; `not-positive` for a prior without width
 * @source JCGM 106:2012, 7.2–7.4; own derivation: docs/methods/decisions.md
 * @example probabilityInside(rectangular(1, 'a'), { low: -0.5, high: 0.5 }) // 0.5
 */
export function probabilityInside(m: Measured, limits: Limits, prior: Prior = 'flat'): number {
  return chanceInside(finite(m.value, 'value'), errorDistribution(m), checkedLimits(limits), prior)
}

/** The same from an error distribution that is known already. */
export function chanceInside(
  y: number,
  error: ErrorDistribution,
  { low, high }: { readonly low: number; readonly high: number },
  prior: Prior,
): number {
  if (error.u === 0) return y >= low && y <= high ? 1 : 0
  if (prior === 'flat') return clamped(error.cdf(high - y) - error.cdf(low - y))
  if ('sd' in prior) {
    checkWidth(prior.sd)
    finite(prior.mean, 'prior.mean')
    return underPopulation(y, error, { low, high }, prior)
  }
  checkWidth(prior.high - prior.low)
  const mass = (a: number, b: number) => (b > a ? error.cdf(b - y) - error.cdf(a - y) : 0)
  const all = mass(prior.low, prior.high)
  if (all <= 0) return clamped(y < prior.low === low <= prior.low ? 1 : 0)
  return clamped(mass(Math.max(low, prior.low), Math.min(high, prior.high)) / all)
}

/** Limits as numbers, an open side as an infinity. */
export function checkedLimits({ low, high }: Limits): { low: number; high: number } {
  const from = low ?? Number.NEGATIVE_INFINITY
  const to = high ?? Number.POSITIVE_INFINITY
  if (from < to && (low !== undefined || high !== undefined)) return { low: from, high: to }
  throw measureRefusal(
    'bad-limits',
    'limits',
    `${low ?? 'none'} … ${high ?? 'none'}`,
    `Limits from ${low ?? 'none'} to ${high ?? 'none'} enclose nothing that can be decided.`,
    'Give a lower limit, an upper one, or both with the lower first.',
  )
}

const clamped = (p: number) => Math.min(1, Math.max(0, p))

function checkWidth(width: number): void {
  if (width > 0 && Number.isFinite(width)) return
  throw measureRefusal(
    'not-positive',
    'prior',
    width,
    `A population of width ${width} leaves nothing to measure.`,
    'Give the spread of the vehicles seen, above zero, or take the flat prior.',
  )
}

/** Both masses on cells of whichever is narrower, so that neither slips between two points. */
function underPopulation(
  y: number,
  { cdf, u }: ErrorDistribution,
  limits: { low: number; high: number },
  { mean, sd }: { mean: number; sd: number },
): number {
  const inside = (x: number) => x >= limits.low && x <= limits.high
  let all = 0
  let hit = 0
  const add = (x: number, weight: number) => {
    all += weight
    if (inside(x)) hit += weight
  }
  const width = 2 * REACH * Math.min(u, sd)
  const centre = u <= sd ? y : mean
  const edges = cellEdges(centre - width / 2, centre + width / 2, limits)
  for (let i = 1; i < edges.length; i++) {
    const [a, b] = [edges[i - 1]!, edges[i]!]
    const x = (a + b) / 2
    if (u <= sd) add(x, (cdf(b - y) - cdf(a - y)) * normalDensity((x - mean) / sd))
    else {
      const density = (cdf(x + sd / CELLS - y) - cdf(x - sd / CELLS - y)) * CELLS
      add(x, (normalCdf((b - mean) / sd) - normalCdf((a - mean) / sd)) * density)
    }
  }
  // A reading so far from the population that both masses vanish: the population decides by its own mass.
  if (!(all > 0)) return clamped(normalCdf((limits.high - mean) / sd) - normalCdf((limits.low - mean) / sd))
  return clamped(hit / all)
}

/** Even cells, with the limits among the edges. */
function cellEdges(from: number, to: number, limits: { low: number; high: number }): number[] {
  const edges = Array.from({ length: CELLS + 1 }, (_, i) => from + ((to - from) * i) / CELLS)
  for (const limit of [limits.low, limits.high]) if (limit > from && limit < to) edges.push(limit)
  return edges.sort((a, b) => a - b)
}
