import { dirname, join } from 'node:path'
import { coverageOf, inCausalOrder } from '../../job/index.ts'
import { fingerprint, proofText } from '../../proof/index.ts'
import { folderName, writeWhole } from '../../store/index.ts'
import type { Outcome } from '../files/outcome.ts'
import { carried } from '../record/carried.ts'
import { proofOfCarried } from '../record/proof-of-carried.ts'

/** What `prove` can be told. */
export interface ProveOptions {
  readonly to?: string
  readonly overwrite?: boolean
}

/** `axlewright prove JOB`: the job as one file that anybody can verify anywhere. */
export async function proveCommand(path: string, options: ProveOptions): Promise<Outcome> {
  const job = await carried(path)
  const { whose, entries, snapshots, values, lostValues, told } = job
  const proof = await proofOfCarried(job)
  const to = options.to ?? join(dirname(path), `${folderName(whose.job)}.proof.json`)
  writeWhole(to, proofText(proof), { replace: options.overwrite ?? false })
  const last = coverageOf(inCausalOrder(entries)).at(-1)
  const { root } = proof.head
  const lines = [
    ...told,
    ...(lostValues.length > 0
      ? [
          `${lostValues.length} personal values beside the log are not what was sealed any more, so they are left out: erase them, or bring in another copy.`,
        ]
      : []),
    `${to}: ${entries.length} entries and ${snapshots.length} files${values.length > lostValues.length ? `, with ${values.length - lostValues.length} personal values that "erase" takes out of it` : ''}.`,
    root === null
      ? 'The workshop’s log is not here, so the proof cannot say whose hands these are.'
      : `For the paper: the workshop’s root is ${fingerprint(root)}.`,
    last === undefined
      ? 'It is not signed off: entries that somebody cuts off at its end would leave no trace.'
      : last.late.length > 0
        ? `The last sign-off does not cover ${last.late.length} of its entries.`
        : 'The last sign-off covers all of it.',
  ]
  return { out: `${lines.join('\n')}\n`, code: 0 }
}
