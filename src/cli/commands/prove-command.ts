import { dirname, join } from 'node:path'
import { coverageOf, inCausalOrder } from '../../job/index.ts'
import { fingerprint, proofOf, proofText } from '../../proof/index.ts'
import { folderName, writeWhole } from '../../store/index.ts'
import { BadInput, type Outcome } from '../files/outcome.ts'
import { carried } from '../record/carried.ts'
import { ownWorkshop } from '../record/own-workshop.ts'

/** What `prove` can be told. */
export interface ProveOptions {
  readonly to?: string
  readonly overwrite?: boolean
}

/** `axlewright prove JOB`: the job as one file that anybody can verify anywhere. */
export async function proveCommand(path: string, options: ProveOptions): Promise<Outcome> {
  const { whose, entries, snapshots, values, lostValues, spoilt, told, proof: given } = await carried(path)
  if (given?.beyond)
    throw new BadInput([`${path}: A newer version made this proof; write it anew with that one, or copy it.`])
  if (spoilt[0])
    throw new BadInput([
      `${path}, line ${spoilt[0].line}: ${spoilt[0].sentence} Merge it with another copy of the job first.`,
    ])
  const own = await ownWorkshop()
  const workshop = own?.name === whose.workshop ? own : null
  const proof = proofOf({
    ...whose,
    entries,
    files: snapshots,
    values: values.filter(({ commitment }) => !lostValues.includes(commitment)),
    root: workshop?.root ?? given?.head.root ?? null,
    workshopLog: workshop?.log ?? given?.workshop ?? [],
  })
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
