import type { Entry } from './entry.ts'
import { isSealed } from './sealed-entry.ts'

/**
 * The heads of a log: sealed entries that no other names, ascending. A new entry comes after all of them.
 *
 * @source own derivation: docs/decisions/0014-a-log-is-a-set-of-sealed-entries.md
 * @example headsOf([]).length // 0
 */
export function headsOf(entries: readonly Entry[]): readonly string[] {
  const sealed = entries.filter(isSealed)
  const named = new Set(sealed.flatMap(({ after }) => after))
  return [...new Set(sealed.map(({ id }) => id))].filter((id) => !named.has(id)).sort()
}
