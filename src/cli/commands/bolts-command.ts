import { boltBook, foldJob } from '../../job/index.ts'
import type { Outcome } from '../files/outcome.ts'
import { readSources } from '../files/read-sources.ts'
import { boltsText } from '../text/bolts-text.ts'
import type { JobOptions } from './sheet-command.ts'

/** `axlewright bolts JOB`: every joint, what is still open first. Ends with 1 while one is open. */
export function boltsCommand(path: string, options: JobOptions): Outcome {
  const { job, corners, spec, kit } = readSources(path, options.with ?? [])
  const book = boltBook({ state: foldJob(job.entries), corners, spec, kit })
  return {
    out: options.json ? `${JSON.stringify(book, null, 2)}\n` : boltsText(book),
    code: book.every((line) => line.done) ? 0 : 1,
  }
}
