import type { Corner, Problem } from '../corner/index.ts'
import { specAgainstCorner } from '../spec/index.ts'
import { foldJob } from './fold-job.ts'
import { jobAgainst } from './job-against.ts'
import type { AnyFile } from './read-any.ts'

/** A file that was read, under the name by which the person knows it. @source definition */
export interface NamedFile {
  readonly name: string
  readonly file: AnyFile
}

/**
 * What sound files say against each other: a job against the corners and the kit that it names, a spec sheet
 * against the corners of the job that names it, or against all corners where no job is among the files. A file
 * that is named but not given is no fault.
 *
 * @returns problems by file name; files without any are left out
 * @source definition
 * @example checkTogether([]) // []
 */
export function checkTogether(
  files: readonly NamedFile[],
): readonly { readonly name: string; readonly problems: readonly Problem[] }[] {
  const corners = files.flatMap(({ file }) => (file.format === 'corner' ? [file.value] : []))
  const jobs = files.flatMap(({ name, file }) =>
    file.format === 'job' ? [{ name, job: file.value, opened: foldJob(file.value.entries).opened }] : [],
  )
  const corner = (id: string | undefined) => corners.find((c) => c.id === id)
  const kit = (id: string | undefined) =>
    files.flatMap(({ file }) => (file.format === 'kit' && file.value.id === id ? [file.value] : []))[0]

  const told = files.map(({ name, file }): { name: string; problems: readonly Problem[] } => {
    if (file.format === 'job') {
      const opened = jobs.find((j) => j.job === file.value)?.opened
      const beside = {
        front: corner(opened?.corners.front),
        rear: corner(opened?.corners.rear),
        kit: kit(opened?.kit),
      }
      return { name, problems: jobAgainst(file.value, beside) }
    }
    if (file.format !== 'spec') return { name, problems: [] }
    const naming = jobs.filter(({ opened }) => opened?.spec === file.value.id)
    const meant: readonly (Corner | undefined)[] =
      jobs.length === 0
        ? corners
        : naming.flatMap(({ opened }) => [corner(opened?.corners.front), corner(opened?.corners.rear)])
    return {
      name,
      problems: [...new Set(meant)].flatMap((c) => (c ? specAgainstCorner(file.value, c) : [])),
    }
  })
  return told.filter(({ problems }) => problems.length > 0)
}
