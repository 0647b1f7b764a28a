import { closeSync, fstatSync, mkdirSync, openSync, readSync, statSync } from 'node:fs'
import { join } from 'node:path'
import type { ZipSource } from '../../proof/index.ts'
import {
  type BackedUpLog,
  type Backup,
  jobFolder,
  readBackup,
  restoreBackup,
  workshopJob,
  writeWhole,
} from '../../store/index.ts'
import { BadInput, type Outcome } from '../files/outcome.ts'
import { ownFolder } from '../record/own-folder.ts'

/** What `restore` can be told. */
export interface RestoreOptions {
  readonly to?: string
  readonly check?: boolean
  readonly withKeys?: boolean
}

/** `axlewright restore FILE`: looks a backup through from end to end, then puts it back; nothing there is written over. */
export async function restoreCommand(file: string, options: RestoreOptions): Promise<Outcome> {
  const { source, close } = opened(file)
  try {
    const backup = await readBackup(source)
    const found = [
      `${file}: ${backup.list.files.length} files of ${backup.list.at}, each what the list says, to the last bit.`,
      ...backup.logs.map(
        ({ whose, entries, beside, broken }) =>
          `${whose.job} of “${whose.workshop}”: ${entries.length} entries, ${beside.length} files by hash${broken === null ? '' : `; NOT INTACT when it was backed up: ${broken}`}`,
      ),
      ...(backup.key === null ? [] : ['The secret key of the device that wrote it is in it.']),
    ]
    const isWell = backup.logs.every(({ broken }) => broken === null)
    if (options.check) return { out: `${found.join('\n')}\n`, code: isWell ? 0 : 1 }
    if (options.to === undefined)
      throw new BadInput([
        'Where? Name the folder for the job folders with --to; or look the backup through with --check.',
      ])
    return await restored(backup, options.to, { ...options, found })
  } finally {
    close()
  }
}

async function restored(
  backup: Backup,
  to: string,
  { withKeys, found }: RestoreOptions & { readonly found: readonly string[] },
): Promise<Outcome> {
  const done = await restoreBackup(backup, (log) => jobFolder(folderOf(log, backup, to)))
  const told = done.flatMap((one) => one.told)
  const lines = [
    ...found,
    ...done.map(({ log, entries, files }) =>
      entries + files === 0
        ? `${log.whose.job}: all of it was there.`
        : `${log.whose.job}: ${entries} entries and ${files} files put back, on disk.`,
    ),
    ...told,
    ...keyPutBack(backup, withKeys ?? false),
  ]
  return { out: `${lines.join('\n')}\n`, code: told.length > 0 ? 1 : 0 }
}

/** Copies of one job come together; two jobs of one number stand beside each other, as they did. */
function folderOf({ whose }: BackedUpLog, { logs }: Backup, to: string): string {
  if (whose.job === workshopJob) return join(ownFolder(), workshopJob)
  const first = logs.find((one) => one.whose.job === whose.job && one.whose.workshop === whose.workshop)!
  return join(to, first.dir.replace(/^job-/, ''))
}

/** Only where it is asked for, and never over another one. */
function keyPutBack({ key }: Backup, isAsked: boolean): readonly string[] {
  const path = join(ownFolder(), 'device.key')
  if (key === null)
    return isAsked ? ['There is no key in it; this device needs one of its own, and a certificate.'] : []
  if (!isAsked)
    return ['Its key was left in it. Say --with-keys on the device that takes the place of the lost one.']
  if (statSync(path, { throwIfNoEntry: false }))
    return [`${path} is there already, and was left as it is; the key was left in the backup.`]
  mkdirSync(ownFolder(), { recursive: true, mode: 0o700 })
  writeWhole(path, key, { replace: false, mode: 0o600 })
  return [
    'This device signs with the key of the one that wrote the backup. If that one still works, do not use both: their',
    'entries would be counted double.',
  ]
}

function opened(file: string): { readonly source: ZipSource; readonly close: () => void } {
  let handle: number
  try {
    handle = openSync(file, 'r')
  } catch (error) {
    const { code } = error as NodeJS.ErrnoException
    throw new BadInput([
      `${file}: ${code === 'ENOENT' ? 'There is no such file.' : `It cannot be read (${code}).`} Check the path and try again.`,
    ])
  }
  const stat = fstatSync(handle)
  if (!stat.isFile()) {
    closeSync(handle)
    throw new BadInput([`${file}: This is a folder, not a file.`])
  }
  const read = (at: number, length: number): Uint8Array => {
    const bytes = new Uint8Array(length)
    for (let done = 0; done < length; ) {
      const got = readSync(handle, bytes, done, length - done, at + done)
      if (got === 0) return bytes.subarray(0, done)
      done += got
    }
    return bytes
  }
  return { source: { size: stat.size, read }, close: () => closeSync(handle) }
}
