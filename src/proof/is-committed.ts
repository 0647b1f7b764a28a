import type { PrivateValue } from '../job/index.ts'
import { hashOf } from './hash-of.ts'
import { privateBytes } from './private-bytes.ts'

/**
 * Whether a personal value is the one that was sealed.
 *
 * @source own derivation: docs/methods/record.md
 */
export function isCommitted({ commitment, salt, value }: PrivateValue): boolean {
  const bytes = privateBytes({ salt, value })
  return bytes !== null && hashOf(bytes) === commitment
}
