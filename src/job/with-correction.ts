import { bad, type Reading } from '../corner/index.ts'
import { effectiveData } from './effective-data.ts'
import type { Job } from './entry.ts'
import { readJob } from './read-job.ts'
import { writeJob } from './write-job.ts'

/** What a person typed over a quantity of an earlier entry. @source definition */
export interface FieldCorrection {
  /** Place of the entry in the log, from 0. */
  readonly entry: number
  /** Path in its data, as in `Typing.path`: `reads[0]`. */
  readonly path: string
  readonly text: string
  /** The device's clock; left out until the correction is kept. */
  readonly at?: string | undefined
  readonly why?: string | undefined
}

/**
 * The job with a correction of one field appended; nothing before it changes. A text that cannot be read
 * gives the problems instead, and the job stays as it was.
 *
 * @source own derivation: docs/methods/formats.md
 */
export function withCorrection(job: Job, { entry, path, text, at, why }: FieldCorrection): Reading<Job> {
  const data = effectiveData(job.entries)[entry]?.data
  const steps = path.match(/[^.[\]]+/g) ?? []
  const changed = data === undefined ? undefined : withText(data, steps, text)
  const top = steps[0]
  if (changed === undefined || top === undefined)
    return bad([
      {
        field: `entries[${entry}].data.${path}`,
        wrong: 'There is no such field to correct.',
        right: 'an entry of this job and the path of a field in its data',
      },
    ])
  const correction = {
    kind: 'correction',
    data: {
      of: entry,
      data: { [top]: (changed as Record<string, unknown>)[top] },
      ...(why === undefined ? {} : { why }),
    },
    ...(at === undefined ? {} : { at }),
  }
  const read = readJob(writeJob({ ...job, entries: [...job.entries, correction] }))
  if (read.ok) return read
  // The job was sound before, so whatever is wrong now is the field that was typed over.
  return bad(read.problems.map((problem) => ({ ...problem, field: `entries[${entry}].data.${path}` })))
}

/** A copy with the text at the path; undefined when the path leads nowhere. */
function withText(there: unknown, steps: readonly string[], text: string): unknown {
  const [step, ...rest] = steps
  if (step === undefined) return typeof there === 'object' ? undefined : text
  if (typeof there !== 'object' || there === null || !Object.hasOwn(there, step)) return undefined
  const inner = withText((there as Record<string, unknown>)[step], rest, text)
  if (inner === undefined) return undefined
  return Array.isArray(there)
    ? there.map((old, i) => (String(i) === step ? inner : old))
    : { ...there, [step]: inner }
}
