import type { Entry } from './entry.ts'
import { isSealed, type SealedEntry } from './sealed-entry.ts'

/**
 * A log in causal order: each sealed entry after those it names, ties by id; bare entries last, as they stand. The same
 * set of sealed entries gives the same order, however it came together. An entry that comes twice stands once.
 *
 * Entries in a circle, which no hash allows, stand after all others, by id; an entry that is not there is passed over.
 *
 * @source own derivation: docs/decisions/0014-a-log-is-a-set-of-sealed-entries.md
 * @example inCausalOrder([{ kind: 'note', data: { text: 'a' } }]).length // 1
 */
export function inCausalOrder(entries: readonly Entry[]): readonly Entry[] {
  const byId = new Map<string, SealedEntry>()
  const bare: Entry[] = []
  for (const entry of entries) {
    if (isSealed(entry)) byId.set(entry.id, byId.get(entry.id) ?? entry)
    else bare.push(entry)
  }
  const waits = new Map<string, number>()
  const followers = new Map<string, string[]>()
  for (const { id, after } of byId.values()) {
    const known = new Set(after.filter((one) => one !== id && byId.has(one)))
    waits.set(id, known.size)
    for (const one of known) followers.set(one, [...(followers.get(one) ?? []), id])
  }
  const ready = [...byId.keys()].filter((id) => waits.get(id) === 0).sort(descending)
  const ordered: Entry[] = []
  for (let id = ready.pop(); id !== undefined; id = ready.pop()) {
    ordered.push(byId.get(id)!)
    byId.delete(id)
    for (const next of followers.get(id) ?? []) {
      const left = waits.get(next)! - 1
      waits.set(next, left)
      if (left === 0) insert(ready, next)
    }
  }
  const circle = [...byId.keys()].sort().map((id) => byId.get(id)!)
  return [...ordered, ...circle, ...bare]
}

const descending = (a: string, b: string) => (a < b ? 1 : a > b ? -1 : 0)

/** Into a list in descending order, so that the smallest is taken from its end. */
function insert(ready: string[], id: string): void {
  let low = 0
  let high = ready.length
  while (low < high) {
    const middle = (low + high) >> 1
    if (ready[middle]! > id) low = middle + 1
    else high = middle
  }
  ready.splice(low, 0, id)
}
