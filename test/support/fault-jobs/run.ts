import type { Findings, FindingsProblem } from '../../../src/findings/index.ts'
import { type FaultJob, type FaultJobOptions, faultJob } from './fault-job.ts'
import { halved } from './halved.ts'
import { type Scored, scored } from './score.ts'

export type Rank = (problem: FindingsProblem) => Findings

/** Simulated jobs with these seeds, one after another, and how each answer stands to the truth. */
export function run(
  rank: Rank,
  {
    n,
    seed,
    half = false,
    options = {},
  }: {
    readonly n: number
    readonly seed: number
    /** With every spread halved. */
    readonly half?: boolean
    readonly options?: FaultJobOptions
  },
): readonly Scored[] {
  return Array.from({ length: n }, (_, i) => {
    const job: FaultJob = faultJob(seed + i, options)
    const problem = half ? halved(job.problem) : job.problem
    const start = performance.now()
    const answer = rank(problem)
    return scored(job, answer, performance.now() - start)
  })
}
