import { scrypt } from '@noble/hashes/scrypt.js'
import { fromHex, toHex } from './hex.ts'
import type { CodeCost } from './workshop-entries-schema.ts'

/**
 * What a short code costs to try where nothing else is said: 32 MiB and some tenths of a second of a tablet. Every person's
 * entry says its own, so that it can grow.
 *
 * @source own choice; RFC 7914, 2 names N, r and p
 */
export const usualCodeCost: CodeCost = { n: 2 ** 15, r: 8, p: 1 }

/**
 * A short code hashed slowly. It makes guessing dear and no more: four digits are ten thousand tries for whoever has the
 * workshop's log.
 *
 * @param salt 32 small hexadecimal digits
 * @returns 64 small hexadecimal digits; null where the salt is none
 * @source RFC 7914 (scrypt)
 */
export function codeHash(code: string, salt: string, { n, r, p }: CodeCost = usualCodeCost): string | null {
  const random = fromHex(salt)
  if (random === null) return null
  return toHex(scrypt(new TextEncoder().encode(code), random, { N: n, r, p, dkLen: 32 }))
}
