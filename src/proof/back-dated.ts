import type { SealedEntry } from '../job/index.ts'

/** Clocks of two devices may differ by this much, s. @source own choice */
const clocksDiffer = 300

/**
 * Entries whose clock stands before that of an entry they follow, by more than clocks differ: written later than they
 * say. The clock is shown and never orders; this shows where it cannot be right.
 *
 * @param entries in causal order
 * @returns places in the list
 * @source own derivation: docs/methods/record.md
 */
export function backDated(entries: readonly SealedEntry[]): readonly number[] {
  const latest = new Map<string, number>()
  return entries.flatMap((entry, i) => {
    const known = Math.max(
      Number.NEGATIVE_INFINITY,
      ...entry.after.map((id) => latest.get(id) ?? Number.NEGATIVE_INFINITY),
    )
    const mine = endOf(entry.at)
    latest.set(entry.id, Math.max(known, startOf(entry.at)))
    return mine + clocksDiffer * 1000 < known ? [i] : []
  })
}

const startOf = (at: string): number => {
  const time = Date.parse(at)
  return Number.isNaN(time) ? Number.NEGATIVE_INFINITY : time
}

/** A day alone lasts to its end, in whichever zone. */
const endOf = (at: string): number => {
  const time = Date.parse(at)
  return Number.isNaN(time) ? Number.POSITIVE_INFINITY : at.length > 10 ? time : time + 36 * 3600 * 1000
}
