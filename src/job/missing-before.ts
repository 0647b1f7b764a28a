import type { Entry } from './entry.ts'
import type { Trouble } from './job-state.ts'
import { isSealed } from './sealed-entry.ts'

/**
 * Entries that others name as what they knew and that are not in the log: another device has them still.
 *
 * @source own derivation: docs/methods/record.md
 */
export function missingBefore(entries: readonly Entry[]): readonly Trouble[] {
  const sealed = entries.filter(isSealed)
  const here = new Set(sealed.map(({ id }) => id))
  const missing = new Set(sealed.flatMap(({ after }) => after.filter((id) => !here.has(id))))
  if (missing.size === 0) return []
  const naming = entries.flatMap((entry, i) =>
    isSealed(entry) && entry.after.some((id) => missing.has(id)) ? [i] : [],
  )
  return [
    {
      entries: naming,
      sentence: `${missing.size === 1 ? 'An earlier entry is' : `${missing.size} earlier entries are`} not in this file.`,
      remedy: 'Bring in the file of the device that wrote them.',
    },
  ]
}
