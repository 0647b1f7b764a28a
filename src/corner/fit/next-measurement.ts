import { standardUncertainty } from '../../measure/index.ts'
import { Refusal } from '../../quantity/index.ts'
import { cornerAt } from './corner-at.ts'
import type { FittedCorner } from './fitted-corner.ts'
import { foreseenOf } from './foreseen-of.ts'
import type { Observable } from './observable.ts'
import type { Seen } from './seen-lazily.ts'
import { type WorkshopMeasurement, workshopMeasurements } from './workshop-measurements.ts'

/** What one measurement more would do for an answer. @source definition */
export interface NextMeasurement {
  readonly measurement: WorkshopMeasurement
  /** Standard uncertainty of the answer now and after it, m or rad. */
  readonly now: number
  readonly after: number
}

/**
 * Measurements ranked by how far each would shrink the spread of an answer, before anyone takes it: what it will show is not
 * needed for that, only how it hangs together with the question.
 *
 *     after² = now² − (gᵀ Σ h)² / (hᵀ Σ h + u²),   g, h slopes of question and measurement, u its usual spread, and what its slope
 * misleads by
 *
 * @param candidates what can be measured; default: everything a workshop usually can
 * @returns the most useful first; one that cannot be worked out for this corner is left out
 * @throws {Refusal} `unreachable`, `not-for-this-layout` and what else the question throws on this corner
 * @source Gaussian conditioning (JCGM 102:2011, 6 for the covariances); docs/methods/fit.md
 */
export function nextMeasurements(
  fit: FittedCorner,
  question: Observable,
  candidates: readonly WorkshopMeasurement[] = workshopMeasurements(fit.corner),
): readonly NextMeasurement[] {
  const corner = cornerAt(fit.unknowns, fit.values)
  const now = standardUncertainty(foreseenOf(fit, question))
  const { slopes } = question.at(corner)
  const asked = spread(fit, slopes)
  const straight = dot(slopes, asked)
  // what the slopes' own change adds shrinks with the rest
  const grown = straight > 0 ? now / Math.sqrt(straight) : 1
  return candidates
    .flatMap((measurement) => {
      const seen = reachable(() => measurement.of.at(corner))
      if (!seen) return []
      const own = spread(fit, seen.slopes)
      const along = dot(seen.slopes, own)
      const shared = dot(seen.slopes, asked)
      const bend = measurement.of.bend?.(corner, fit.covariance) ?? 0
      const left = straight - shared ** 2 / (along + measurement.spread ** 2 + bend ** 2)
      return [{ measurement, now, after: grown * Math.sqrt(Math.max(left, 0)) }]
    })
    .sort((a, b) => a.after - b.after || a.measurement.minutes - b.measurement.minutes)
}

/** Σ · slopes. */
const spread = ({ covariance }: FittedCorner, slopes: ArrayLike<number>): number[] =>
  covariance.map((row) => dot(row, slopes))

const dot = (a: ArrayLike<number>, b: ArrayLike<number>): number => {
  let sum = 0
  for (let i = 0; i < a.length; i++) sum += a[i]! * b[i]!
  return sum
}

function reachable(look: () => Seen): Seen | null {
  try {
    return look()
  } catch (error) {
    if (error instanceof Refusal) return null
    throw error
  }
}
