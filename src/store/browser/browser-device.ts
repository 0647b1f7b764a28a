import { type Signer, signerOf } from '../../proof/index.ts'
import { randomSeed } from '../random-seed.ts'
import { databaseOf } from './database.ts'

/**
 * The signer of this browser; its key is made when it is first needed. Windows that begin at once get the same one.
 *
 * @param name of the database in which it is kept
 * @throws {Refusal} `no-room`, `read-only`
 * @source own derivation: docs/methods/record.md
 */
export async function browserDevice(name = 'axlewright'): Promise<Signer> {
  const mine = randomSeed()
  const seed = await databaseOf(name).use(async (kept) => {
    const tx = kept.transaction('keys', 'readwrite', { durability: 'strict' })
    const [found] = await Promise.all([
      tx.store.get('device').then(async (known) => {
        if (known === undefined) await tx.store.add(mine, 'device')
        return known ?? mine
      }),
      tx.done,
    ])
    return found
  })
  return signerOf(seed)
}
