import { metricUnits, usUnits } from '../../quantity/index.ts'
import { findingsOfJob } from '../../sheet/index.ts'
import { buildJob } from './build-job.ts'
import type { FindingsAnswer, FindingsAsk } from './findings-messages.ts'
import { noJob } from './no-job.ts'
import { plainOf } from './plain-of.ts'
import type { Shelf } from './shelf.ts'

/** The findings of a job with these edits. */
export async function findingsAnswer(
  shelf: Shelf,
  { turn, job: id, version, edits, units, round }: FindingsAsk,
): Promise<FindingsAnswer> {
  let start = performance.now()
  try {
    const found = await shelf.find(id, version)
    if (!found) return { turn, sheet: null, took: 0, trouble: noJob(id) }
    start = performance.now()
    const sheet = findingsOfJob(
      { ...found, job: buildJob(found.job, edits).job },
      { units: units === 'US' ? usUnits : metricUnits, ...(round === null ? {} : { round }) },
    )
    return { turn, sheet, took: performance.now() - start, trouble: null }
  } catch (error) {
    return { turn, sheet: null, took: performance.now() - start, trouble: plainOf(error) }
  }
}
