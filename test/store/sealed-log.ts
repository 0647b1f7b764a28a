import type { Entry, SealedEntry } from '../../src/job/index.ts'
import { sealEntries, signerOf } from '../../src/proof/index.ts'

/** Whose the logs of these tests are. */
export const whose = { workshop: 'Harbour yard', job: '7-0412' }

const note = (text: string): Entry => ({ kind: 'note', data: { text } })

/** Notes sealed by a device, after a log. */
export async function noted(
  log: readonly SealedEntry[],
  texts: readonly string[],
  { device = 1, job = whose.job } = {},
): Promise<readonly SealedEntry[]> {
  const signer = await signerOf(String(device).padStart(2, '0').repeat(32))
  return sealEntries([...log, ...texts.map(note)], {
    ...whose,
    job,
    signer,
    person: 'KB',
    at: '2026-03-14T18:00:00Z',
    offset: '+01:00',
  })
}
