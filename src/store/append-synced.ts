import { closeSync, fsyncSync, ftruncateSync, openSync, unlinkSync, writeSync } from 'node:fs'
import { dirname } from 'node:path'
import { fileTrouble } from './file-trouble.ts'
import { syncFolder } from './sync-folder.ts'

/**
 * Appends bytes to a file and comes back when they are on disk; where that cannot be, the file is as it was.
 *
 * @param size of the file before; null where it is not there yet
 * @throws {Refusal} `no-room`, `read-only`
 * @source POSIX.1-2017, fsync
 */
export function appendSynced(path: string, size: number | null, bytes: Uint8Array): void {
  try {
    const file = openSync(path, size === null ? 'ax' : 'a')
    try {
      for (let at = 0; at < bytes.length; ) at += writeSync(file, bytes, at)
      fsyncSync(file)
      if (size === null) syncFolder(dirname(path))
    } catch (error) {
      ftruncateSync(file, size ?? 0)
      if (size === null) unlinkSync(path)
      else fsyncSync(file)
      throw error
    } finally {
      closeSync(file)
    }
  } catch (error) {
    throw fileTrouble(path, error)
  }
}
