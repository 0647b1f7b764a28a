import { usUnits } from '../../quantity/index.ts'
import { fitOfJob } from '../../sheet/index.ts'
import type { Outcome } from '../files/outcome.ts'
import { jobSources } from '../record/job-sources.ts'
import { fitText } from '../text/fit-text.ts'
import type { JobOptions } from './sheet-command.ts'

/** `axlewright fit JOB`: the corner models fitted to what was measured. Ends with 1 when a reading cannot be right. */
export async function fitCommand(job: string, options: JobOptions): Promise<Outcome> {
  const fit = fitOfJob(await jobSources(job, options.with ?? []), options.us ? { units: usUnits } : {})
  const wrong = fit.troubles.length > 0 || fit.wheels.some(({ grossError }) => grossError !== null)
  return {
    out: options.json ? `${JSON.stringify(fit, null, 2)}\n` : `${fitText(fit).trim()}\n`,
    code: wrong ? 1 : 0,
  }
}
