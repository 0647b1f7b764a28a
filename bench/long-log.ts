import type { Entry, SealedEntry } from '../src/job/index.ts'
import { type Sealing, sealEntries, signerOf } from '../src/proof/index.ts'

/** Whose the long log is. */
export const whose = { workshop: 'Harbour yard', job: '7-0412' }

/** How a device seals, by two hexadecimal digits. */
export const sealedBy = async (device: string): Promise<Sealing> => ({
  ...whose,
  signer: await signerOf(device.repeat(32)),
  person: 'KB',
  at: '2026-03-14T18:00:00Z',
  offset: '+01:00',
})

/** A log of two devices that meet now and then; no job is like it. */
export async function longLog(size: number): Promise<readonly SealedEntry[]> {
  const entry = (i: number): Entry =>
    i % 3 === 0
      ? { kind: 'note', data: { text: `The bolt of the lower arm, look ${i}: dry, and clean to its shank.` } }
      : {
          kind: 'moved',
          data: { adjuster: 'tie-rod', wheel: i % 2 ? 'front left' : 'front right', by: '1/12 turn' },
        }
  let log: readonly SealedEntry[] = []
  for (let i = 0; i < size; i += 250) {
    const device = await sealedBy((i / 250) % 2 ? '02' : '01')
    log = await sealEntries([...log, ...Array.from({ length: 250 }, (_, k) => entry(i + k))], device)
  }
  return log
}

/** Entries to append to it, one after another. */
export const more = async (log: readonly SealedEntry[], count: number): Promise<readonly SealedEntry[]> =>
  (
    await sealEntries(
      [...log, ...Array.from({ length: count }, (_, i) => ({ kind: 'note', data: { text: `note ${i}` } }))],
      await sealedBy('01'),
    )
  ).slice(log.length)
