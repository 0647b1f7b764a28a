import type { Problem } from '../../corner/index.ts'
import { type Entry, jobAgainst, readJob } from '../../job/index.ts'
import { BadInput } from '../files/outcome.ts'
import { problemLines } from '../files/problem-lines.ts'
import type { Carried } from './carried.ts'
import { carriedSources } from './carried-sources.ts'

/**
 * What is wrong with entries that would be added to a job: in themselves, and against the files that it names.
 *
 * @returns fields counted from the first of the new ones: `entries[0].data.joint`
 */
export function entriesAgainst(job: Carried, fresh: readonly Entry[]): readonly Problem[] {
  const before = job.entries.length
  const read = readJob({ format: 1, ...job.whose, entries: [...job.entries, ...fresh] })
  const ofFresh = (problems: readonly Problem[]) =>
    problems.flatMap((problem) => {
      const [head, place] = /^entries\[(\d+)\]/.exec(problem.field) ?? []
      return head === undefined || Number(place) < before
        ? []
        : [{ ...problem, field: `entries[${Number(place) - before}]${problem.field.slice(head.length)}` }]
    })
  if (!read.ok) {
    const mine = ofFresh(read.problems)
    if (mine.length === 0) throw new BadInput(problemLines(job.path, read.problems))
    return mine
  }
  const { corners, kit } = carriedSources(job, [])
  const { entries } = read.value
  return ofFresh(
    jobAgainst(
      { ...job.whose, entries },
      { front: corners.front, rear: corners.rear ?? undefined, kit: kit ?? undefined },
    ),
  )
}
