import { readdirSync, readFileSync, unlinkSync } from 'node:fs'
import { join } from 'node:path'
import { digestOf, hashOf, type Snapshot } from '../proof/index.ts'
import { fileTrouble } from './file-trouble.ts'
import type { KeptJob } from './log-store.ts'
import { makeFolder } from './make-folder.ts'
import { refused } from './refused.ts'
import { syncFolder } from './sync-folder.ts'
import { writeWhole } from './write-whole.ts'

/**
 * What lies beside a log in its folder: pinned files by digest in `pinned/`, bytes by hash in `beside/`.
 *
 * @source own derivation: docs/methods/record.md
 */
export function besideLog(
  folder: string,
): Pick<KeptJob, 'pin' | 'pinned' | 'keep' | 'kept' | 'beside' | 'forget'> {
  const [pins, others] = [join(folder, 'pinned'), join(folder, 'beside')]
  return {
    pin: async ({ what, file }: Snapshot) => {
      const name = `${what}-${digestOf(what, file)}.json`
      if (namesIn(pins).includes(name)) return
      put(pins, name, `${JSON.stringify(file, null, 2)}\n`)
    },
    pinned: async () =>
      namesIn(pins).flatMap((name) => {
        const [, what, digest] = /^(corner|spec|kit)-([0-9a-f]{64})\.json$/.exec(name) ?? []
        if (!what || !digest) return []
        return [{ what: what as Snapshot['what'], digest, file: json(join(pins, name)) }]
      }),
    keep: async (bytes) => {
      const hash = hashOf(bytes)
      if (!namesIn(others).includes(hash)) put(others, hash, bytes)
      return hash
    },
    kept: async () => namesIn(others).filter((name) => /^[0-9a-f]{64}$/.test(name)),
    beside: async (hash) => {
      if (!namesIn(others).includes(hash)) return null
      const bytes = bytesOf(join(others, hash))
      if (hashOf(bytes) !== hash)
        throw refused(
          'spoilt',
          hash,
          `${join(others, hash)}: It is not what was kept: somebody changed it, or the disk lost it.`,
          'Bring it in again from another copy of the job.',
        )
      return bytes
    },
    forget: async (hash) => {
      if (!namesIn(others).includes(hash)) return false
      try {
        unlinkSync(join(others, hash))
        syncFolder(others)
      } catch (error) {
        throw fileTrouble(join(others, hash), error)
      }
      return true
    },
  }
}

function namesIn(folder: string): readonly string[] {
  try {
    return readdirSync(folder).sort()
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === 'ENOENT') return []
    throw fileTrouble(folder, error)
  }
}

function put(folder: string, name: string, said: string | Uint8Array): void {
  let undo: () => void = () => undefined
  try {
    undo = makeFolder(folder)
    writeWhole(join(folder, name), said, { replace: true })
  } catch (error) {
    undo()
    throw fileTrouble(folder, error)
  }
}

function bytesOf(path: string): Uint8Array {
  try {
    return readFileSync(path)
  } catch (error) {
    throw fileTrouble(path, error)
  }
}

function json(path: string): unknown {
  try {
    return JSON.parse(new TextDecoder('utf-8', { fatal: true }).decode(bytesOf(path)))
  } catch (error) {
    if (!(error instanceof SyntaxError || error instanceof TypeError)) throw error
    throw refused(
      'spoilt',
      path,
      `${path}: This pinned file can no longer be read: it was changed, or the disk lost it.`,
      'Bring the job in again from another copy.',
    )
  }
}
