import { type Proof, proofOf } from '../../proof/index.ts'
import { BadInput } from '../files/outcome.ts'
import type { Carried } from './carried.ts'
import { ownWorkshop } from './own-workshop.ts'

/** A job, however it was carried, as a proof, with the workshop's log as far as it is at hand. */
export async function proofOfCarried(job: Carried): Promise<Proof> {
  const { path, whose, entries, snapshots, values, lostValues, spoilt, proof: given } = job
  if (given?.beyond)
    throw new BadInput([`${path}: A newer version made this proof; write it anew with that one, or copy it.`])
  if (spoilt[0])
    throw new BadInput([
      `${path}, line ${spoilt[0].line}: ${spoilt[0].sentence} Merge it with another copy of the job first.`,
    ])
  const own = await ownWorkshop()
  const workshop = own?.name === whose.workshop ? own : null
  return proofOf({
    ...whose,
    entries,
    files: snapshots,
    values: values.filter(({ commitment }) => !lostValues.includes(commitment)),
    root: workshop?.root ?? given?.head.root ?? null,
    workshopLog: workshop?.log ?? given?.workshop ?? [],
  })
}
