import { Refusal } from '../quantity/index.ts'
import { ed25519 } from './ed25519.ts'
import { fromHex, toHex } from './hex.ts'
import type { ProofRefusal } from './proof-refusal.ts'
import type { Signer } from './signer.ts'

/**
 * A signer out of its 32 secret bytes.
 *
 * @param seed 64 small hexadecimal digits, from a good random source
 * @throws {Refusal} `bad-key`
 * @source RFC 8032, 5.1.5
 */
export async function signerOf(seed: string): Promise<Signer> {
  const secret = fromHex(seed)
  if (secret?.length !== 32)
    throw new Refusal<ProofRefusal>({
      code: 'bad-key',
      at: 'seed',
      given: `${seed.length} characters`,
      sentence: 'This is no secret key: it must be 64 hexadecimal digits, in small letters.',
      remedy: 'Take the key from the file or the sheet of paper on which it was made.',
    })
  const way = await ed25519()
  return {
    key: toHex(await way.publicKey(secret)),
    sign: async (bytes) => toHex(await way.sign(secret, bytes)),
  }
}
