import { join } from 'node:path'
import {
  fileStore,
  type KeptJob,
  type OwnWorkshop,
  ownWorkshop as ownOf,
  workshopJob,
} from '../../store/index.ts'
import { ownFolder } from './own-folder.ts'

/** The workshop's log on this device. */
export const workshopFolder = (): KeptJob => fileStore(ownFolder()).job(workshopJob)

/** Null where this device belongs to no workshop yet. */
export const ownWorkshop = (): Promise<OwnWorkshop | null> =>
  ownOf(fileStore(ownFolder()), `in ${join(ownFolder(), workshopJob, 'log.jsonl')}`)
