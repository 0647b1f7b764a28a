import { codeHash } from './code-hash.ts'
import type { WorkshopEntryData } from './workshop-entries-schema.ts'

/**
 * Whether a code is a person's. It tells hands apart on a shared tablet: it says who says that they worked. It signs
 * nothing (the device does), and keeps nobody out who has the log and time to try.
 *
 * @source own derivation: docs/methods/record.md
 */
export function isCode({ salt, code, cost }: WorkshopEntryData<'person'>, typed: string): boolean {
  const hash = codeHash(typed, salt, cost)
  if (hash === null) return false
  let differs = hash.length ^ code.length
  for (let i = 0; i < hash.length; i++) differs |= hash.charCodeAt(i) ^ code.charCodeAt(i)
  return differs === 0
}
