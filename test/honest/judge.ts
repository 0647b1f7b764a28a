import { combine, decide, interval, type Measured } from '../../src/measure/index.ts'
import { type Chance, chance } from './truth-random.ts'

/** One quantity as one method reads it. Angles in rad, lengths in m. */
export interface Method {
  readonly name: string
  /** Limits are centre ± limit; flat truths lie evenly over centre ± range. */
  readonly centre: number
  readonly limit: number
  readonly range: number
  /** Reads a vehicle whose true value is this. */
  readonly read: (truth: number, random: Chance) => Measured
}

export interface Judgement {
  readonly name: string
  readonly coverage: number
  /** Ten bins of the open answers: stated and observed share inside, distance in binomial standard errors. */
  readonly bins: readonly { readonly stated: number; readonly observed: number; readonly errors: number }[]
  /** Of the truly inside: called inside, by us and by a decider who knows the true spread. */
  readonly called: number
  readonly ideal: number
}

export type Truths = 'flat' | 'population'

const OPEN = [0.005, 0.995] as const
const BINS = 10

/** Draws truths, reads them, decides, and holds the decisions against the truths. */
export function judge(
  method: Method,
  {
    n,
    seed,
    truths,
    halved = false,
    prior = truths,
  }: { n: number; seed: number; truths: Truths; halved?: boolean; prior?: Truths },
): Judgement {
  const random = chance(seed)
  const { centre, limit, range } = method
  const limits = { low: centre - limit, high: centre + limit }
  // The population: most vehicles good, its spread a little over half the limit.
  const population = { mean: centre + limit / 4, sd: 0.6 * limit }
  const isInside = (x: number) => x >= limits.low && x <= limits.high
  const cases: { p: number; inside: boolean; called: boolean; value: number; error: number }[] = []
  let covered = 0
  for (let i = 0; i < n; i++) {
    const truth =
      truths === 'flat' ? centre + random.within(range) : population.mean + random.normal(population.sd)
    const read = method.read(truth, random)
    const m = halved ? { ...combine([{ of: read, times: 0.5 }]), value: read.value } : read
    const { low, high } = interval(m)
    if (truth >= low && truth <= high) covered++
    const { probability: p, verdict } = decide(m, limits, prior === 'flat' ? {} : { prior: population })
    cases.push({
      p,
      inside: isInside(truth),
      called: verdict === 'inside',
      value: m.value,
      error: truth - m.value,
    })
  }
  const open = cases.filter(({ p }) => p > OPEN[0] && p < OPEN[1]).sort((a, b) => a.p - b.p)
  const bins = Array.from({ length: BINS }, (_, b) => {
    const bin = open.slice(Math.floor((b * open.length) / BINS), Math.floor(((b + 1) * open.length) / BINS))
    const stated = bin.reduce((sum, { p }) => sum + p, 0) / bin.length
    const observed = bin.filter(({ inside }) => inside).length / bin.length
    const error = Math.sqrt(bin.reduce((sum, { p }) => sum + p * (1 - p), 0)) / bin.length
    // A count moves by whole cases: half a case is taken off, as always when a count is held against a normal.
    return { stated, observed, errors: Math.max(0, Math.abs(observed - stated) - 0.5 / bin.length) / error }
  })
  const truly = cases.filter(({ inside }) => inside)
  const errors = Float64Array.from(cases, ({ error }) => error).sort()
  return {
    name: method.name,
    coverage: covered / n,
    bins,
    called: truly.filter(({ called }) => called).length,
    ideal: truly.filter(
      ({ value }) => idealProbability(value, errors, { limits, truths, population }) >= 0.95,
    ).length,
  }
}

/** From the errors that truly happened: the share of them that puts the truth inside. */
function idealProbability(
  value: number,
  errors: Float64Array,
  {
    limits,
    truths,
    population,
  }: { limits: { low: number; high: number }; truths: Truths; population: { mean: number; sd: number } },
): number {
  if (truths === 'flat')
    return (below(errors, limits.high - value) - below(errors, limits.low - value)) / errors.length
  let all = 0
  let inside = 0
  // Five hundred of them are plenty, and keep this from growing with the square of the draws.
  for (let i = 0; i < errors.length; i += Math.max(1, Math.floor(errors.length / 500))) {
    const truth = value + errors[i]!
    const weight = Math.exp(-(((truth - population.mean) / population.sd) ** 2) / 2)
    all += weight
    if (truth >= limits.low && truth <= limits.high) inside += weight
  }
  return inside / all
}

function below(sorted: Float64Array, x: number): number {
  let [low, high] = [0, sorted.length]
  while (low < high) {
    const middle = (low + high) >> 1
    if (sorted[middle]! < x) low = middle + 1
    else high = middle
  }
  return low
}
