import type { SealedEntry } from '../job/index.ts'
import { canonicalText } from './canonical-text.ts'
import { hashOf } from './hash-of.ts'

/**
 * The id of an entry: the hash of everything it says.
 *
 *     id = SHA-256("axlewright/entry/1" ‖ 0 ‖ canonical form without id and signature)
 *
 * @param entry sealed, or about to be
 * @throws {Refusal} `not-json`
 * @source own derivation: docs/methods/record.md
 */
export function entryId(entry: Omit<SealedEntry, 'id' | 'signature'>): string {
  const { id: _, signature: __, ...said } = entry as Partial<SealedEntry>
  return hashOf(`axlewright/entry/1\0${canonicalText(said)}`)
}
