import { foldJob, inCausalOrder, type SealedEntry } from '../../job/index.ts'
import { modelsOfLog, sealEntries, signOffEntry, verifyEntries } from '../../proof/index.ts'
import { Refusal } from '../../quantity/index.ts'
import { clockNow } from '../../store/browser/index.ts'
import type { KeepAsks } from './keep-messages.ts'
import type { Keeper } from './keeper.ts'
import { rowOf } from './kept-rows.ts'

declare const __ENGINE__: string

type Code = 'undecided' | 'not-intact' | 'no-model'

/**
 * Signs a job off: its heads, and what they mean.
 *
 * @throws {Refusal} `undecided` while the log says two things; `not-intact`, `no-model`, `no-job`
 */
export async function signedOff(
  { store, device }: Keeper,
  { job, hand, remark }: KeepAsks['signOff']['give'],
): Promise<KeepAsks['signOff']['back']> {
  const kept = store.job(job)
  const [{ whose }, pinned, signer] = await Promise.all([kept.read(), kept.pinned(), device()])
  if (!whose) throw new Error(`Job ${job} holds nothing to sign.`)
  await kept.change(whose, async (known) => {
    const entries = inCausalOrder(known) as readonly SealedEntry[]
    const [broken] = await verifyEntries(entries, whose)
    if (broken)
      throw refusal(
        'not-intact',
        `Entry ${broken.entry + 1} is not intact: ${broken.sentence} What is not intact cannot be signed.`,
        'Bring the job in again from another copy.',
      )
    const [open] = foldJob(entries).troubles.filter(({ choice }) => choice !== undefined)
    if (open) throw refusal('undecided', `Not signed: the log says two things. ${open.sentence}`, open.remedy)
    const models = modelsOfLog(entries, pinned)
    const absent = models.find(({ snapshot }) => !snapshot)
    if (absent || models.length === 0)
      throw refusal(
        'no-model',
        `The job is worked by the ${absent?.what ?? 'corner'} “${absent?.id ?? ''}”, which is not kept with it.`,
        'Bring in a file of the job that holds it.',
      )
    const file = (role: string) => models.find((one) => one.role === role)?.snapshot?.file
    const entry = signOffEntry(entries, {
      files: { front: file('front'), rear: file('rear'), spec: file('spec'), kit: file('kit') },
      engine: __ENGINE__,
      hand,
      ...(remark === null ? {} : { remark }),
    })
    return sealEntries([...entries, entry], { ...whose, signer, person: hand, ...clockNow() })
  })
  return { row: await rowOf(store, job) }
}

const refusal = (code: Code, sentence: string, remedy: string) =>
  new Refusal<Code>({ code, at: 'job', given: '', sentence, remedy })
