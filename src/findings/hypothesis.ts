import type { Family } from './family.ts'
import { type History, logEvidence, type Story, type Unknown } from './history.ts'
import type { Knob } from './knobs.ts'
import { type KindPrior, suspectPriors } from './suspect-priors.ts'
import { type Truncated, truncatedNormal } from './truncated-normal.ts'
import type { VehicleModel } from './vehicle-model.ts'

/** A family as the readings see it: how well it explains them, and how large it then is. */
export interface Hypothesis {
  readonly family: Family
  /** Log of its evidence over all stories. */
  readonly log: number
  /** Size in units of the family's ways, and its standard uncertainty. */
  readonly size: number
  readonly spread: number
  /** Best values of the side ways. */
  readonly beside: readonly number[]
}

/** How likely each story is. */
export type StoryWeights = Readonly<Partial<Record<Story, number>>>

/** Sizes of adjusters count in thousandths of half their range. @source definition */
const halfRanges = 1000

const cut: Truncated = { logShare: 0, mean: 0, variance: 1 }

/** Log of the sum of exponentials. @source definition */
export function logSum(values: readonly number[]): number {
  const top = Math.max(...values)
  if (top === Number.NEGATIVE_INFINITY) return top
  return top + Math.log(values.reduce((sum, x) => sum + Math.exp(x - top), 0))
}

/**
 * Evidence and size of one family: its unknowns are integrated over together with the adjusters, in every story.
 *
 * @source own derivation: docs/methods/findings.md
 */
export function hypothesisOf(
  family: Family,
  {
    histories,
    knobs,
    now,
    weights,
  }: {
    readonly histories: readonly History[]
    readonly knobs: readonly Knob[]
    readonly now: VehicleModel
    readonly weights: StoryWeights
  },
): Hypothesis {
  const prior = { ...suspectPriors[family.suspect.kind], ...family.size }
  const main = now.rate(family.main)
  const beside = family.also.map(({ way }) => now.rate(way))
  const found = histories.flatMap((history) => {
    const weight = weights[history.story] ?? 0
    if (weight === 0) return []
    const column = family.late ? history.lately : history.column
    // where an adjuster stands now is its own unknown; what it did before is told by what was set
    const whole =
      family.knob === undefined ? column(main) : scaled(history.since(family.knob), halfRanges)
    const sideways = [
      ...family.also.map(({ spread, mean = 0 }, i): Unknown => ({
        column: scaled(column(beside[i]!), spread),
        mean: mean / spread,
        low: Number.NEGATIVE_INFINITY,
        high: Number.POSITIVE_INFINITY,
      })),
    ]
    const first = history.knobs.length
    return ([1, -1] as const).flatMap((way) => {
      const share = way > 0 ? 1 - prior.back : prior.back
      if (share === 0) return []
      const all = logEvidence(history, knobs, [mainUnknown(whole, prior, way), ...sideways])
      return [
        {
          log: Math.log(weight * share) + all.log - logShare(prior),
          size: way * all.mean[first]! * prior.spread,
          variance: all.variance[first]! * prior.spread ** 2,
          beside: family.also.map(({ spread }, i) => all.mean[first + 1 + i]! * spread),
        },
      ]
    })
  })
  const log = logSum(found.map((one) => one.log))
  const shares = found.map((one) => Math.exp(one.log - log))
  const mean = (of: (one: (typeof found)[number]) => number): number =>
    found.reduce((sum, one, i) => sum + shares[i]! * of(one), 0)
  const size = mean((one) => one.size)
  return {
    family,
    log,
    size,
    spread: Math.sqrt(mean((one) => one.variance + (one.size - size) ** 2)),
    beside: family.also.map((_, i) => mean((one) => one.beside[i]!)),
  }
}

function mainUnknown(column: Float64Array, { mean, spread, low, high }: KindPrior, way: 1 | -1): Unknown {
  return { column: scaled(column, way * spread), mean: mean / spread, low: low / spread, high: high / spread }
}

/** Log of the share of a normal distribution that the ends of the size leave. */
function logShare({ mean, spread, low, high }: KindPrior): number {
  truncatedNormal((low - mean) / spread, (high - mean) / spread, cut)
  return cut.logShare
}

const scaled = (column: Float64Array, k: number): Float64Array => column.map((x) => k * x)
