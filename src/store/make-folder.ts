import { mkdirSync, rmdirSync } from 'node:fs'
import { dirname, resolve } from 'node:path'
import { syncFolder } from './sync-folder.ts'

/**
 * Makes a folder and those above it that are missing, each synced into the one above it.
 *
 * @returns takes back what was made, as far as it is still empty
 * @source own derivation: docs/methods/record.md
 */
export function makeFolder(path: string): () => void {
  const first = mkdirSync(path, { recursive: true })
  if (first === undefined) return () => undefined
  const made: string[] = []
  for (let at = resolve(path); ; at = dirname(at)) {
    made.push(at)
    if (at === resolve(first) || at === dirname(at)) break
  }
  for (const one of made.toReversed()) syncFolder(dirname(one))
  return () => {
    for (const one of made)
      try {
        rmdirSync(one)
      } catch {
        return
      }
  }
}
