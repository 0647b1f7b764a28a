import { hashOf } from '../proof/index.ts'

/**
 * SHA-256 by the platform where it has it: several times as fast on a long log.
 *
 * @returns 64 small hexadecimal digits
 * @source FIPS 180-4
 */
export async function sha256(said: Uint8Array | string): Promise<string> {
  const bytes = typeof said === 'string' ? new TextEncoder().encode(said) : said
  const { subtle } = globalThis.crypto
  if (!subtle) return hashOf(bytes)
  const digest = new Uint8Array(await subtle.digest('SHA-256', bytes as Uint8Array<ArrayBuffer>))
  return Array.from(digest, (byte) => byte.toString(16).padStart(2, '0')).join('')
}
