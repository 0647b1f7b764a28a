import type { KeptJob, LogStore } from '../log-store.ts'
import { browserJob } from './browser-job.ts'
import { databaseOf } from './database.ts'

/**
 * Logs kept in the browser's database, in a page and in a worker. Windows of the same page see each other's.
 *
 * @param name of the database
 * @source own derivation: docs/methods/record.md
 */
export function browserStore(name = 'axlewright'): LogStore {
  const database = databaseOf(name)
  const opened = new Map<string, KeptJob>()
  return {
    jobs: () => database.use((kept) => kept.getAllKeys('logs')),
    job: (job) => {
      const found = opened.get(job) ?? browserJob(database, job)
      opened.set(job, found)
      return found
    },
  }
}
