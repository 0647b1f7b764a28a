import { type Entry, foldJob, inCausalOrder, isSealed } from '../../job/index.ts'
import { jobFolder, takeIn } from '../../store/index.ts'
import { BadInput } from '../files/outcome.ts'
import type { Carried } from './carried.ts'
import { deviceSigner } from './device-signer.ts'
import { handAsked } from './hand-asked.ts'

/**
 * Seals one more entry into a job's folder, unless it would itself be trouble.
 *
 * @param entry names others by their ids
 * @returns what is to be said of it
 */
export async function appended(job: Carried, entry: Entry, person: string): Promise<readonly string[]> {
  const { path, whose } = job
  if (job.from !== 'folder')
    throw new BadInput([
      `${path}: Only a job that is kept in its folder can be written on. Name the folder that "seal" or "merge" made.`,
    ])
  const entries = inCausalOrder(job.entries)
  const next = [...entries, entry]
  const mine = foldJob(next).troubles.filter(
    (one) => one.entries.includes(entries.length) && one.choice === undefined,
  )
  if (mine.length > 0)
    throw new BadInput([
      ...mine.map(({ sentence, remedy }) => `${sentence} ${remedy}`),
      'Nothing was written.',
    ])
  const hand = await handAsked(person, whose.workshop)
  const done = await takeIn(
    jobFolder(path),
    { path, whose, entries: [...entries.filter(isSealed), entry] },
    { signer: await deviceSigner(), person, add: true },
  )
  return [...hand, ...done.told]
}
