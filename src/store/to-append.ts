import type { SealedEntry } from '../job/index.ts'
import { canonicalText, isItself, readSealedLine } from '../proof/index.ts'
import type { Whose } from './log-store.ts'
import { refused } from './refused.ts'

/**
 * What of some entries is to be appended to a log: those it does not have, each looked at. Whose hand signed them is the
 * proof's to say.
 *
 * @param ids of what the log has
 * @returns the entries, and each on its line
 * @throws {Refusal} `other-job`, `not-sealed`, `lacks-before`
 * @source own derivation: docs/methods/record.md
 */
export function toAppend(
  given: readonly SealedEntry[],
  ids: ReadonlySet<string>,
  whose: Whose,
): { readonly entries: readonly SealedEntry[]; readonly lines: readonly string[] } {
  const entries: SealedEntry[] = []
  const lines: string[] = []
  const here = new Set<string>()
  for (const entry of given) {
    if (ids.has(entry.id) || here.has(entry.id)) continue
    const line = lineOf(entry)
    if (line === null)
      throw refused(
        'not-sealed',
        String(entry.id),
        'An entry is not sealed, or is not what was sealed, so it was not taken in. Nothing was written.',
        'Seal the log first, or take another copy of it.',
      )
    if (entry.workshop !== whose.workshop || entry.job !== whose.job)
      throw refused(
        'other-job',
        `${entry.workshop}, ${entry.job}`,
        `An entry belongs to job ${entry.job} of “${entry.workshop}”, and this is job ${whose.job} of “${whose.workshop}”. Nothing was written.`,
        'Take the file of the same job.',
      )
    if (!entry.after.every((id) => ids.has(id) || here.has(id)))
      throw refused(
        'lacks-before',
        entry.id,
        'An entry follows one that is not here, so it was not taken in. Nothing was written.',
        'Bring in the whole log that it comes from.',
      )
    here.add(entry.id)
    entries.push(entry)
    lines.push(line)
  }
  return { entries, lines }
}

function lineOf(entry: SealedEntry): string | null {
  try {
    const line = canonicalText(entry)
    return isItself(entry) && readSealedLine(line) ? line : null
  } catch {
    return null
  }
}
