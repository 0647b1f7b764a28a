import { proofOf, proofText } from '../../proof/index.ts'
import { ownWorkshop } from '../../store/browser/index.ts'
import type { KeepAsks } from './keep-messages.ts'
import type { Keeper } from './keeper.ts'

/** A job as one file that anybody can verify anywhere. */
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
  const proof = proofOf({
    ...whose,
    entries,
    files: snapshots,
    root: workshop?.root ?? null,
    workshopLog: workshop?.log ?? [],
  })
  return { name: `${job}.proof.json`, bytes: new TextEncoder().encode(proofText(proof)) }
}
