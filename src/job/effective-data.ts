import type { Entry } from './entry.ts'
import { mergePatch } from './merge-patch.ts'
import { takenBack } from './taken-back.ts'

/** What an entry says after all corrections, and which entries corrected it. */
export interface Effective {
  readonly data: Readonly<Record<string, unknown>>
  readonly correctedBy: readonly number[]
}

/**
 * Every entry's data with the corrections laid over it, in the order of the log. A correction can be
 * corrected: it is then laid over as it reads after that. A correction that names no earlier entry, or was taken back,
 * is left out.
 *
 * @param back entries that were taken back
 * @source own derivation: docs/methods/formats.md
 * @example effectiveData([{ kind: 'note', data: { text: 'a' } }, { kind: 'correction', data: { of: 0, data: { text: 'b' } } }])[0].data // { text: 'b' }
 */
export function effectiveData(
  entries: readonly Entry[],
  back: ReadonlyMap<number, number> = takenBack(entries).by,
): readonly Effective[] {
  const found: Effective[] = []
  const laidOn = entries.map((): number[] => [])
  // From the end: whatever corrects an entry stands behind it, so it is already in its last form.
  for (let i = entries.length - 1; i >= 0; i--) {
    const entry = entries[i]!
    let data: unknown = entry.data
    for (const by of laidOn[i]!) data = mergePatch(data, (found[by]!.data as { data?: unknown }).data ?? {})
    found[i] = { data: data as Effective['data'], correctedBy: laidOn[i]! }
    const of = entry.kind === 'correction' && !back.has(i) ? (data as { of?: unknown }).of : undefined
    if (typeof of === 'number' && Number.isInteger(of) && of >= 0 && of < i) laidOn[of]!.unshift(i)
  }
  return found
}
