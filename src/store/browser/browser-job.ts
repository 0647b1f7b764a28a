import type { SealedEntry } from '../../job/index.ts'
import { type LogSoFar, logSoFar } from '../log-so-far.ts'
import type { Appended, KeptJob, KeptLog, Whose, Writing } from '../log-store.ts'
import { readLog } from '../read-log.ts'
import { refused } from '../refused.ts'
import { toAppend } from '../to-append.ts'
import { alone } from './alone.ts'
import { besideInBrowser } from './beside-in-browser.ts'
import type { Database, LogHead } from './database.ts'

/** How often a change is made anew because another window, without locks, came between. @source own choice */
const tries = 20

/** A log in the browser as far as it was read. */
interface Seen {
  readonly opening: number
  /** Null where no entry is kept. */
  readonly head: LogHead | null
  readonly log: LogSoFar | null
}

/**
 * A job in the browser's database: its log's lines in pieces, one to a change, with what it pins beside it.
 *
 * @source own derivation: docs/methods/record.md
 */
export function browserJob(database: Database, job: string): KeptJob {
  let known: Seen | null = null
  const look = async (): Promise<Seen> => {
    known = await seenIn(database, job, known)
    return known
  }
  return {
    read: async () => {
      const { head, log } = await look()
      if (!head)
        throw refused('no-job', job, `Nothing of job ${job} is kept in this browser.`, 'Bring its file in.')
      return keptOf(log)
    },
    change: (whose, write) =>
      alone(`${database.name}, job ${job}`, async () => {
        for (let left = tries; left > 0; left--) {
          const done = await changed({ database, job, seen: await look(), whose, write })
          if (done) return done
        }
        throw refused(
          'busy',
          job,
          `Another window is writing to job ${job} without an end.`,
          'Close the page’s other windows, then do the same again.',
        )
      }),
    ...besideInBrowser(database, job),
  }
}

/** Reads what was appended since it was read before. */
async function seenIn(database: Database, job: string, before: Seen | null): Promise<Seen> {
  return database.use(async (opened) => {
    const opening = database.openings()
    const base = before?.opening === opening ? before : null
    const from = base?.head?.pieces ?? 0
    const tx = opened.transaction(['logs', 'pieces'])
    const [head = null, pieces] = await Promise.all([
      tx.objectStore('logs').get(job),
      tx.objectStore('pieces').getAll(IDBKeyRange.bound([job, from + 1], [job, Number.POSITIVE_INFINITY])),
      tx.done,
    ])
    if (pieces.length === 0) return { opening, head, log: base?.log ?? null }
    return { opening, head, log: logSoFar(base?.log ?? null, readLog(together(pieces), base?.log?.lines)) }
  })
}

function together(pieces: readonly Uint8Array[]): Uint8Array {
  const bytes = new Uint8Array(pieces.reduce((sum, { length }) => sum + length, 0))
  let at = 0
  for (const piece of pieces) {
    bytes.set(piece, at)
    at += piece.length
  }
  return bytes
}

interface Change {
  readonly database: Database
  readonly job: string
  readonly seen: Seen
  readonly whose: Whose
  readonly write: Writing
}

/** Null where somebody else appended meanwhile: then it is to be made anew. */
async function changed({ database, job, seen, whose, write }: Change): Promise<Appended | null> {
  const { head, log } = seen
  const [bad] = log?.spoilt ?? []
  if (bad)
    throw refused(
      'spoilt',
      `entry ${bad.line}`,
      `Entry ${bad.line} of job ${job} is not what was kept: ${bad.sentence} Nothing was written.`,
      'Export what is intact, and bring it in again together with another copy of the job.',
    )
  const first = log?.entries[0]
  if (first && (first.workshop !== whose.workshop || first.job !== whose.job))
    throw refused(
      'other-job',
      `${first.workshop}, ${first.job}`,
      `What is kept here is job ${first.job} of “${first.workshop}”, not job ${whose.job} of “${whose.workshop}”. Nothing was written.`,
      'Give the job another number.',
    )
  const given = await write(log?.entries ?? [])
  const { entries, lines } = toAppend(given, log?.ids ?? new Set(), whose)
  const done = { appended: entries, known: given.length - entries.length, told: [] }
  if (entries.length === 0) return done
  const bytes = new TextEncoder().encode(lines.map((line) => `${line}\n`).join(''))
  const pieces = (head?.pieces ?? 0) + 1
  const isKept = await database.use(async (opened) => {
    // What was read was of a database that is gone.
    if (database.openings() !== seen.opening) return false
    const tx = opened.transaction(['logs', 'pieces'], 'readwrite', { durability: 'strict' })
    const ended = tx.done.then(
      () => null,
      (error: unknown) => error,
    )
    try {
      const now = (await tx.objectStore('logs').get(job))?.pieces ?? 0
      if (now === pieces - 1)
        await Promise.all([
          tx.objectStore('pieces').add(bytes, [job, pieces]),
          tx.objectStore('logs').put({ workshop: whose.workshop, pieces }, job),
        ])
      // The browser says so when it is on disk: only then is it acknowledged.
      const trouble = await ended
      if (trouble) throw trouble
      return now === pieces - 1
    } catch (error) {
      // Why the whole was given up says more than that one request was.
      throw isQuota(tx.error) ? tx.error : error
    }
  })
  return isKept ? done : null
}

const isQuota = (error: DOMException | null) => error?.name === 'QuotaExceededError'

function keptOf(log: LogSoFar | null): KeptLog {
  const entries: readonly SealedEntry[] = log ? (log.last ? [...log.entries, log.last] : log.entries) : []
  const [first] = entries
  return {
    whose: first ? { workshop: first.workshop, job: first.job } : null,
    entries,
    spoilt: log?.spoilt ?? [],
    told: [],
  }
}
