import { type PastResponse, responsesOf, type SheetSources } from '../../sheet/index.ts'
import { BadInput } from '../files/outcome.ts'
import { jobSources } from './job-sources.ts'

/** Jobs, as files or folders, with everything they name; the faults of all of them are told at once. */
export async function jobsSources(
  paths: readonly string[],
  given: readonly string[],
): Promise<readonly SheetSources[]> {
  const faults: string[] = []
  const read: SheetSources[] = []
  for (const path of paths)
    try {
      read.push(await jobSources(path, given))
    } catch (error) {
      if (!(error instanceof BadInput)) throw error
      faults.push(...error.lines.map((line) => (line.startsWith(path) ? line : `${path}: ${line}`)))
    }
  if (faults.length > 0) throw new BadInput(faults)
  return read
}

/** What the moves of other jobs have taught. */
export const learnedOf = async (
  paths: readonly string[],
  given: readonly string[],
): Promise<readonly PastResponse[]> => (await jobsSources(paths, given)).flatMap(responsesOf)
