import type { IDBPDatabase } from 'idb'
import { type LogSoFar, logSoFar } from '../log-so-far.ts'
import type { SpoiltLine } from '../log-store.ts'
import { readLog } from '../read-log.ts'
import type { Database, Kept } from './database.ts'

/** A piece is added to until it is so long, bytes: few pieces are read fast, and a short one is written fast. @source own choice */
const full = 32_768

/** A log in the browser as far as it was read. @source definition */
export interface Seen {
  /** Which opening of the database it was read from. */
  readonly opening: number
  readonly pieces: number
  readonly bytes: number
  /** Bytes of the last piece. */
  readonly lastPiece: number
  readonly log: LogSoFar | null
}

/**
 * All bytes of a log, and how many there should be; null where nothing is kept.
 *
 * @source own derivation: docs/methods/record.md
 */
export async function allPieces(
  database: Database,
  job: string,
): Promise<{ readonly bytes: Uint8Array; readonly due: number } | null> {
  const [head, pieces] = await database.use((opened) => headAndPieces(opened, job, 1))
  return head ? { bytes: together(pieces), due: head.bytes } : null
}

/**
 * What is to be told of a log when the browser lost some of it.
 *
 * @source definition
 */
export const lostOf = ({ lines }: { readonly lines: number }, lost: number): readonly SpoiltLine[] =>
  lost === 0
    ? []
    : [{ line: lines + 1, sentence: `The browser lost ${lost} bytes of the log, or has them twice.` }]

/**
 * Reads what was appended since it was read before.
 *
 * @source own derivation: docs/methods/record.md
 */
export async function seenIn(database: Database, job: string, before: Seen | null): Promise<Seen> {
  return database.use(async (opened) => {
    const opening = database.openings()
    const base = before?.opening === opening ? before : nothing(opening)
    const [head, pieces] = await headAndPieces(opened, job, Math.max(1, base.pieces))
    if (!head || head.bytes === base.bytes) return base
    const bytes = together(pieces).subarray(base.lastPiece)
    const log = logSoFar(base.log, readLog(bytes, base.log?.lines))
    const lost = lostOf(log, head.bytes - base.bytes - bytes.length)
    return {
      opening,
      pieces: head.pieces,
      bytes: head.bytes,
      lastPiece: pieces.at(-1)?.length ?? 0,
      log: { ...log, spoilt: [...log.spoilt, ...lost] },
    }
  })
}

async function headAndPieces(opened: IDBPDatabase<Kept>, job: string, from: number) {
  const tx = opened.transaction(['logs', 'pieces'])
  const [head, pieces] = await Promise.all([
    tx.objectStore('logs').get(job),
    tx.objectStore('pieces').getAll(piecesFrom(job, from)),
    tx.done,
  ])
  return [head, pieces] as const
}

const nothing = (opening: number): Seen => ({ opening, pieces: 0, bytes: 0, lastPiece: 0, log: null })

/**
 * Appends bytes in one transaction, and comes back when they are on disk.
 *
 * @returns false where the log is not as it was seen: then nothing was written
 * @throws {Refusal} `no-room`, `read-only`, `unreadable`
 * @source W3C Indexed Database API 3.0, 2.7.2 (durability)
 */
export function appendPiece(
  database: Database,
  {
    job,
    workshop,
    seen,
    bytes,
  }: { job: string; workshop: string; seen: Seen; bytes: Uint8Array<ArrayBuffer> },
): Promise<boolean> {
  return database.use(async (opened) => {
    // What was read was of a database that is gone.
    if (database.openings() !== seen.opening) return false
    const tx = opened.transaction(['logs', 'pieces'], 'readwrite', { durability: 'strict' })
    const ended = tx.done.then(
      () => null,
      (error: unknown) => error,
    )
    try {
      const [logs, pieces] = [tx.objectStore('logs'), tx.objectStore('pieces')]
      const isAsSeen = ((await logs.get(job))?.bytes ?? 0) === seen.bytes
      if (isAsSeen) {
        const isRoom = seen.pieces > 0 && seen.lastPiece + bytes.length <= full
        const at = isRoom ? seen.pieces : seen.pieces + 1
        const last = isRoom ? ((await pieces.get([job, at])) ?? new Uint8Array()) : new Uint8Array()
        await Promise.all([
          pieces.put(together([last, bytes]), [job, at]),
          logs.put({ workshop, pieces: at, bytes: seen.bytes + bytes.length }, job),
        ])
      }
      // The browser says so when it is on disk: only then is it acknowledged.
      const trouble = await ended
      if (trouble) throw trouble
      return isAsSeen
    } catch (error) {
      // Why the whole was given up says more than that one request was.
      throw tx.error?.name === 'QuotaExceededError' ? tx.error : error
    }
  })
}

const piecesFrom = (job: string, from: number) =>
  IDBKeyRange.bound([job, from], [job, Number.POSITIVE_INFINITY])

function together(pieces: readonly Uint8Array[]): Uint8Array<ArrayBuffer> {
  const bytes = new Uint8Array(pieces.reduce((sum, { length }) => sum + length, 0))
  let at = 0
  for (const piece of pieces) {
    bytes.set(piece, at)
    at += piece.length
  }
  return bytes
}
