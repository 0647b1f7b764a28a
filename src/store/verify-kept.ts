import { type BrokenEntry, type Progress, verifyEntries } from '../proof/index.ts'
import type { KeptJob, KeptLog } from './log-store.ts'
import { noteText, readNote } from './note.ts'

/** What was found in a kept log. @source definition */
export interface VerifiedLog extends KeptLog {
  /** Places from 0, as the log is kept; empty when all of it is what was sealed. */
  readonly broken: readonly BrokenEntry[]
  /** Entries that this place had looked at before, and that are as they were. */
  readonly before: number
}

/**
 * Looks at every entry of a kept log that was not looked at before: is it what its id says, did its device sign it. How
 * far it came is kept beside the log. To prove a log to others, all of it is looked at: `verdictOf`.
 *
 * @throws {Refusal} `no-job`, `no-folder`, `unreadable`
 * @source own derivation: docs/methods/record.md
 */
export async function verifyKept(job: KeptJob, progress?: Progress): Promise<VerifiedLog> {
  const note = readNote(await job.recall('verified'))
  const { before, digest, whole, ...kept } = await job.reopen(note?.rules === rules ? note : null)
  const { whose, entries, spoilt } = kept
  const broken = whose ? await verifyEntries(entries, whose, progress, before) : []
  if (
    broken.length === 0 &&
    spoilt.length === 0 &&
    whole.entries === entries.length &&
    whole.entries > before
  )
    await job.remember('verified', await noteText({ rules, bytes: whole.bytes, digest }, ''))
  return { ...kept, broken, before }
}

const rules = 'verified 1'
