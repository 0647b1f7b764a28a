import type { Entry } from './entry.ts'

/**
 * The photos that a log names, by hash, each with the first entry that does. They lie beside it.
 *
 * @param entries in causal order
 * @source own derivation: docs/methods/carrying.md
 * @example photosNamed([{ kind: 'note', data: { text: 'a' } }]).size // 0
 */
export function photosNamed(entries: readonly Entry[]): ReadonlyMap<string, number> {
  const found = new Map<string, number>()
  entries.forEach(({ kind, data }, i) => {
    const said = [data, kind === 'correction' ? data.data : null].flatMap((one) => {
      const { hash, photo } = (one ?? {}) as { hash?: unknown; photo?: unknown }
      return kind === 'photo' || kind === 'correction' ? [hash, photo] : [photo]
    })
    for (const hash of said)
      if (typeof hash === 'string' && /^[0-9a-f]{64}$/.test(hash) && !found.has(hash)) found.set(hash, i)
  })
  return found
}
