import type { Entry } from './entry.ts'
import { isSealed } from './sealed-entry.ts'

/**
 * A log whose entries name each other by their places in it, whether they were written so or by id. An id that is not
 * there is left as it is.
 *
 * @param entries in causal order
 * @source definition
 */
export function numbered(entries: readonly Entry[]): readonly Entry[] {
  const placeOf = new Map(entries.flatMap((entry, i) => (isSealed(entry) ? [[entry.id, i] as const] : [])))
  if (placeOf.size === 0) return entries
  return entries.map((entry) => withReferences(entry, (of) => placeOf.get(of as string) ?? of))
}

/**
 * An entry with each earlier entry that it names said otherwise.
 *
 * @param said gives a place for an id, or an id for a place
 * @source definition
 */
export function withReferences<E extends Entry>(entry: E, said: (of: unknown) => unknown): E {
  const { data } = entry
  const of = 'of' in data ? { of: Array.isArray(data.of) ? data.of.map(said) : said(data.of) } : {}
  switch (entry.kind) {
    case 'correction':
    case 'cleared':
    case 'taken back':
      return { ...entry, data: { ...data, ...of } }
    case 'decision':
      return { ...entry, data: { ...data, ...of, ...('keep' in data ? { keep: said(data.keep) } : {}) } }
    case 'photo':
      return 'beside' in data ? { ...entry, data: { ...data, beside: said(data.beside) } } : entry
    default:
      return entry
  }
}
