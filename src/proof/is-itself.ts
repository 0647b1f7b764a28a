import type { SealedEntry } from '../job/index.ts'
import { entryId } from './entry-id.ts'

/** Whether an entry is what its id says; who signed it is another question. @source own derivation: docs/methods/record.md */
export function isItself(entry: SealedEntry): boolean {
  try {
    return entryId(entry) === entry.id
  } catch {
    return false
  }
}
