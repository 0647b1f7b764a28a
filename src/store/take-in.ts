import { type Entry, inCausalOrder, isSealed, type SealedEntry } from '../job/index.ts'
import { type Signer, sealEntries, verifyEntries } from '../proof/index.ts'
import { clockNow } from './clock-now.ts'
import type { Appended, KeptJob, Whose } from './log-store.ts'
import { newEntries } from './new-entries.ts'
import { workshopJob } from './own-workshop.ts'
import { refused } from './refused.ts'

/**
 * Takes a job file into a log: what others sealed of it as it is, what nobody sealed yet sealed by this device.
 *
 * @param file its name, whose it is, and its entries, sealed ones first
 * @param how `add`: all bare entries are new, whatever this device sealed before
 * @throws {Refusal} `other-job`; `not-intact` when what is sealed already is not; `sealed-otherwise`, `lacks-sealed`
 * @throws {Refusal} `spoilt`, `busy`, `no-room`, `read-only`
 * @source own derivation: docs/methods/record.md
 */
export async function takeIn(
  kept: KeptJob,
  {
    path,
    whose,
    entries,
  }: { readonly path: string; readonly whose: Whose; readonly entries: readonly Entry[] },
  how: {
    readonly signer: Signer
    readonly person: string
    readonly add?: boolean
    /** How a person says that all are new: "say --add". */
    readonly saying?: string
  },
): Promise<Appended> {
  const { signer, person, add = false, saying } = how
  if (whose.job === workshopJob)
    throw refused(
      'other-job',
      whose.job,
      `${path}: A job cannot be called “${workshopJob}”: the workshop’s own log is. Nothing was written.`,
      'Give the job another number.',
    )
  return kept.change(whose, async (known) => {
    const together = inCausalOrder([...known, ...entries.filter(isSealed)]) as readonly SealedEntry[]
    const [broken] = await verifyEntries(together, whose)
    if (broken)
      throw refused(
        'not-intact',
        `entry ${broken.entry + 1}`,
        `Entry ${broken.entry + 1} of what is sealed already is not intact: ${broken.sentence} Nothing was written.`,
        'Take another copy of the job.',
      )
    const fresh = newEntries(
      { path, entries },
      { known: together, device: signer.key, add, ...(saying === undefined ? {} : { saying }) },
    )
    return sealEntries([...together, ...fresh], { ...whose, signer, person, ...clockNow() })
  })
}
