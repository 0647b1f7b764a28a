import { usUnits } from '../../quantity/index.ts'
import { learnedOfJobs } from '../../sheet/index.ts'
import type { Outcome } from '../files/outcome.ts'
import { jobsSources } from '../record/jobs-sources.ts'
import { learnedText } from '../text/learned-text.ts'

/** Options of `axlewright learned`. */
export interface LearnedOptions {
  readonly with?: readonly string[]
  readonly json?: boolean
  readonly us?: boolean
}

/** `axlewright learned JOB…`: what moves did in these jobs, and how often the first ones ended inside. Ends with 1 when nothing can be learned. */
export async function learnedCommand(jobs: readonly string[], options: LearnedOptions): Promise<Outcome> {
  const sources = await jobsSources(jobs, options.with ?? [])
  const learned = learnedOfJobs(sources, options.us ? { units: usUnits } : {})
  return {
    out: options.json ? `${JSON.stringify(learned, null, 2)}\n` : `${learnedText(learned).trim()}\n`,
    code: learned.jobs === 0 ? 1 : 0,
  }
}
