import type { Snapshot } from '../proof/index.ts'
import { Refusal } from '../quantity/index.ts'
import type { KeptJob } from './log-store.ts'
import type { StoreRefusal } from './store-refusal.ts'

/**
 * Keeps files beside entries that are kept already; when one cannot be kept, both are said.
 *
 * @param where the entries are: "on disk in jobs/7-0412", "kept in this browser"
 * @throws {Refusal} `no-room`, `read-only`
 * @source definition
 */
export async function pinAll(kept: KeptJob, where: string, files: readonly Snapshot[]): Promise<void> {
  try {
    for (const file of files) await kept.pin(file)
  } catch (error) {
    if (!(error instanceof Refusal)) throw error
    throw new Refusal<StoreRefusal>({
      code: error.code as StoreRefusal,
      at: error.at,
      given: error.given,
      sentence: `The entries are ${where}; a file that goes with them is not. ${error.sentence}`,
      remedy: error.remedy,
    })
  }
}
