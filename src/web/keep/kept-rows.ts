import { headsOf, inCausalOrder, type SealedEntry } from '../../job/index.ts'
import { type LogStore, workshopJob } from '../../store/browser/index.ts'
import { keptRow } from '../state/job-row.ts'
import type { JobRow } from '../state/messages.ts'

/** One kept job as a row. */
export async function rowOf(store: LogStore, job: string): Promise<JobRow> {
  const { whose, entries } = await store.job(job).read()
  return rowOfLog(job, whose?.workshop ?? '', entries)
}

/** Every kept job, the one written on last first. */
export async function keptRows(store: LogStore): Promise<readonly JobRow[]> {
  const jobs = (await store.jobs()).filter((job) => job !== workshopJob)
  const rows = await Promise.all(jobs.map((job) => rowOf(store, job)))
  return rows.sort((a, b) => (b.line.last ?? '').localeCompare(a.line.last ?? ''))
}

function rowOfLog(job: string, workshop: string, entries: readonly SealedEntry[]): JobRow {
  const ordered = inCausalOrder(entries)
  return keptRow(job, { workshop, job, entries: ordered }, headsOf(ordered).join(' '))
}
