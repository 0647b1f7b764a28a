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
 * @returns what is broken, in that order; empty when the log is intact
 * @source own derivation: docs/methods/record.md
 */
export async function verifyEntries(
  entries: readonly SealedEntry[],
  whose: { readonly workshop: string; readonly job: string },
  progress: Progress = () => undefined,
): Promise<readonly BrokenEntry[]> {
  const broken: BrokenEntry[] = []
  const before = new Map<string, SealedEntry>()
  const last = new Map<string, SealedEntry>()
  for (let from = 0; from < entries.length; from += batch) {
    const some = entries.slice(from, from + batch)
    const signed = await Promise.all(some.map(isSignedByDevice))
    some.forEach((entry, i) => {
      const sentence = signed[i]!
        ? (misplaced(entry, { whose, before, last: last.get(entry.device) }) ?? null)
        : isItself(entry)
          ? 'Its device did not sign it.'
          : 'It is not what was sealed: something in it was changed.'
      if (sentence !== null) broken.push({ entry: from + i, sentence })
      before.set(entry.id, entry)
      last.set(entry.device, entry)
    })
    progress(Math.min(from + batch, entries.length), entries.length)
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
