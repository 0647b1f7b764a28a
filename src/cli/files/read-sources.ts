import { type Reading, readCorner } from '../../corner/index.ts'
import { foldJob, readJob } from '../../job/index.ts'
import { readKit } from '../../kit/index.ts'
import type { SheetSources } from '../../sheet/index.ts'
import { readSpec } from '../../spec/index.ts'
import { candidates, endings, findModel } from './find-model.ts'
import { BadInput } from './outcome.ts'
import { problemLines, wholeOf } from './problem-lines.ts'
import { readJsonFile } from './read-json-file.ts'

/** A job file and everything it names, each checked whole; all that is missing or wrong is told in one go. */
export function readSources(jobPath: string, given: readonly string[] = []): SheetSources {
  const job = wholeOf(jobPath, readJob(readJsonFile(jobPath)))
  const { opened } = foldJob(job.entries)
  if (!opened)
    throw new BadInput([
      `${jobPath}: The job has no “opened” entry, so nobody knows which vehicle it is. Write one as its first entry.`,
    ])
  const files = candidates(jobPath, given)
  const faults: string[] = []
  const model = <T>(
    kind: keyof typeof endings,
    id: string | undefined,
    read: (json: unknown) => Reading<T>,
  ): T | null => {
    if (id === undefined) return null
    const found = findModel(kind, id, files, given)
    if (!found) {
      faults.push(
        `The job names the ${kind} “${id}”, and no ${endings[kind]} file beside it (or one folder up) has that id. Put it there, or name it with --with FILE.`,
      )
      return null
    }
    const reading = read(found.value)
    if (reading.ok) return reading.value
    faults.push(...problemLines(found.path, reading.problems))
    return null
  }
  const front = model('corner', opened.corners.front, readCorner)
  const rear = model('corner', opened.corners.rear, readCorner)
  const spec = model('spec', opened.spec, readSpec)
  const kit = model('kit', opened.kit, readKit)
  if (faults.length > 0 || !front) throw new BadInput(faults)
  return { job, corners: { front, rear }, spec, kit }
}
