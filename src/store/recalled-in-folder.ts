import { readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import type { KeptJob } from './log-store.ts'

/**
 * What can be made again out of a log, in its folder: `recalled-fold`, `recalled-verified`.
 *
 * @source own derivation: docs/methods/record.md
 */
export function recalledInFolder(folder: string): Pick<KeptJob, 'recall' | 'remember'> {
  const path = (what: string) => join(folder, `recalled-${what}`)
  return {
    recall: async (what) => {
      try {
        return readFileSync(path(what), 'utf8')
      } catch {
        return null
      }
    },
    remember: async (what, text) => {
      const part = `${path(what)}.${process.pid}.part`
      try {
        // No sync: what a failing power leaves of it is seen by its digest, and made again.
        writeFileSync(part, text)
        renameSync(part, path(what))
      } catch {
        rmSync(part, { force: true })
        // A full disk, a folder that may only be read: then it is made again next time.
      }
    },
  }
}
