import type { Entry } from './entry.ts'
import { isSealed } from './sealed-entry.ts'

/** Whether entry i was known where entry j was written; i and j are places in the log. */
export type Precedes = (i: number, j: number) => boolean

/**
 * Which entries of a log knew of which. Two entries neither of which precedes the other were written apart.
 *
 * @param entries in causal order; bare ones know all that stands before them
 * @source own derivation: docs/decisions/0014-a-log-is-a-set-of-sealed-entries.md
 */
export function precedence(entries: readonly Entry[]): Precedes {
  if (isChain(entries)) return (i, j) => i < j
  const words = Math.ceil(entries.length / 32)
  const placeOf = new Map(entries.flatMap((entry, i) => (isSealed(entry) ? [[entry.id, i] as const] : [])))
  const known: Uint32Array[] = []
  entries.forEach((entry, j) => {
    const mine = new Uint32Array(words)
    const before = isSealed(entry)
      ? entry.after.flatMap((id) => {
          const i = placeOf.get(id)
          return i !== undefined && i < j ? [i] : []
        })
      : Array.from({ length: j }, (_, i) => i)
    for (const i of before) {
      known[i]!.forEach((bits, w) => {
        mine[w]! |= bits
      })
      mine[i >> 5]! |= 1 << (i & 31)
    }
    known.push(mine)
  })
  return (i, j) => (known[j]![i >> 5]! & (1 << (i & 31))) !== 0
}

/** One device after another: nobody wrote apart. */
const isChain = (entries: readonly Entry[]): boolean =>
  entries.every((entry, j) => {
    const before = entries[j - 1]
    if (!isSealed(entry) || before === undefined) return true
    return isSealed(before) && entry.after.includes(before.id)
  })
