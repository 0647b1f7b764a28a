import { sha256 } from '@noble/hashes/sha2.js'
import { toHex } from './hex.ts'

/**
 * SHA-256 of a text in UTF-8, or of bytes.
 *
 * @returns 64 small hexadecimal digits
 * @source FIPS 180-4
 * @example hashOf('abc').slice(0, 8) // 'ba7816bf'
 */
export const hashOf = (said: string | Uint8Array): string =>
  toHex(sha256(typeof said === 'string' ? new TextEncoder().encode(said) : said))
