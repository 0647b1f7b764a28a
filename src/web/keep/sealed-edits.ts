import { inCausalOrder } from '../../job/index.ts'
import { concealed, revealed, sealEntries } from '../../proof/index.ts'
import { clockNow, keepPrivate, privateBeside } from '../../store/browser/index.ts'
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
    // Laid on the log as people read it, so that a draft knows its own entry again.
    const { values } = await privateBeside(kept, entries)
    const parted = toSeal({ ...whose, entries: revealed(entries, values).entries }, edits)
    rest = parted.rest
    if (parted.fresh.length === 0) return []
    // What is personal lies beside the log before the log names it.
    const hidden = concealed([...entries, ...parted.fresh], salt)
    const sealed = await sealEntries(hidden.entries, { ...whose, signer, person: hand, ...clockNow() })
    await keepPrivate(kept, hidden.values)
    return sealed
  })
  return { row: await rowOf(store, job), rest }
}

const salt = () => crypto.getRandomValues(new Uint8Array(32))
