import { metricUnits, usUnits } from '../../quantity/index.ts'
import { findingsOfJob } from '../../sheet/index.ts'
import { buildJob } from './build-job.ts'
import type { FindingsAnswer, FindingsAsk } from './findings-messages.ts'
import type { LibraryJob } from './library.ts'
import { plainOf } from './plain-of.ts'

/** The findings of a job with these edits. */
export function findingsAnswer(
  jobs: readonly LibraryJob[],
  { turn, job: id, edits, units, round }: FindingsAsk,
): FindingsAnswer {
  const found = jobs.find((job) => job.id === id)
  if (!found)
    return {
      turn,
      sheet: null,
      took: 0,
      trouble: { sentence: `There is no job "${id}" on this page.`, remedy: 'Choose one under Jobs.' },
    }
  const start = performance.now()
  try {
    const sheet = findingsOfJob(
      { ...found, job: buildJob(found.job, edits).job },
      { units: units === 'US' ? usUnits : metricUnits, ...(round === null ? {} : { round }) },
    )
    return { turn, sheet, took: performance.now() - start, trouble: null }
  } catch (error) {
    return { turn, sheet: null, took: performance.now() - start, trouble: plainOf(error) }
  }
}
