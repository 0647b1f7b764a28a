import type { SealedEntry } from '../../job/index.ts'
import { carriedParts, readProof } from '../../proof/index.ts'
import { Refusal } from '../../quantity/index.ts'
import { pinAll, takeIn } from '../../store/browser/index.ts'
import type { KeepAsks } from './keep-messages.ts'
import type { Keeper } from './keeper.ts'
import { rowOf } from './kept-rows.ts'

/**
 * Takes in the proof of a job: all of it, or what is new in it. What is not intact is not taken in.
 *
 * @throws {Refusal} `no-proof`, `not-intact`, `other-job`
 */
export async function takenIn(
  { store, device }: Keeper,
  { name, bytes }: KeepAsks['takeIn']['give'],
): Promise<KeepAsks['takeIn']['back']> {
  const carried = carriedParts(bytes)
  const { proof, spoilt } = readProof(carried.proof)
  if (!proof)
    throw new Refusal<'no-proof'>({
      code: 'no-proof',
      at: name,
      given: '',
      sentence: `${name} is no proof that can be taken in: ${spoilt[0]?.sentence ?? 'it holds no job.'}`,
      remedy: 'Take the file as it was exported, not one that was opened and saved by another program.',
    })
  const { head, entries, snapshots } = proof
  const whose = { workshop: head.workshop, job: head.job }
  const kept = store.job(head.job)
  await pinAll(kept, 'not written yet', snapshots)
  for (const photo of carried.photos.values()) await kept.keep(photo)
  const { appended, known } = await takeIn(
    kept,
    { path: name, whose, entries: entries as readonly SealedEntry[], values: proof.private ?? [] },
    { signer: await device(), person: '', add: true },
  )
  const told =
    appended.length === 0
      ? [`Nothing new: all ${known} entries of it are here already.`]
      : [
          `${appended.length} ${appended.length === 1 ? 'entry' : 'entries'} taken in${known > 0 ? `; ${known} were here already` : ''}. All of them are intact.`,
        ]
  return { row: await rowOf(store, head.job), told }
}
