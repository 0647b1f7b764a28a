import type { Entry, Job } from '../../job/index.ts'
import { buildJob } from './build-job.ts'
import type { Edit } from './messages.ts'

/** What of a job's edits can be sealed, and what stays a draft. */
export interface ToSeal {
  /** Bare entries, to follow all that is in the log. */
  readonly fresh: readonly Entry[]
  /** Texts that are not understood, a round that is not taken yet, what is only ticked. */
  readonly rest: readonly Edit[]
}

/** Parts the edits of a job into what its log gets and what the person has not finished. */
export function toSeal(file: Job, edits: readonly Edit[]): ToSeal {
  const { job, refused, form } = buildJob(file, edits)
  const opened = form ? edits.findLastIndex(({ kind }) => kind === 'turned') : edits.length
  const wrong = new Set(refused.map(({ edit }) => edit))
  const rest = edits.flatMap((edit, i): readonly Edit[] => {
    if (i === opened && edit.kind === 'turned') return [{ ...edit, moves: [] }]
    const stays =
      edit.kind === 'typed'
        ? wrong.has(i) && isLastOfField(edits, i)
        : edit.kind === 'again' || edit.kind === 'how'
          ? i > opened
          : wrong.has(i) || (edit.kind === 'done' && edit.entry === null && isTickedStill(edits, i))
    return stays ? [edit] : []
  })
  return { fresh: job.entries.slice(file.entries.length), rest }
}

function isLastOfField(edits: readonly Edit[], i: number): boolean {
  const edit = edits[i]!
  return (
    edit.kind === 'typed' &&
    !edits
      .slice(i + 1)
      .some((other) => other.kind === 'typed' && other.entry === edit.entry && other.path === edit.path)
  )
}

/** What is ticked on the way counts until the log hears of its joint again. */
function isTickedStill(edits: readonly Edit[], i: number): boolean {
  const edit = edits[i]!
  return (
    edit.kind === 'done' &&
    !edits
      .slice(i + 1)
      .some(
        (other) =>
          other.kind === 'done' &&
          other.entry !== null &&
          other.wheel === edit.wheel &&
          other.joint === edit.joint,
      )
  )
}
