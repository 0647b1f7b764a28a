import { ed25519 } from './ed25519.ts'
import { fromHex } from './hex.ts'

/**
 * Whether a signature over bytes is the key's own.
 *
 * @param key 64, signature 128 small hexadecimal digits; anything else is not signed
 * @source RFC 8032, 5.1.7
 */
export async function isSigned(
  key: string,
  signature: string,
  bytes: Uint8Array<ArrayBuffer>,
): Promise<boolean> {
  const [one, by] = [fromHex(key), fromHex(signature)]
  if (one?.length !== 32 || by?.length !== 64) return false
  return (await ed25519()).verify(one, by, bytes)
}
