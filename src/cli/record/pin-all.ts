import type { Snapshot } from '../../proof/index.ts'
import { Refusal } from '../../quantity/index.ts'
import type { KeptJob } from '../../store/index.ts'
import { BadInput } from '../files/outcome.ts'

/** Keeps files beside entries that are on disk already; when one cannot be kept, both are said. */
export async function pinAll(kept: KeptJob, folder: string, files: readonly Snapshot[]): Promise<void> {
  try {
    for (const file of files) await kept.pin(file)
  } catch (error) {
    if (!(error instanceof Refusal)) throw error
    throw new BadInput([
      `The entries are on disk in ${folder}; a file that goes with them is not. ${error.sentence}`,
      error.remedy,
    ])
  }
}
