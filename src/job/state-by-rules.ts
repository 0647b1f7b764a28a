import { entryKinds } from './entries-schema.ts'
import type { Entry } from './entry.ts'
import { foldJob } from './fold-job.ts'
import { gathered, isGathered } from './gathered.ts'
import { vocabularyOf } from './vocabulary-schema.ts'

/**
 * The state of a log by the rules of some version, to hold what was signed against it: what that version did not know is
 * left aside as it was then, and lists that it did not have are not there.
 *
 * @param log in causal order
 * @param version of the rules of folding
 * @returns null for a version that this program does not know
 * @source own derivation: docs/methods/record.md
 */
export function stateByRules(log: readonly Entry[], version: number): unknown {
  const vocabulary = vocabularyOf(version)
  if (vocabulary === null) return null
  const later = entryKinds.flatMap((kind) =>
    isGathered(kind) && !Object.hasOwn(vocabulary, kind) ? [gathered[kind] as string] : [],
  )
  return Object.fromEntries(
    Object.entries(foldJob(log, vocabulary)).filter(([name]) => !later.includes(name)),
  )
}
