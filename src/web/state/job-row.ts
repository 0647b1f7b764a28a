import type { Job } from '../../job/index.ts'
import { jobLineOf } from '../../sheet/index.ts'
import type { LibraryJob } from './library.ts'
import type { JobRow } from './messages.ts'
import { textMark } from './text-mark.ts'

/** The row of a job that came with the page. */
export const demoRow = ({ id, job }: LibraryJob): JobRow => ({
  ...rowOf(id, job),
  mark: textMark(JSON.stringify(job.entries)),
  day: dayOf(job),
  kept: false,
  version: '',
})

/** The row of a job that is kept on this device. */
export const keptRow = (id: string, job: Job, version: string): JobRow => ({
  ...rowOf(id, job),
  // What is typed and not sealed yet is laid on whatever its log holds.
  mark: 'kept',
  day: null,
  kept: true,
  version,
})

function rowOf(
  id: string,
  job: Job,
): Pick<JobRow, 'id' | 'vehicle' | 'job' | 'workshop' | 'source' | 'line'> {
  const line = jobLineOf(job)
  return {
    id,
    vehicle: line.vehicle,
    job: `Job ${job.job}`,
    workshop: job.workshop,
    source: line.invented ? 'invented for the demo' : job.workshop,
    line,
  }
}

/** A job that was invented for the demo goes on on its own last day: its wrenches are calibrated then. */
export const dayOf = ({ entries }: Job): string | null =>
  entries.find(({ kind }) => kind === 'opened')?.data['invented'] === true
    ? (entries.findLast(({ at }) => at)?.at?.slice(0, 10) ?? null)
    : null
