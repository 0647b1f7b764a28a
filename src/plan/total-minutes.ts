import type { Action } from './action.ts'
import { meanMinutes } from './mean-minutes.ts'
import { minutesVariance } from './minutes-variance.ts'

/** How long a job takes: half of such jobs are done by p50, nine in ten by p90; minutes. @source definition */
export interface TotalMinutes {
  readonly p50: number
  readonly p90: number
  readonly mean: number
  readonly deviation: number
}

/** Standard normal quantile at 90 %. @source ISO 80000 style tables of the normal distribution; 1.2816 */
const quantile90 = 1.2815515655446004
/**
 * How much of an action's spread the actions of one job share: a rusty vehicle is rusty everywhere.
 *
 * @source from memory
 */
const shared = 0.25

/**
 * Minutes of a whole job: three-point times added up, the risk of each (a seized bolt with its chance) counted in, the
 * sum taken as log-normal with the same mean and variance.
 *
 * @param changes minutes of changing tool, place and side
 * @source Malcolm, Roseboom, Clark and Fazar 1959 for mean and variance of a three-point time; own derivation:
 *   docs/methods/plan.md
 */
export function totalMinutes(
  actions: readonly Pick<Action, 'minutes' | 'risk'>[],
  changes = 0,
): TotalMinutes {
  let mean = changes
  let own = 0
  let together = 0
  for (const { minutes, risk } of actions) {
    const variance = minutesVariance(minutes)
    mean += meanMinutes(minutes)
    own += (1 - shared) * variance
    together += Math.sqrt(shared * variance)
    if (!risk) continue
    const late = meanMinutes(risk.minutes)
    mean += risk.chance * late
    own += risk.chance * (minutesVariance(risk.minutes) + late * late) - (risk.chance * late) ** 2
  }
  const variance = own + together * together
  if (!(mean > 0)) return { p50: 0, p90: 0, mean: 0, deviation: 0 }
  const sigma2 = Math.log(1 + variance / (mean * mean))
  const p50 = mean / Math.sqrt(1 + variance / (mean * mean))
  return { p50, p90: p50 * Math.exp(quantile90 * Math.sqrt(sigma2)), mean, deviation: Math.sqrt(variance) }
}
