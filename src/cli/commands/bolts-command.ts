import { usUnits } from '../../quantity/index.ts'
import { boltSheetFrom } from '../../sheet/index.ts'
import type { Outcome } from '../files/outcome.ts'
import { jobSources } from '../record/job-sources.ts'
import { boltsText } from '../text/bolts-text.ts'
import type { JobOptions } from './sheet-command.ts'

/** `axlewright bolts JOB`: every joint, what is still open first and what to do now. Ends with 1 while one is open. */
export async function boltsCommand(path: string, options: JobOptions): Promise<Outcome> {
  const book = boltSheetFrom(await jobSources(path, options.with ?? []), options.us ? { units: usUnits } : {})
  return {
    out: options.json ? `${JSON.stringify(book, null, 2)}\n` : boltsText(book),
    code: book.bolts.every((bolt) => bolt.done) ? 0 : 1,
  }
}
