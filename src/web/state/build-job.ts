import type { Problem } from '../../corner/index.ts'
import { type Entry, foldJob, type Job, readJob, withCorrection, writeJob } from '../../job/index.ts'
import { canonicalText } from '../../proof/index.ts'
import { entriesOfMoves } from './entries-of-moves.ts'
import { isMade } from './is-made.ts'
import type { Edit, Plain, RoundForm, Told } from './messages.ts'
import { type PendingRound, pendingRound, readAgain, roundForm, takenRound } from './pending-round.ts'

/** A job with the person's edits laid on, and what of them was not understood. */
export interface BuiltJob {
  readonly job: Job
  readonly refused: Told['refused']
  /** Adjusters were turned after the last readings. */
  readonly made: boolean
  readonly form: RoundForm | null
}

/**
 * Lays edits on a job, in order. A text that is not understood is left out and told; everything else counts.
 */
export function buildJob(file: Job, edits: readonly Edit[]): BuiltJob {
  let job = file
  let pending: PendingRound | null = null
  const refused: (Plain & { edit: number; field: string })[] = []
  edits.forEach((edit, i) => {
    if (edit.kind === 'typed') {
      const next = withCorrection(job, edit)
      if (next.ok) job = next.value
      else refused.push({ edit: i, ...plainOf(next.problems[0]!) })
    } else if (edit.kind === 'turned') {
      const entries = entriesOfMoves(edit).filter((entry) => !held(file, entry))
      job = { ...job, entries: [...job.entries, ...entries] }
      pending = pendingRound(foldJob(job.entries), edit.asks)
    } else if (edit.kind === 'again') {
      if (!pending) return
      const key = `${edit.entry} ${edit.path}`
      pending.texts.set(key, edit.text)
      pending.wrong.delete(key)
      const read = edit.text.trim() === '' ? null : readAgain(job, pending, edit)
      if (read && !read.ok) {
        pending.wrong.add(key)
        refused.push({ edit: i, ...plainOf(read.problems[0]!) })
      }
    } else if (edit.kind === 'done' || edit.kind === 'noted') {
      const entries = (edit.kind === 'noted' ? edit.entries : edit.entry ? [edit.entry] : [])
        .map((entry): Entry => ({ ...entry, at: edit.at }))
        .filter((entry) => !held(file, entry))
      if (entries.length === 0) return
      const next = readJob(writeJob({ ...job, entries: [...job.entries, ...entries] }))
      if (next.ok) job = next.value
      else refused.push({ edit: i, ...plainOf(next.problems[0]!) })
    } else if (edit.kind === 'taken' && pending) {
      const entries = takenRound(pending, job, edit).filter((entry) => !held(file, entry))
      const next = readJob(writeJob({ ...job, entries: [...job.entries, ...entries] }))
      if (next.ok) {
        job = next.value
        pending = null
      } else refused.push({ edit: i, ...plainOf(next.problems[0]!) })
    }
  })
  return { job, refused, made: isMade(job), form: pending && roundForm(pending) }
}

/**
 * Whether the log has an entry already, to the moment: a device that stopped between sealing and forgetting its draft
 * lays the draft on what was sealed of it.
 */
function held({ entries }: Job, { kind, at, data }: Entry): boolean {
  if (!entries.some((one) => one.at === at)) return false
  const said = canonicalText(data)
  return entries.some((one) => one.at === at && one.kind === kind && canonicalText(one.data) === said)
}

/** A problem of a field, said to a person who sees the field. */
function plainOf({ field, wrong, right }: Problem): Plain & { readonly field: string } {
  const path = field.replace(/^entries\[\d+\]\.data\./, '')
  return { sentence: wrong, remedy: `Right would be: ${right}.`, field: path }
}
