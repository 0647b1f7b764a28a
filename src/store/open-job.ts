import { foldJob, foldVersion, inCausalOrder, type JobState, type SealedEntry } from '../job/index.ts'
import type { KeptJob, KeptLog } from './log-store.ts'
import { noteText, readNote } from './note.ts'
import { sha256 } from './sha-256.ts'

/** A job with its state. @source definition */
export interface OpenedJob extends KeptLog {
  /** In causal order: the state names them by their places in it. */
  readonly entries: readonly SealedEntry[]
  readonly state: JobState
  /** Whether the state was kept, or made anew. */
  readonly from: 'checkpoint' | 'fold'
}

/**
 * Opens a job: its entries, and the state that they fold to, from a checkpoint where one is kept of this very log by
 * these very rules, else folded, and kept for the next time. With or without a checkpoint it is the same state.
 *
 * @param engine version of the program: another one folds anew
 * @param least so many entries are worth a checkpoint; shorter logs fold at once
 * @throws {Refusal} `no-job`, `no-folder`, `unreadable`
 * @source own derivation: docs/methods/record.md
 */
export async function openJob(
  job: KeptJob,
  { engine, least = 200 }: { readonly engine: string; readonly least?: number },
): Promise<OpenedJob> {
  const rules = `${foldVersion} ${engine}`
  const note = readNote(await job.recall('fold'))
  const trusted = note?.rules === rules ? note : null
  const { before, digest, whole, ...kept } = await job.reopen(trusted)
  const entries = inCausalOrder(kept.entries) as readonly SealedEntry[]
  if (trusted && before === entries.length && (await sha256(trusted.body)) === trusted.bodyDigest)
    return { ...kept, entries, state: JSON.parse(trusted.body) as JobState, from: 'checkpoint' }
  const state = foldJob(entries)
  const isSettled = kept.spoilt.length === 0 && whole.entries === entries.length
  if (isSettled && entries.length >= least)
    await job.remember('fold', await noteText({ rules, bytes: whole.bytes, digest }, JSON.stringify(state)))
  return { ...kept, entries, state, from: 'fold' }
}
