import { choleskyOf, covarianceMatrix, type LeastSquares, leastSquares } from '../../measure/index.ts'
import { Refusal } from '../../quantity/index.ts'
import type { CornerRefusal } from '../parse-clock.ts'
import { cornerAt } from './corner-at.ts'
import type { CornerMeasurement } from './observable.ts'
import type { FitPrior } from './prior-of.ts'
import type { Unknowns } from './unknowns.ts'

/** Where a corner lies between its prior and some measurements. */
export interface LeastOf {
  readonly values: readonly number[]
  readonly covariance: readonly (readonly number[])[]
  readonly sumOfSquares: number
  /** Spread left along the prior's independent directions: 1 where nothing was learned. */
  readonly left: readonly (readonly number[])[]
}

/**
 * Least squares over the independent directions z of the prior: measurements over the root of their covariance, and z
 * itself as rows of spread 1.
 *
 * @throws {Refusal} `no-spread` for a measurement without uncertainty, or two that are one error; `not-fitted`; what the
 *   observables throw at the start
 */
export function leastOf(
  unknowns: Unknowns,
  prior: FitPrior,
  measurements: readonly CornerMeasurement[],
): LeastOf {
  const root = rootOf(measurements)
  const { columns, mean } = prior
  const valuesAt = (z: ArrayLike<number>) =>
    mean.map((value, i) => columns.reduce((sum, column, k) => sum + column[i]! * z[k]!, value))
  /** Divides by the lower triangle: errors that are shared are counted once. */
  const whitened = (raw: readonly number[]) => {
    const out = [...raw]
    for (let i = 0; i < out.length; i++) {
      for (let j = 0; j < i; j++) out[i]! -= root[i]![j]! * out[j]!
      out[i]! /= root[i]![i]!
    }
    return out
  }
  const identity = columns.map((_, k) => columns.map((__, l) => (k === l ? 1 : 0)))
  const rows = (z: ArrayLike<number>) => {
    const corner = cornerAt(unknowns, valuesAt(z))
    const seen = measurements.map(({ of }) => of.at(corner))
    const off = whitened(seen.map(({ value }, i) => value - measurements[i]!.read.value))
    const along = columns.map((column) =>
      whitened(seen.map(({ slopes }) => column.reduce((sum, x, i) => sum + x * slopes[i]!, 0))),
    )
    return {
      residuals: [...off, ...Array.from(z)],
      slopes: [...measurements.map((_, m) => along.map((column) => column[m]!)), ...identity],
    }
  }
  const start = columns.map(() => 0)
  // at the start a refusal is the answer; further on it is a place not to go to
  rows(start)
  const tried = (z: ArrayLike<number>) => {
    try {
      return rows(z)
    } catch (error) {
      if (error instanceof Refusal) return null
      throw error
    }
  }
  const found: LeastSquares = leastSquares({ start, rows: tried, reach: 300, most: 120, enough: 1e-12 })
  if (!found.settled)
    throw new Refusal<CornerRefusal>({
      code: 'not-fitted',
      at: 'measurements',
      given: `${measurements.length} measurements`,
      sentence: 'No corner of this layout near the typical one has these measurements.',
      remedy: 'Check the units and which points were measured, or start from another layout.',
    })
  const values = valuesAt(found.at)
  const covariance = values.map((_, i) =>
    values.map((__, j) => {
      let sum = 0
      for (let k = 0; k < columns.length; k++) {
        const left = columns[k]![i]!
        if (left === 0) continue
        for (let l = 0; l < columns.length; l++) sum += left * found.covariance[k]![l]! * columns[l]![j]!
      }
      return sum
    }),
  )
  return { values, covariance, sumOfSquares: found.sumOfSquares, left: found.covariance }
}

function rootOf(measurements: readonly CornerMeasurement[]): readonly (readonly number[])[] {
  const root = choleskyOf(covarianceMatrix(measurements.map(({ read }) => read)))
  const without = root.findIndex((row, i) => !(row[i]! > 0))
  if (without < 0) return root
  throw new Refusal<CornerRefusal>({
    code: 'no-spread',
    at: `measurements.${without}`,
    given: measurements[without]!.of.says,
    sentence: `“${measurements[without]!.of.says}” has no uncertainty of its own, so it cannot be weighed against the others.`,
    remedy: 'Say how well it was measured; give it once only.',
  })
}
