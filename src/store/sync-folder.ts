import { closeSync, fsyncSync, openSync } from 'node:fs'

/**
 * Syncs a folder, so that a file that was made in it is found again after the power fails. A system that cannot sync
 * folders keeps them by itself.
 *
 * @source POSIX.1-2017, fsync; common practice, no source (folders)
 */
export function syncFolder(path: string): void {
  if (process.platform === 'win32') return
  const folder = openSync(path, 'r')
  try {
    fsyncSync(folder)
  } finally {
    closeSync(folder)
  }
}
