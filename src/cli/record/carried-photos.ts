import { photosNamed } from '../../job/index.ts'
import { erasedBytes, hashOf } from '../../proof/index.ts'
import { Refusal } from '../../quantity/index.ts'
import { jobFolder } from '../../store/index.ts'
import type { Carried } from './carried.ts'
import { carriedJobIn } from './carried-job-in.ts'

/** The photos that a job names, as it carries them. */
export interface PhotosOfJob {
  readonly photos: ReadonlyMap<string, Uint8Array>
  /** Those that are not with it, or are other ones by now: what to say of each. */
  readonly told: readonly string[]
}

/** The photos of a job, from its folder or the file that carried it. */
export async function photosOf(job: Carried): Promise<PhotosOfJob> {
  const photos = new Map<string, Uint8Array>()
  const told: string[] = []
  const within = job.from === 'proof' ? carriedJobIn(job.path) : null
  const folder = job.from === 'folder' ? jobFolder(job.path) : null
  const there = new Set(folder ? await folder.kept() : [])
  for (const [hash, entry] of photosNamed(job.entries)) {
    if (there.has(hashOf(erasedBytes(hash)))) continue
    try {
      const bytes = folder ? await folder.beside(hash) : within?.photos.get(hash)
      if (bytes) photos.set(hash, bytes)
      else told.push(`${job.path}: The photo of entry ${entry + 1} is not with it: ${hash}.`)
    } catch (error) {
      if (!(error instanceof Refusal)) throw error
      told.push(`${error.sentence} It is left out.`)
    }
  }
  return { photos, told }
}
