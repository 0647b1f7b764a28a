import { getPublicKeyAsync, signAsync, verifyAsync } from '@noble/ed25519'

type Bytes = Uint8Array<ArrayBuffer>

/** PKCS #8 before the 32 bytes of a seed (RFC 8410, 7). */
const beforeSeed = Uint8Array.from([48, 46, 2, 1, 0, 48, 5, 6, 3, 43, 101, 112, 4, 34, 4, 32])
const named = { name: 'Ed25519' }

/** Ed25519 by the platform where it has it, else by a library that does the same sums. */
export interface Ed25519 {
  readonly publicKey: (seed: Bytes) => Promise<Bytes>
  readonly sign: (seed: Bytes, said: Bytes) => Promise<Bytes>
  readonly verify: (key: Bytes, signature: Bytes, said: Bytes) => Promise<boolean>
}

/** The library's way. @source RFC 8032, 5.1 */
export const byLibrary: Ed25519 = {
  publicKey: async (seed) => Uint8Array.from(await getPublicKeyAsync(seed)),
  sign: async (seed, said) => Uint8Array.from(await signAsync(said, seed)),
  // RFC 8032 to the letter: no encoding but the canonical one.
  verify: (key, signature, said) => verifyAsync(signature, said, key, { zip215: false }).catch(() => false),
}

/** The platform's way. @source RFC 8032, 5.1; RFC 8410, 7 (form of the secret key) */
export const byPlatform: Ed25519 = {
  publicKey: (seed) => byLibrary.publicKey(seed),
  sign: async (seed, said) => {
    const secret = new Uint8Array([...beforeSeed, ...seed])
    const key = await crypto.subtle.importKey('pkcs8', secret, named, false, ['sign'])
    return new Uint8Array(await crypto.subtle.sign(named, key, said))
  },
  verify: async (key, signature, said) => {
    try {
      return await crypto.subtle.verify(named, await publicOf(key), signature, said)
    } catch {
      return false
    }
  },
}

const imported = new Map<string, Promise<CryptoKey>>()

/** A log has many entries of few devices. */
function publicOf(key: Bytes): Promise<CryptoKey> {
  const name = key.join()
  let found = imported.get(name)
  if (!found) {
    found = crypto.subtle.importKey('raw', key, named, false, ['verify'])
    if (imported.size > 100) imported.clear()
    imported.set(name, found)
  }
  return found
}

let chosen: Promise<Ed25519> | null = null

/** The platform's Ed25519 where it works, found out once. @source definition */
export function ed25519(): Promise<Ed25519> {
  chosen ??= works(byPlatform).then((well) => (well ? byPlatform : byLibrary))
  return chosen
}

async function works(one: Ed25519): Promise<boolean> {
  try {
    const [seed, said] = [new Uint8Array(32).fill(1), Uint8Array.of(2)]
    return await one.verify(await one.publicKey(seed), await one.sign(seed, said), said)
  } catch {
    return false
  }
}
