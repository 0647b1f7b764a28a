import {
  closeSync,
  existsSync,
  fsyncSync,
  linkSync,
  openSync,
  renameSync,
  rmSync,
  unlinkSync,
  writeSync,
} from 'node:fs'
import { basename, dirname, join } from 'node:path'
import { fileTrouble } from './file-trouble.ts'
import { refused } from './refused.ts'
import { syncFolder } from './sync-folder.ts'

/**
 * Writes a file whole or not at all: beside its place, synced, then moved there.
 *
 * @param replace whether one that is there may give way
 * @param mode rights of the file; a secret is for its owner alone
 * @throws {Refusal} `there-already`; `no-room`, `read-only`
 * @source POSIX.1-2017, rename, fsync
 */
export function writeWhole(
  path: string,
  said: string | Uint8Array,
  { replace, mode = 0o666 }: { readonly replace: boolean; readonly mode?: number },
): void {
  const bytes = typeof said === 'string' ? new TextEncoder().encode(said) : said
  const part = join(dirname(path), `.${basename(path)}.${process.pid}.part`)
  let file: number
  try {
    file = openSync(part, 'w', mode)
  } catch (error) {
    throw fileTrouble(path, error)
  }
  try {
    try {
      for (let at = 0; at < bytes.length; ) at += writeSync(file, bytes, at)
      fsyncSync(file)
    } finally {
      closeSync(file)
    }
    if (replace) renameSync(part, path)
    else settle(part, path)
    syncFolder(dirname(path))
  } catch (error) {
    rmSync(part, { force: true })
    throw fileTrouble(path, error)
  }
}

/** To its place, unless something stands there: in one step where the disk has links. */
function settle(part: string, path: string): void {
  try {
    linkSync(part, path)
    unlinkSync(part)
  } catch (error) {
    const { code } = error as NodeJS.ErrnoException
    if (code === 'EEXIST' || existsSync(path))
      throw refused(
        'there-already',
        path,
        `${path} is there already, and was left as it is.`,
        'Name another file.',
      )
    if (code !== 'EPERM' && code !== 'ENOTSUP' && code !== 'EOPNOTSUPP' && code !== 'ENOSYS') throw error
    renameSync(part, path)
  }
}
