import { normal, normalQuantile, singularValues } from '../../measure/index.ts'
import { metre } from '../../quantity/index.ts'
import type { Corner } from '../corner-schema.ts'
import type { FitResidual, FittedCorner, GrossError } from './fitted-corner.ts'
import { type LeastOf, leastOf } from './least-of.ts'
import type { CornerMeasurement } from './observable.ts'
import { type FitPrior, priorOf } from './prior-of.ts'
import { type Score, scoresOf } from './scores-of.ts'
import { isOpen, undeterminedPoints } from './undetermined-points.ts'
import { cornerWith, type Unknowns, unknownsOf } from './unknowns.ts'
import { withBends } from './with-bends.ts'

/** How a corner is fitted. @source definition */
export interface FitOptions {
  /**
   * What is known before: `population`, the vehicle is one of those its layout is typical of; `points`, only the spread that
   * the file gives each point. Default: `points` where any point is known to 5 mm or better, since that one was measured.
   */
  readonly prior?: 'population' | 'points'
}

/** What is fitted. @source definition */
export interface FitTask {
  /** The corner model before: typical, or measured in part. */
  readonly corner: Corner
  readonly measurements: readonly CornerMeasurement[]
  readonly options?: FitOptions
}

/** A point that is known to this was measured on the vehicle, m. */
const measuredWithin = 0.005
/** A score past this (3.29) happens by chance once in a thousand sound readings, to either side. */
const grossFrom = normalQuantile(1 - 0.001 / 2)
/** An error this many spreads large passes `grossFrom` four times in five. */
const foundAt = grossFrom + normalQuantile(0.8)
/** Readings that explain a misfit nearly as well: their sums of squares differ by less than this. */
const alike = 3.84

/**
 * Fits a corner model to what was measured on a vehicle: least squares between the prior of its layout and all
 * measurements. One reading that cannot be right is found, named and left out.
 *
 * @returns points with spreads, the covariance of everything that was open, residuals, what is still undetermined
 * @throws {Refusal} `no-spread`; `no-such-point`; `not-for-this-layout` for a measurement that this layout cannot have;
 *   `not-fitted`; what the linkage room says of a corner that cannot be
 * @source own derivation: docs/methods/fit.md
 */
export function fitCorner({ corner, measurements, options = {} }: FitTask): FittedCorner {
  const unknowns = unknownsOf(corner)
  const typical = unknowns.points.every((name) => (corner.points[name]?.spread ?? 0) > measuredWithin)
  const prior = priorOf(unknowns, options.prior ?? (typical ? 'population' : 'points'))
  const { weighed, fit: whole } = weigh(unknowns, prior, measurements)
  const scores = scoresOf(unknowns, whole, weighed)
  const out = grossOf(unknowns, prior, weighed, scores)
  if (!out) return told(unknowns, prior, whole, residualsOf(measurements, scores, null), null, [])
  // as if it had never been measured
  const { weighed: kept, fit } = weigh(
    unknowns,
    prior,
    measurements.filter((_, i) => i !== out.index),
  )
  const after = scoresOf(unknowns, fit, kept)
  const { error } = scores[out.index]!
  const alone: Score = {
    ...scores[out.index]!,
    fitted: measurements[out.index]!.read.value - error,
    off: error,
  }
  const placed = measurements.map((_, i) => (i === out.index ? alone : after[i < out.index ? i : i - 1]!))
  const doubtful = placed.flatMap((one, i) => (i !== out.index && Math.abs(one.score) > grossFrom ? [i] : []))
  const gross = described(measurements, scores, out, doubtful.length > 0)
  return told(unknowns, prior, fit, residualsOf(measurements, placed, out.index), gross, doubtful)
}

/** A fit in two goes: the second knows by how much straight slopes mislead about what the first left open. */
function weigh(
  unknowns: Unknowns,
  prior: FitPrior,
  measurements: readonly CornerMeasurement[],
): { readonly weighed: readonly CornerMeasurement[]; readonly fit: LeastOf } {
  const fit = leastOf(unknowns, prior, measurements)
  const weighed = withBends(unknowns, fit, measurements)
  return weighed ? { weighed, fit: leastOf(unknowns, prior, weighed) } : { weighed: measurements, fit }
}

interface LeftOut {
  readonly index: number
  readonly orElse: readonly number[]
}

/** The reading whose leaving out makes the rest fit best, when one is past chance. */
function grossOf(
  unknowns: Unknowns,
  prior: FitPrior,
  measurements: readonly CornerMeasurement[],
  scores: readonly Score[],
): LeftOut | null {
  const suspects = scores
    .map((one, index) => ({ index, score: Math.abs(one.score) }))
    .filter(({ score }) => score > grossFrom)
    .sort((a, b) => b.score - a.score)
    .slice(0, 3)
  if (suspects.length === 0) return null
  const tried = suspects
    .map(({ index }) => ({
      index,
      fit: leastOf(
        unknowns,
        prior,
        measurements.filter((_, i) => i !== index),
      ),
    }))
    .sort((a, b) => a.fit.sumOfSquares - b.fit.sumOfSquares)
  const [best, ...others] = tried
  return {
    index: best!.index,
    orElse: others
      .filter(({ fit }) => fit.sumOfSquares - best!.fit.sumOfSquares < alike)
      .map(({ index }) => index),
  }
}

function residualsOf(
  measurements: readonly CornerMeasurement[],
  scores: readonly Score[],
  left: number | null,
): readonly FitResidual[] {
  return measurements.map((measurement, i) => {
    const { fitted, off, score, errorSpread } = scores[i]!
    return { measurement, fitted, off, score, foundFrom: foundAt * errorSpread, used: i !== left }
  })
}

function described(
  measurements: readonly CornerMeasurement[],
  scores: readonly Score[],
  { index, orElse }: LeftOut,
  more: boolean,
): GrossError {
  const { of } = measurements[index]!
  const { error, errorSpread } = scores[index]!
  const amount =
    of.unit === 'm'
      ? `${Math.abs(error * 1000).toFixed(0)} mm`
      : `${Math.abs((error * 180) / Math.PI).toFixed(1)}°`
  const others = orElse.map((i) => `“${measurements[i]!.of.says}”`)
  const tail = more
    ? 'Others do not fit either: measure again from the start, or look whether this is the right layout.'
    : others.length > 0
      ? `It was left out; ${others.join(' or ')} could be the wrong one as well. Measure both again.`
      : 'It was left out. Measure it again.'
  return {
    index,
    size: { ...normal(errorSpread, `${of.says}, by the others`), value: error },
    orElse,
    sentence: `“${of.says}” does not fit the others: it seems to be ${amount} too ${error > 0 ? 'large' : 'small'}. ${tail}`,
  }
}

function told(
  unknowns: Unknowns,
  prior: FitPrior,
  { values, covariance, left }: LeastOf,
  residuals: readonly FitResidual[],
  grossError: GrossError | null,
  alsoDoubtful: readonly number[],
): FittedCorner {
  const moved = cornerWith(unknowns, values)
  const points = { ...moved.points }
  for (const [i, name] of unknowns.points.entries()) {
    const spread = Math.sqrt(Math.max(...[0, 1, 2].map((axis) => covariance[3 * i + axis]![3 * i + axis]!)))
    if (spread > 0) points[name] = { ...points[name]!, spread: metre(spread) }
  }
  return {
    corner: { ...moved, points },
    unknowns,
    values,
    covariance,
    prior,
    residuals,
    grossError,
    alsoDoubtful,
    undetermined: undeterminedPoints(unknowns, prior, covariance),
    directions: { all: left.length, open: openOf(left) },
  }
}

/** Independent directions of the prior of which nothing was learned. */
function openOf(left: LeastOf['left']): number {
  const n = left.length
  const { values } = singularValues(Float64Array.from(left.flat()), n)
  return values.filter((value) => isOpen(Math.sqrt(value), 1)).length
}
