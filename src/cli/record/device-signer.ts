import { mkdirSync, readFileSync, statSync } from 'node:fs'
import { join } from 'node:path'
import { type Signer, signerOf } from '../../proof/index.ts'
import { randomSeed, writeWhole } from '../../store/index.ts'
import { BadInput } from '../files/outcome.ts'
import { ownFolder } from './own-folder.ts'

/** The signer of this device; its key is made when it is first needed, and only its owner may read it. */
export async function deviceSigner(): Promise<Signer> {
  const folder = ownFolder()
  const path = join(folder, 'device.key')
  try {
    mkdirSync(folder, { recursive: true, mode: 0o700 })
    if (!statSync(path, { throwIfNoEntry: false })) made(path)
    if (process.platform !== 'win32' && (statSync(path).mode & 0o077) !== 0)
      throw new BadInput([
        `${path}: Others may read this device’s key. Give it to its owner alone (chmod 600), and if it may have been copied, revoke the device.`,
      ])
    return await signerOf(readFileSync(path, 'utf8').trim())
  } catch (error) {
    const { code } = error as NodeJS.ErrnoException
    if (!code?.startsWith('E')) throw error
    throw new BadInput([
      `${path}: This device’s key cannot be read or kept there (${code}). Name a folder of your own in AXLEWRIGHT_HOME.`,
    ])
  }
}

/** Two programs that begin at once keep the key of whichever was first. */
function made(path: string): void {
  try {
    writeWhole(path, `${randomSeed()}\n`, { replace: false, mode: 0o600 })
  } catch (error) {
    if ((error as { code?: unknown }).code !== 'there-already') throw error
  }
}
