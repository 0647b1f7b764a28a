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

/** A file that comes to its place whole or not at all. @source definition */
export interface WholeFile {
  readonly add: (bytes: Uint8Array) => void
  /** Syncs it, and moves it to its place. */
  readonly settle: () => void
  /** Leaves nothing of it; its place is as it was. */
  readonly undo: () => void
}

/**
 * Begins a file that is written beside its place, part by part.
 *
 * @param replace whether one that is there may give way
 * @param mode rights of the file; a secret is for its owner alone
 * @throws {Refusal} `there-already`; `no-room`, `read-only`
 * @source POSIX.1-2017, rename, fsync
 */
export function wholeFile(
  path: string,
  { replace, mode = 0o666 }: { readonly replace: boolean; readonly mode?: number },
): WholeFile {
  const part = join(dirname(path), `.${basename(path)}.${process.pid}.part`)
  const guarded = <T>(act: () => T): T => {
    try {
      return act()
    } catch (error) {
      throw fileTrouble(path, error)
    }
  }
  const file = guarded(() => openSync(part, 'w', mode))
  let isOpen = true
  const close = () => {
    if (isOpen) closeSync(file)
    isOpen = false
  }
  return {
    add: (bytes) =>
      guarded(() => {
        for (let at = 0; at < bytes.length; ) at += writeSync(file, bytes, at)
      }),
    settle: () =>
      guarded(() => {
        fsyncSync(file)
        close()
        if (replace) renameSync(part, path)
        else moveUnlessThere(part, path)
        syncFolder(dirname(path))
      }),
    undo: () => {
      close()
      rmSync(part, { force: true })
    },
  }
}

/** To its place, unless something stands there: in one step where the disk has links. */
function moveUnlessThere(part: string, path: string): void {
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
