import { join } from 'node:path'
import type { SealedEntry } from '../../job/index.ts'
import { fingerprint, verifyEntries, type WorkshopState, workshopState } from '../../proof/index.ts'
import { Refusal } from '../../quantity/index.ts'
import { jobFolder, type KeptJob } from '../../store/index.ts'
import { BadInput } from '../files/outcome.ts'
import { ownFolder } from './own-folder.ts'

/** The name of a workshop's own log among jobs. */
export const workshopJob = 'workshop'

/** The workshop to which this device belongs, as its own log says. */
export interface OwnWorkshop {
  readonly name: string
  /** Public key of the root. */
  readonly root: string
  readonly fingerprint: string
  readonly log: readonly SealedEntry[]
  readonly state: WorkshopState
}

/** The workshop's log on this device. */
export const workshopFolder = (): KeptJob => jobFolder(join(ownFolder(), workshopJob))

/** Null where this device belongs to no workshop yet. */
export async function ownWorkshop(): Promise<OwnWorkshop | null> {
  try {
    const { entries, whose, spoilt } = await workshopFolder().read()
    if (!whose || entries.length === 0) return null
    const broken = await verifyEntries(entries, whose)
    if (spoilt.length > 0 || broken.length > 0)
      throw new BadInput([
        `${join(ownFolder(), workshopJob, 'log.jsonl')}: The workshop’s log on this device is not intact, so nobody can be told by it. ${(spoilt[0] ?? broken[0])!.sentence} Move it away and join the workshop again.`,
      ])
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
