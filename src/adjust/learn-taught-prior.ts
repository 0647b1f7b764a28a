import type { TaughtByJobs } from './learn-across-jobs.ts'
import type { Belief } from './learn-information.ts'
import type { PastJob } from './learn-past.ts'
import { roleOf } from './learn-role.ts'
import { beliefAt } from './learn-tree.ts'
import type { LearnedResponse } from './learned-response.ts'
import { priorResponse } from './prior-response.ts'
import type { WheelSetup } from './problem.ts'
import type { PointsKnown } from './response-prior.ts'

/**
 * The response of a corner before any move of this job: what its points say, corrected by what past jobs have taught of this
 * vehicle, its model and its layout. Where no job of this layout was given it is `priorResponse`, exactly.
 *
 * @param who vehicle, model and layout that are asked about; its own job is left out of the past by the caller
 * @source own derivation: docs/methods/learned-response.md
 */
export function taughtPrior(
  wheel: WheelSetup,
  { known, source }: { readonly known: PointsKnown; readonly source: string },
  { subjects, splits }: TaughtByJobs,
  who: Pick<PastJob, 'vehicle' | 'model' | 'layout'>,
): LearnedResponse {
  const prior = priorResponse(wheel, { known, source })
  const mean = [...prior.mean]
  const covariance = [...prior.covariance]
  const n = wheel.adjusters.length
  const count = mean.length
  prior.angles.forEach((angle, a) => {
    const s = subjects.findIndex((one) => one.layout === who.layout && one.angle === angle)
    if (s < 0) return
    // a new visit: its name stands in no tree
    const path = [who.layout, who.model, who.vehicle, '']
    const { mean: z, covariance: of } = averaged(
      splits.map(({ trees, weight }) => ({ weight, belief: beliefAt(trees[s]!, path) })),
    )
    const columns = wheel.adjusters.map((adjuster, j) => {
      const { role, sign } = roleOf(adjuster)
      const at = subjects[s]!.roles.indexOf(role)
      return { at, u: sign * Math.sqrt(prior.covariance[(a * n + j) * (count + 1)]!) }
    })
    columns.forEach((p, i) => {
      if (p.at < 0) return
      mean[a * n + i] = p.u * z[p.at]!
      columns.forEach((q, j) => {
        if (q.at >= 0) covariance[(a * n + i) * count + a * n + j] = p.u * q.u * of[p.at]![q.at]!
      })
    })
  })
  return { ...prior, mean, covariance }
}

/** Mean and covariance of a mixture. */
function averaged(parts: readonly { readonly weight: number; readonly belief: Belief }[]): Belief {
  const mean = parts[0]!.belief.mean.map((_, i) =>
    parts.reduce((sum, { weight, belief }) => sum + weight * belief.mean[i]!, 0),
  )
  const off = (belief: Belief, i: number) => belief.mean[i]! - mean[i]!
  return {
    mean,
    covariance: mean.map((_, i) =>
      mean.map((__, j) =>
        parts.reduce(
          (sum, { weight, belief }) =>
            sum + weight * (belief.covariance[i]![j]! + off(belief, i) * off(belief, j)),
          0,
        ),
      ),
    ),
  }
}
