import { type Entry, inCausalOrder, isSealed, type PrivateValue, type SealedEntry } from '../job/index.ts'
import { concealed, type Signer, sealEntries, verifyEntries } from '../proof/index.ts'
import { clockNow } from './clock-now.ts'
import type { Appended, KeptJob, Whose } from './log-store.ts'
import { newEntries } from './new-entries.ts'
import { workshopJob } from './own-workshop.ts'
import { keepPrivate, privateBeside } from './private-beside.ts'
import { refused } from './refused.ts'

/**
 * Takes a job file into a log: what others sealed of it as it is, what nobody sealed yet sealed by this device, with what is
 * personal as a token, and itself beside the log before the log names it.
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
    values = [],
  }: {
    readonly path: string
    readonly whose: Whose
    readonly entries: readonly Entry[]
    /** Personal values that the file carries for what is sealed in it. */
    readonly values?: readonly PrivateValue[]
  },
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
  let beside: readonly string[] = []
  const change = kept.change(whose, async (known) => {
    const together = inCausalOrder([...known, ...entries.filter(isSealed)]) as readonly SealedEntry[]
    const [broken] = await verifyEntries(together, whose)
    if (broken)
      throw refused(
        'not-intact',
        `entry ${broken.entry + 1}`,
        `Entry ${broken.entry + 1} of what is sealed already is not intact: ${broken.sentence} Nothing was written.`,
        'Take another copy of the job.',
      )
    const there = [...(await privateBeside(kept, together)).values, ...values]
    const fresh = newEntries(
      { path, entries },
      {
        known: together,
        device: signer.key,
        add,
        values: there,
        ...(saying === undefined ? {} : { saying }),
      },
    )
    const hidden = concealed([...together, ...fresh], () => crypto.getRandomValues(new Uint8Array(32)))
    const sealed = await sealEntries(hidden.entries, { ...whose, signer, person, ...clockNow() })
    beside = await keepPrivate(kept, [...hidden.values, ...values])
    return sealed
  })
  return change.catch(async (error: unknown) => {
    for (const commitment of beside) await kept.forget(commitment)
    throw error
  })
}
