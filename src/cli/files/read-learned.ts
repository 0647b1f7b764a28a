import { type PastResponse, responsesOf, type SheetSources } from '../../sheet/index.ts'
import { BadInput } from './outcome.ts'
import { readSources } from './read-sources.ts'

/** Job files with everything they name; the faults of all of them are told at once. */
export function readJobs(paths: readonly string[], given: readonly string[]): readonly SheetSources[] {
  const faults: string[] = []
  const read = paths.flatMap((path) => {
    try {
      return [readSources(path, given)]
    } catch (error) {
      if (!(error instanceof BadInput)) throw error
      faults.push(...error.lines.map((line) => (line.startsWith(path) ? line : `${path}: ${line}`)))
      return []
    }
  })
  if (faults.length > 0) throw new BadInput(faults)
  return read
}

/** What the moves of other jobs have taught. */
export const readLearned = (paths: readonly string[], given: readonly string[]): readonly PastResponse[] =>
  readJobs(paths, given).flatMap(responsesOf)
