import { inCausalOrder, isSealed, type SealedEntry, withCorrection, withReferences } from '../../job/index.ts'
import { BadInput, type Outcome } from '../files/outcome.ts'
import { problemLines } from '../files/problem-lines.ts'
import { appended } from '../record/appended.ts'
import { carried } from '../record/carried.ts'

/** What `correct` can be told. */
export interface CorrectOptions {
  readonly person: string
  readonly why?: string
}

/** `axlewright correct JOB ENTRY FIELD TEXT`: one field typed over, as an entry of its own; what was sealed stays. */
export async function correctCommand(
  path: string,
  [which, field, text]: readonly [string, string, string],
  { person, why }: CorrectOptions,
): Promise<Outcome> {
  const job = await carried(path)
  const entries = inCausalOrder(job.entries)
  const place = /^\d{1,9}$/.test(which)
    ? Number(which)
    : entries.findIndex((one) => isSealed(one) && which.length >= 8 && one.id.startsWith(which.toLowerCase()))
  const target = entries[place]
  if (!target)
    throw new BadInput([
      `${path}: There is no entry “${which}”. Say its place, 0 to ${entries.length - 1}, or the beginning of its id.`,
    ])
  const read = withCorrection(
    { ...job.whose, entries },
    { entry: place, path: field, text, ...(why === undefined ? {} : { why }) },
  )
  if (!read.ok) throw new BadInput(problemLines(path, read.problems))
  const correction = withReferences(read.value.entries.at(-1)!, (of) =>
    typeof of === 'number' ? (entries[of] as SealedEntry).id : of,
  )
  const told = await appended(job, correction, person)
  const lines = [
    ...told,
    `Corrected: ${field} of entries[${place}], ${target.kind}, now says “${text}”. What was sealed before stays, and says what it said.`,
  ]
  return { out: `${lines.join('\n')}\n`, code: 0 }
}
