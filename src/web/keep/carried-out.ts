import { photosNamed } from '../../job/index.ts'
import { carriedJob, proofOf, proofText } from '../../proof/index.ts'
import { ownWorkshop, privateBeside } from '../../store/browser/index.ts'
import type { KeepAsks } from './keep-messages.ts'
import type { Keeper } from './keeper.ts'

/** A job as one file that anybody can verify anywhere: the proof, and where there are photos, a bundle of both. */
export async function carriedOut(
  { store }: Keeper,
  { job }: KeepAsks['carryOut']['give'],
): Promise<KeepAsks['carryOut']['back']> {
  const kept = store.job(job)
  const [{ whose, entries }, snapshots, own] = await Promise.all([
    kept.read(),
    kept.pinned(),
    ownWorkshop(store),
  ])
  if (!whose) throw new Error(`Job ${job} holds nothing to carry.`)
  const workshop = own?.name === whose.workshop ? own : null
  const proof = new TextEncoder().encode(
    proofText(
      proofOf({
        ...whose,
        entries,
        files: snapshots,
        values: (await privateBeside(kept, entries)).values,
        root: workshop?.root ?? null,
        workshopLog: workshop?.log ?? [],
      }),
    ),
  )
  const photos = new Map<string, Uint8Array>()
  for (const hash of photosNamed(entries).keys()) {
    const bytes = await kept.beside(hash)
    if (bytes) photos.set(hash, bytes)
  }
  return photos.size === 0
    ? { name: `${job}.proof.json`, bytes: proof }
    : { name: `${job}.job.zip`, bytes: carriedJob({ proof, photos }) }
}
