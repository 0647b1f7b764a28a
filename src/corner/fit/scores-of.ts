import { covarianceMatrix, solveSymmetric } from '../../measure/index.ts'
import { cornerAt } from './corner-at.ts'
import type { LeastOf } from './least-of.ts'
import type { CornerMeasurement } from './observable.ts'
import type { Unknowns } from './unknowns.ts'

/** How a measurement agrees with all the others and the prior. */
export interface Score {
  readonly fitted: number
  readonly off: number
  /** Over its own standard deviation: normal with spread 1 when the measurement is sound. */
  readonly score: number
  /** How far it is off by what the others say, and the standard uncertainty of that. */
  readonly error: number
  readonly errorSpread: number
}

/**
 * Each measurement against what the others say of it.
 *
 *     Q = C − H Σ Hᵀ,   score = (C⁻¹ v)ᵢ / √(C⁻¹ Q C⁻¹)ᵢᵢ,   error = (C⁻¹ v)ᵢ / (C⁻¹ Q C⁻¹)ᵢᵢ
 *
 * with v measured − fitted, C their covariance, H the slopes and Σ the covariance of the fit.
 *
 * @source Baarda: A testing procedure for use in geodetic networks (1968), from memory; docs/methods/fit.md
 */
export function scoresOf(
  unknowns: Unknowns,
  fit: LeastOf,
  measurements: readonly CornerMeasurement[],
): readonly Score[] {
  if (measurements.length === 0) return []
  const corner = cornerAt(unknowns, fit.values)
  const seen = measurements.map(({ of }) => of.at(corner))
  const c = covarianceMatrix(measurements.map(({ read }) => read))
  const spread = seen.map(({ slopes }) =>
    fit.covariance.map((row) => row.reduce((sum, x, j) => sum + x * slopes[j]!, 0)),
  )
  const q = c.map((row, i) =>
    row.map((x, j) => x - seen[j]!.slopes.reduce((sum, slope, k) => sum + slope * spread[i]![k]!, 0)),
  )
  const v = measurements.map(({ read }, i) => read.value - seen[i]!.value)
  const pull = solveSymmetric(c, v)
  return measurements.map((_, i) => {
    const row = solveSymmetric(
      c,
      v.map((__, j) => (i === j ? 1 : 0)),
    )
    const weight = row.reduce((sum, x, a) => sum + x * q[a]!.reduce((s, y, b) => s + y * row[b]!, 0), 0)
    const sure = Math.sqrt(Math.max(weight, 0))
    return {
      fitted: seen[i]!.value,
      off: v[i]!,
      score: sure > 0 ? pull[i]! / sure : 0,
      error: weight > 0 ? pull[i]! / weight : 0,
      errorSpread: sure > 0 ? 1 / sure : Number.POSITIVE_INFINITY,
    }
  })
}
