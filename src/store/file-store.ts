import { readdirSync, statSync } from 'node:fs'
import { join } from 'node:path'
import { fileTrouble } from './file-trouble.ts'
import { folderName, jobOfFolder } from './folder-name.ts'
import { jobFolder } from './job-folder.ts'
import type { KeptJob, LogStore } from './log-store.ts'

/**
 * Logs kept in files: a folder of job folders.
 *
 * @param place the folder; it need not be there yet
 * @source own derivation: docs/methods/record.md
 */
export function fileStore(place: string): LogStore {
  const opened = new Map<string, KeptJob>()
  return {
    jobs: async () =>
      foldersIn(place)
        .flatMap((name) => {
          const job = jobOfFolder(name)
          const log = statSync(join(place, name, 'log.jsonl'), { throwIfNoEntry: false })
          return job !== null && log?.isFile() && log.size > 0 ? [job] : []
        })
        .sort(),
    job: (job) => {
      const found = opened.get(job) ?? jobFolder(join(place, folderName(job)))
      opened.set(job, found)
      return found
    },
  }
}

function foldersIn(place: string): readonly string[] {
  try {
    return readdirSync(place, { withFileTypes: true }).flatMap((one) => (one.isDirectory() ? [one.name] : []))
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === 'ENOENT') return []
    throw fileTrouble(place, error)
  }
}
