import type { SealedEntry } from '../job/index.ts'
import { fromHex } from './hex.ts'
import { isItself } from './is-itself.ts'
import { isSigned } from './is-signed.ts'

/** What is wrong with an entry of a log. @source definition */
export interface BrokenEntry {
  /** Place in the list that was given, from 0. */
  readonly entry: number
  readonly sentence: string
}

/** Told now and then while a long log is looked through. @source definition */
export type Progress = (done: number, of: number) => void

/**
 * Looks at every entry of a log: is it what its id says, did its device sign it, does it come after what it names, does
 * its device count without a gap.
 *
 * @param entries in the order of the file, which must be causal
 * @param from entries before this place were looked at earlier and are as they were: only what follows is looked at
 * @returns what is broken, in that order; empty when the log is intact
 * @source own derivation: docs/methods/record.md
 */
export async function verifyEntries(
  entries: readonly SealedEntry[],
  whose: { readonly workshop: string; readonly job: string },
  progress: Progress = () => undefined,
  from = 0,
): Promise<readonly BrokenEntry[]> {
  const broken: BrokenEntry[] = []
  const before = new Map<string, SealedEntry>()
  const last = new Map<string, SealedEntry>()
  const pass = (entry: SealedEntry) => {
    before.set(entry.id, entry)
    last.set(entry.device, entry)
  }
  entries.slice(0, from).forEach(pass)
  for (let at = from; at < entries.length; at += batch) {
    const some = entries.slice(at, at + batch)
    const signed = await Promise.all(some.map(isSignedByDevice))
    some.forEach((entry, i) => {
      const sentence = signed[i]!
        ? (misplaced(entry, { whose, before, last: last.get(entry.device) }) ?? null)
        : isItself(entry)
          ? 'Its device did not sign it.'
          : 'It is not what was sealed: something in it was changed.'
      if (sentence !== null) broken.push({ entry: at + i, sentence })
      pass(entry)
    })
    progress(Math.min(at + batch, entries.length), entries.length)
  }
  return broken
}

/** Signatures looked at together. @source own choice */
const batch = 250

async function isSignedByDevice(entry: SealedEntry): Promise<boolean> {
  const id = typeof entry.id === 'string' && isItself(entry) ? fromHex(entry.id) : null
  return id !== null && isSigned(entry.device, entry.signature, id)
}

interface Place {
  readonly whose: { readonly workshop: string; readonly job: string }
  readonly before: ReadonlyMap<string, SealedEntry>
  /** The device's entry before it in the list. */
  readonly last: SealedEntry | undefined
}

function misplaced(entry: SealedEntry, { whose, before, last }: Place): string | undefined {
  if (entry.workshop !== whose.workshop || entry.job !== whose.job)
    return 'It belongs to another job, or to another workshop.'
  if (before.has(entry.id)) return 'It stands here a second time.'
  if (entry.after.some((id) => !before.has(id)))
    return 'An entry that it follows is missing, or stands behind it.'
  if (entry.after.some((id, i) => i > 0 && entry.after[i - 1]! >= id))
    return 'The entries that it follows are not in their one order.'
  if (entry.seq !== (last?.seq ?? 0) + 1) return 'Its device’s count has a gap, or a number twice.'
  return undefined
}
