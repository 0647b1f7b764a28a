import { statSync } from 'node:fs'
import { join, resolve } from 'node:path'
import { appendSynced } from './append-synced.ts'
import { besideLog } from './beside-log.ts'
import { fileTrouble } from './file-trouble.ts'
import { whileLocked } from './folder-lock.ts'
import { keptLog } from './kept-log.ts'
import { type LogFile, logBytes, logFile, mendEnd } from './log-file.ts'
import type { LogSoFar } from './log-so-far.ts'
import type { Appended, KeptJob, Whose, Writing } from './log-store.ts'
import { makeFolder } from './make-folder.ts'
import { oneByOne } from './one-by-one.ts'
import { recalledInFolder } from './recalled-in-folder.ts'
import { refused } from './refused.ts'
import { toAppend } from './to-append.ts'
import { trustedLog } from './trusted-log.ts'

/**
 * A job in a folder: `log.jsonl`, one sealed entry a line, with what it pins beside it.
 *
 * @param folder made with the first entry
 * @param patience how long another program that writes there is waited for, ms
 * @source own derivation: docs/methods/record.md
 */
export function jobFolder(folder: string, { patience = 10_000 } = {}): KeptJob {
  const log = join(folder, 'log.jsonl')
  let known: LogFile | null = null
  const look = (): LogFile => {
    known = logFile(log, known)
    return known
  }
  return {
    read: async () => {
      const seen = look()
      return keptLog(seen, torn(seen, log, seen.size))
    },
    reopen: async (trusted) => {
      const bytes = logBytes(log)
      return trustedLog(bytes, trusted, (seen) => torn(seen, log, bytes.length))
    },
    ...recalledInFolder(folder),
    change: (whose, write) =>
      oneByOne(resolve(folder), async () => {
        let unmake: () => void = () => undefined
        try {
          unmake = makeFolder(folder)
          const done = await whileLocked(folder, patience, () => changed({ log, look, whose, write }))
          if (done.appended.length === 0) unmake()
          return done
        } catch (error) {
          unmake()
          throw fileTrouble(folder, error)
        }
      }),
    ...besideLog(folder),
  }
}

interface Change {
  readonly log: string
  readonly look: () => LogFile
  readonly whose: Whose
  readonly write: Writing
}

async function changed({ log, look, whose, write }: Change): Promise<Appended> {
  const isThere = statSync(log, { throwIfNoEntry: false }) !== undefined
  const found = isThere ? look() : null
  const told = found ? torn(found, log, found.size) : []
  if (found && found.tail !== 'none') mendEnd(log, found)
  const seen = found && found.tail !== 'none' ? look() : found
  const [bad] = seen?.spoilt ?? []
  if (bad)
    throw refused(
      'spoilt',
      `line ${bad.line}`,
      `${log}, line ${bad.line}: ${bad.sentence} Nothing was written.`,
      'Merge it with another copy of the job into a new one: whatever is intact in either is kept.',
    )
  const [first] = seen?.entries ?? []
  if (first && (first.workshop !== whose.workshop || first.job !== whose.job))
    throw refused(
      'other-job',
      `${first.workshop}, ${first.job}`,
      `${log} holds job ${first.job} of “${first.workshop}”, not job ${whose.job} of “${whose.workshop}”. Nothing was written.`,
      'Name another folder.',
    )
  const given = await write(seen?.entries ?? [])
  const { entries, lines } = toAppend(given, seen?.ids ?? new Set(), whose)
  if (entries.length > 0)
    appendSynced(log, seen?.size ?? null, new TextEncoder().encode(lines.map((line) => `${line}\n`).join('')))
  return { appended: entries, known: given.length - entries.length, told }
}

function torn({ tail, whole }: LogSoFar, log: string, size: number): readonly string[] {
  if (tail !== 'torn') return []
  return [
    `${log}: The last line is torn (${size - whole} bytes): the power failed, or the program was ended, while it was written. It was never acknowledged, and does not count.`,
  ]
}
