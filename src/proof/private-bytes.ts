import type { PrivateValue } from '../job/index.ts'
import { fromHex, toHex } from './hex.ts'

const opening = new TextEncoder().encode('axlewright/private/1\0')
const saltLength = 32

/**
 * The bytes as which a personal value lies beside a log. Their SHA-256 is its commitment.
 *
 * @returns null where the salt is not 32 bytes in hexadecimal digits
 * @source own derivation: docs/methods/record.md
 */
export function privateBytes({ salt, value }: Omit<PrivateValue, 'commitment'>): Uint8Array | null {
  const random = fromHex(salt)
  if (random?.length !== saltLength) return null
  const said = new TextEncoder().encode(value)
  const bytes = new Uint8Array(opening.length + saltLength + said.length)
  bytes.set(opening)
  bytes.set(random, opening.length)
  bytes.set(said, opening.length + saltLength)
  return bytes
}

/**
 * A personal value out of such bytes; null for any other bytes.
 *
 * @source own derivation: docs/methods/record.md
 */
export function privateIn(bytes: Uint8Array): Omit<PrivateValue, 'commitment'> | null {
  if (bytes.length < opening.length + saltLength || !opening.every((byte, i) => bytes[i] === byte))
    return null
  try {
    return {
      salt: toHex(bytes.subarray(opening.length, opening.length + saltLength)),
      value: new TextDecoder('utf-8', { fatal: true, ignoreBOM: true }).decode(
        bytes.subarray(opening.length + saltLength),
      ),
    }
  } catch {
    return null
  }
}

/**
 * The bytes that lie beside a log where a personal value was erased, so that an older copy does not bring it back.
 *
 * @source own derivation: docs/methods/record.md
 */
export const erasedBytes = (commitment: string): Uint8Array =>
  new TextEncoder().encode(`axlewright/erased/1\0${commitment}`)
