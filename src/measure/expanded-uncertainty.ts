import { share } from './measure-refusal.ts'
import type { Measured } from './measured.ts'
import { effectiveDof, standardUncertainty } from './spread.ts'
import { studentQuantile } from './student-quantile.ts'

/** A sum of fourth powers may leave 2 degrees of freedom as 1.9999999999. */
const ROUNDING = 1e-6

/**
 * Expanded uncertainty by the classical way, U = t(ν_eff)·u: to compare with certificates. `interval` is the
 * honest one where boxes dominate.
 *
 * @param coverage strictly between 0 and 1
 * @returns half-width, SI
 * @throws {Refusal} `bad-share`
 * @source JCGM 100:2008, G.4.1 and G.6.4 (dof cut to a whole number when finite)
 * @example expandedUncertainty(normal(1, 'a')) // 1.95996
 */
export function expandedUncertainty(m: Measured, coverage = 0.95): number {
  const dof = effectiveDof(m)
  const whole = Number.isFinite(dof) && dof >= 1 ? Math.floor(dof + ROUNDING) : dof
  return studentQuantile((1 + share(coverage, 'coverage')) / 2, whole) * standardUncertainty(m)
}
