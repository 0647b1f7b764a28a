import type { Family } from './family.ts'
import type { History, Story } from './history.ts'
import { logEvidence, type Unknown } from './log-evidence.ts'
import { logSum } from './log-sum.ts'
import { scaledColumn } from './scaled-column.ts'
import { type KindPrior, suspectPriors } from './suspect-priors.ts'
import { type Truncated, truncatedNormal } from './truncated-normal.ts'
import type { VehicleModel } from './vehicle-model.ts'

/** How one story explains what was read, at its best. */
export interface Explained {
  readonly history: History
  /** What it leaves of the rows, in units of their errors. */
  readonly left: Float64Array
  /** Adjusters that nobody saw, in half ranges, and the variance of that. */
  readonly knobs: Float64Array
  readonly knobVariance: Float64Array
}

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
  /** What it does to the vehicle: main way and side ways, per unit. */
  readonly main: Float64Array
  readonly sides: readonly Float64Array[]
  /** Its likeliest story. */
  readonly best: Explained
}

/** How likely each story is. */
export type StoryWeights = Readonly<Partial<Record<Story, number>>>

/** Sizes of adjusters count in thousandths of half their range. @source definition */
const halfRanges = 1000

const cut: Truncated = { logShare: 0, mean: 0, variance: 1 }

/** The prior of a family's size: its kind's, but for what it has of its own. @source definition */
export const sizeOf = ({ suspect, size }: Family): KindPrior => ({ ...suspectPriors[suspect.kind], ...size })

/**
 * Evidence and size of one family: its unknowns are integrated over together with the adjusters, in every story and
 * both ways that it may go.
 *
 * @source own derivation: docs/methods/findings.md
 */
export function hypothesisOf(
  family: Family,
  {
    histories,
    now,
    weights,
    chord = null,
  }: {
    readonly histories: readonly History[]
    readonly now: VehicleModel
    readonly weights: StoryWeights
    /** What the main way does per unit over its whole size, where that was found: in place of its rate. */
    readonly chord?: Float64Array | null
  },
): Hypothesis {
  const prior = sizeOf(family)
  const main = chord ?? now.rate(family.main)
  const sides = family.also.map(({ way }) => now.rate(way))
  const found = histories.flatMap((history) => {
    const weight = weights[history.story] ?? 0
    if (weight === 0) return []
    const column = family.late ? history.lately : history.column
    // where an adjuster stands now is its own unknown; where it stood is told by what was set
    const whole =
      family.knob === undefined ? column(main) : scaledColumn(history.since(family.knob), halfRanges)
    const sideways = family.also.map(
      ({ spread, mean = 0 }, i): Unknown => ({
        column: scaledColumn(column(sides[i]!), spread),
        mean: mean / spread,
        low: Number.NEGATIVE_INFINITY,
        high: Number.POSITIVE_INFINITY,
      }),
    )
    return ([1, -1] as const).flatMap((way) => {
      const share = way > 0 ? 1 - prior.back : prior.back
      if (share === 0) return []
      const unknowns = [mainUnknown(whole, prior, way), ...sideways]
      const all = logEvidence(history, unknowns)
      const first = history.knobs.length
      return [
        {
          log: Math.log(weight * share) + all.log - logShare(prior),
          size: way * all.mean[first]! * prior.spread,
          variance: all.variance[first]! * prior.spread ** 2,
          beside: family.also.map(({ spread }, i) => all.mean[first + 1 + i]! * spread),
          explained: (): Explained => explainedBy(history, unknowns, all),
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
    main: family.knob === undefined ? main : main.map(() => 0),
    sides,
    best: found[shares.indexOf(Math.max(...shares))]!.explained(),
  }
}

/** What a story leaves of the rows once its unknowns stand where they lie best. @source definition */
export function explainedBy(
  history: History,
  unknowns: readonly Unknown[],
  { mean, variance }: Pick<ReturnType<typeof logEvidence>, 'mean' | 'variance'>,
): Explained {
  const left = Float64Array.from(history.residual)
  const columns = [...history.knobs, ...unknowns.map(({ column }) => column)]
  columns.forEach((column, k) => {
    for (let i = 0; i < left.length; i++) left[i]! -= mean[k]! * column[i]!
  })
  const n = history.knobs.length
  return { history, left, knobs: mean.slice(0, n), knobVariance: variance.slice(0, n) }
}

/** The size of a family as an unknown, in units of its spread. */
function mainUnknown(column: Float64Array, { mean, spread, low, high }: KindPrior, way: 1 | -1): Unknown {
  return {
    column: scaledColumn(column, way * spread),
    mean: mean / spread,
    low: low / spread,
    high: high / spread,
  }
}

/** Log of the share of a normal distribution that the ends of the size leave. */
export function logShare({ mean, spread, low, high }: KindPrior): number {
  truncatedNormal((low - mean) / spread, (high - mean) / spread, cut)
  return cut.logShare
}
