import type { SealedEntry } from '../job/index.ts'
import { fingerprint, verifyEntries, type WorkshopState, workshopState } from '../proof/index.ts'
import { Refusal } from '../quantity/index.ts'
import type { LogStore } from './log-store.ts'
import { refused } from './refused.ts'

/** The name of a workshop's own log among jobs. @source definition */
export const workshopJob = 'workshop'

/** The workshop to which a device belongs, as its own log says. @source definition */
export interface OwnWorkshop {
  readonly name: string
  /** Public key of the root. */
  readonly root: string
  readonly fingerprint: string
  readonly log: readonly SealedEntry[]
  readonly state: WorkshopState
}

/**
 * The workshop to which a device belongs, out of the log that is kept under the name `workshop`.
 *
 * @param store where it is kept
 * @param where in words: "in this browser", or the path of the file
 * @returns null where it belongs to no workshop yet
 * @throws {Refusal} `spoilt` where the log is not intact: then nobody can be told by it
 * @source own derivation: docs/methods/record.md
 */
export async function ownWorkshop(
  store: Pick<LogStore, 'job'>,
  where = 'in this browser',
): Promise<OwnWorkshop | null> {
  try {
    const { entries, whose, spoilt } = await store.job(workshopJob).read()
    if (!whose || entries.length === 0) return null
    const broken = await verifyEntries(entries, whose)
    if (spoilt.length > 0 || broken.length > 0)
      throw refused(
        'spoilt',
        where,
        `The workshop’s log ${where} is not intact, so nobody can be told by it. ${(spoilt[0] ?? broken[0])!.sentence}`,
        'Move it away and join the workshop again.',
      )
    const root = entries[0]!.device
    return {
      name: whose.workshop,
      root,
      fingerprint: fingerprint(root),
      log: entries,
      state: workshopState(entries, root),
    }
  } catch (error) {
    if (error instanceof Refusal && error.code === 'no-job') return null
    throw error
  }
}
