import { inCausalOrder } from '../../job/index.ts'
import { sealEntries } from '../../proof/index.ts'
import { clockNow } from '../../store/browser/index.ts'
import { toSeal } from '../state/to-seal.ts'
import type { KeepAsks } from './keep-messages.ts'
import type { Keeper } from './keeper.ts'
import { rowOf } from './kept-rows.ts'

/** Seals what a person noted on a job, and says what stays a draft. Nothing is forgotten before it is on disk. */
export async function sealedEdits(
  { store, device }: Keeper,
  { job, edits, hand }: KeepAsks['seal']['give'],
): Promise<KeepAsks['seal']['back']> {
  const kept = store.job(job)
  const { whose } = await kept.read()
  if (!whose) throw new Error(`Job ${job} holds nothing to write on.`)
  const signer = await device()
  let rest = edits
  await kept.change(whose, async (known) => {
    const entries = inCausalOrder(known)
    const parted = toSeal({ ...whose, entries }, edits)
    rest = parted.rest
    return sealEntries([...entries, ...parted.fresh], { ...whose, signer, person: hand, ...clockNow() })
  })
  return { row: await rowOf(store, job), rest }
}
