import { readFileSync, statSync } from 'node:fs'
import { join, resolve } from 'node:path'
import {
  type BackupWritten,
  clockNow,
  folderName,
  jobFolder,
  type LogToKeep,
  wholeFile,
  workshopJob,
  writeBackup,
} from '../../store/index.ts'
import { BadInput, type Outcome } from '../files/outcome.ts'
import { jobFoldersAt } from '../record/job-folders.ts'
import { ownFolder } from '../record/own-folder.ts'

/** What `backup` can be told. */
export interface BackupOptions {
  readonly withKeys?: boolean
  readonly overwrite?: boolean
}

/** `axlewright backup FILE [PLACES…]`: all job folders there, with all that lies in them, and the workshop's log. */
export async function backupCommand(
  file: string,
  places: readonly string[],
  options: BackupOptions,
): Promise<Outcome> {
  const own = join(ownFolder(), workshopJob)
  const folders = [
    ...new Set(
      [...(places.length > 0 ? places : ['.']).flatMap(jobFoldersAt), ...ownLog(own)].map((one) =>
        resolve(one),
      ),
    ),
  ]
  if (folders.length === 0)
    throw new BadInput([
      'There is no job folder here, so there is nothing to back up. Name the folder in which they stand.',
    ])
  const logs = await named(folders)
  const key = options.withKeys ? keyText() : undefined
  const whole = wholeFile(file, {
    replace: options.overwrite ?? false,
    ...(key === undefined ? {} : { mode: 0o600 }),
  })
  let written: BackupWritten
  try {
    written = await writeBackup(logs, { at: clockNow().at, key, write: whole.add })
    whole.settle()
  } catch (error) {
    whole.undo()
    throw error
  }
  const { list, told } = written
  const bytes = list.files.reduce((sum, { size }) => sum + size, 0)
  const lines = [
    ...told,
    ...list.logs.map(
      ({ dir, workshop, job, entries }) =>
        `${job} of “${workshop}”: ${entries} entries, ${list.files.filter(({ name }) => name.startsWith(`logs/${dir}/`)).length - 1} files beside them`,
    ),
    `${file}: ${list.files.length} files, ${Math.ceil(bytes / 1024)} kB, each with its SHA-256 in the list.`,
    ...(key === undefined
      ? ['This device’s secret key is not in it.']
      : [
          'This device’s SECRET KEY is in it: whoever has this file can sign as this device. Lock it away, and send it to',
          'nobody. If it may have been copied, revoke the device: "axlewright workshop revoke".',
        ]),
    `Look through it at any time: axlewright restore ${file} --check`,
  ]
  return { out: `${lines.join('\n')}\n`, code: told.length > 0 ? 1 : 0 }
}

const ownLog = (folder: string): readonly string[] =>
  statSync(join(folder, 'log.jsonl'), { throwIfNoEntry: false }) ? [folder] : []

/** Each with a folder in the backup: by its job, and counted where there are more copies of one. */
async function named(folders: readonly string[]): Promise<readonly LogToKeep[]> {
  const logs: LogToKeep[] = []
  const taken = new Map<string, number>()
  for (const folder of folders) {
    const kept = jobFolder(folder)
    const { whose } = await kept.read()
    if (!whose)
      throw new BadInput([`${folder}: Nothing in its log can be read. Move it away, or name other places.`])
    const dir = whose.job === workshopJob ? workshopJob : `job-${folderName(whose.job)}`
    const count = (taken.get(dir) ?? 0) + 1
    taken.set(dir, count)
    logs.push({ dir: count === 1 ? dir : `${dir}_${count}`, kept })
  }
  return logs
}

function keyText(): string {
  const path = join(ownFolder(), 'device.key')
  try {
    return readFileSync(path, 'utf8')
  } catch {
    throw new BadInput([`${path}: This device has no key yet, so there is none to back up.`])
  }
}
