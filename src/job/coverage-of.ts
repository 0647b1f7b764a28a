import type { Entry } from './entry.ts'
import { precedence } from './precedence.ts'

/** What one sign-off covers. @source definition */
export interface Coverage {
  /** Place of the sign-off in the log. */
  readonly entry: number
  /** Places of what it knew, and so covers. */
  readonly covers: readonly number[]
  /** Places of what it did not know: written after it, or elsewhere. */
  readonly late: readonly number[]
}

/**
 * What each sign-off of a log covers: all that it knew. What comes in later never changes that.
 *
 * @param entries in causal order
 * @source own derivation: docs/methods/record.md
 * @example coverageOf([]).length // 0
 */
export function coverageOf(entries: readonly Entry[]): readonly Coverage[] {
  const places = entries.map((_, i) => i)
  const signed = places.filter((i) => entries[i]!.kind === 'signed off')
  if (signed.length === 0) return []
  const precedes = precedence(entries)
  return signed.map((entry) => ({
    entry,
    covers: places.filter((i) => precedes(i, entry)),
    late: places.filter((i) => i !== entry && !precedes(i, entry)),
  }))
}
