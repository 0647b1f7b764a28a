import { headsOf, type SealedEntry } from '../job/index.ts'
import { erasedBytes, hashOf, privateIn } from '../proof/index.ts'
import { Refusal } from '../quantity/index.ts'
import type { KeptJob } from './log-store.ts'
import { erasePrivate, keepPrivate } from './private-beside.ts'
import type { BackedUpLog, Backup } from './read-backup.ts'
import { refused } from './refused.ts'

/** What became of a log. @source definition */
export interface RestoredLog {
  readonly log: BackedUpLog
  /** Entries that were not there before. */
  readonly entries: number
  /** Of those under hashes and the pinned ones, how many were not there. */
  readonly files: number
  /** Heads of the log as it stands there now. */
  readonly heads: readonly string[]
  /** What was left as it is, and why. */
  readonly told: readonly string[]
}

/**
 * Puts a backup back: where nothing is, as it was; where something is, both together. Nothing that is there is written
 * over or taken out. All of it is looked at before anything is written. What is ended in the middle is finished by saying
 * it again: a file or an entry is there whole or not at all, and what an entry names is there before it.
 *
 * @param place where a log belongs
 * @throws {Refusal} `other-job` where another one stands at its place; `spoilt`, `busy`, `no-room`, `read-only`
 * @source own derivation: docs/methods/carrying.md
 */
export async function restoreBackup(
  { logs }: Backup,
  place: (log: BackedUpLog) => KeptJob,
): Promise<readonly RestoredLog[]> {
  for (const log of logs) await looked(log, place(log))
  const done: RestoredLog[] = []
  for (const log of logs) done.push(await restored(log, place(log)))
  return done
}

async function found(kept: KeptJob): Promise<readonly SealedEntry[]> {
  try {
    return (await kept.read()).entries
  } catch (error) {
    if (error instanceof Refusal && error.code === 'no-job') return []
    throw error
  }
}

/** Another job, or the log of another workshop that has the same name, is not mixed with this one. */
async function looked({ whose, entries }: BackedUpLog, kept: KeptJob): Promise<void> {
  const [first] = await found(kept)
  if (!first) return
  const isOther = first.workshop !== whose.workshop || first.job !== whose.job
  const isOtherRoot = whose.job === 'workshop' && first.device !== entries[0]?.device
  if (isOther || isOtherRoot)
    throw refused(
      'other-job',
      `${first.workshop}, ${first.job}`,
      isOther
        ? `Where job ${whose.job} of “${whose.workshop}” belongs, job ${first.job} of “${first.workshop}” stands. Nothing was written.`
        : `This device belongs to another workshop that is called “${first.workshop}” too: its root is another one. Nothing was written.`,
      'Restore it to another place.',
    )
}

async function restored(log: BackedUpLog, kept: KeptJob): Promise<RestoredLog> {
  const told: string[] = []
  const { whose, entries, broken } = log
  if (broken !== null)
    return {
      log,
      entries: 0,
      files: 0,
      heads: headsOf(await found(kept)),
      told: [
        `Job ${whose.job} was not intact when it was backed up (${broken}); it is left out. Merge it from another copy.`,
      ],
    }
  const before = new Set(await kept.kept().catch(noJob))
  const pins = new Set((await kept.pinned().catch(noJob)).map(({ digest }) => digest))
  // What was erased, there or in the backup, does not come back.
  const marks = new Map(log.beside.map((hash) => [hash, erasedIn(log.bytes(hash))]))
  await erasePrivate(
    kept,
    [...marks.values()].filter((mark) => mark !== null),
  )
  const isErased = (hash: string) => before.has(markOf(hash)) || marks.has(markOf(hash))
  let files = 0
  for (const [hash, mark] of marks) {
    if (mark !== null || before.has(hash) || isErased(hash)) continue
    const bytes = log.bytes(hash)
    const value = privateIn(bytes)
    if (value) files += (await keepPrivate(kept, [{ commitment: hash, ...value }])).length
    else {
      await kept.keep(bytes)
      files++
    }
  }
  for (const snapshot of log.pinned())
    if (!pins.has(snapshot.digest)) {
      await kept.pin(snapshot)
      files++
    }
  const { appended } = await kept.change(whose, () => entries)
  for (const hash of log.beside)
    await kept.beside(hash).catch((error) => {
      if (!(error instanceof Refusal) || error.code !== 'spoilt') throw error
      told.push(`${error.sentence} It was left as it is.`)
    })
  return { log, entries: appended.length, files, heads: headsOf((await kept.read()).entries), told }
}

const markOf = (hash: string): string => hashOf(erasedBytes(hash))

const noJob = (error: unknown): readonly never[] => {
  if (error instanceof Refusal && error.code === 'no-job') return []
  throw error
}

/** Which personal value bytes say was erased; null for any other bytes. */
function erasedIn(bytes: Uint8Array): string | null {
  if (bytes.length > 200) return null
  const commitment = new TextDecoder().decode(bytes.subarray(-64))
  return hashOf(erasedBytes(commitment)) === hashOf(bytes) ? commitment : null
}
