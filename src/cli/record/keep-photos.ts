import { type Entry, photosNamed } from '../../job/index.ts'
import { erasedBytes, hashOf } from '../../proof/index.ts'
import { Refusal } from '../../quantity/index.ts'
import { jobFolder } from '../../store/index.ts'
import { BadInput } from '../files/outcome.ts'
import type { PhotosOfJob } from './carried-photos.ts'

/**
 * Keeps the photos that came with a job in its folder, whose entries are on disk already.
 *
 * @returns what is to be said: those that no copy had
 */
export async function keepPhotos(
  place: string,
  entries: readonly Entry[],
  given: readonly PhotosOfJob[],
): Promise<readonly string[]> {
  const folder = jobFolder(place)
  try {
    const there = new Set(await folder.kept())
    for (const { photos } of given)
      for (const [hash, bytes] of photos)
        if (!there.has(hash) && !there.has(hashOf(erasedBytes(hash)))) {
          await folder.keep(bytes)
          there.add(hash)
        }
    const lacking = [...photosNamed(entries)].filter(
      ([hash]) => !there.has(hash) && !there.has(hashOf(erasedBytes(hash))),
    )
    return lacking.map(([hash, entry]) => `The photo of entry ${entry + 1} is in no copy: ${hash}.`)
  } catch (error) {
    if (!(error instanceof Refusal)) throw error
    throw new BadInput([
      `The entries are on disk in ${place}; a photo that goes with them is not. ${error.sentence}`,
      error.remedy,
    ])
  }
}
