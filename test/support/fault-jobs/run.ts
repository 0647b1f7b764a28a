import type { Findings, FindingsOptions, FindingsProblem } from '../../../src/findings/index.ts'
import { type FaultJob, type FaultJobOptions, faultJob } from './fault-job.ts'
import { type Scored, scored } from './score.ts'

export type Rank = (problem: FindingsProblem, options?: FindingsOptions) => Findings

/** Simulated jobs with these seeds, one after another, and how each answer stands to the truth. */
export function run(
  rank: Rank,
  {
    n,
    seed,
    spreads = 1,
    options = {},
  }: {
    readonly n: number
    readonly seed: number
    /** Everything that the judge believes of spreads, so many times over. */
    readonly spreads?: number
    readonly options?: FaultJobOptions
  },
): readonly Scored[] {
  return Array.from({ length: n }, (_, i) => {
    const job: FaultJob = faultJob(seed + i, options)
    const start = performance.now()
    const answer = rank(job.problem, { spreads })
    return scored(job, answer, performance.now() - start)
  })
}
