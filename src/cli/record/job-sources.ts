import type { SheetSources } from '../../sheet/index.ts'
import { carried } from './carried.ts'
import { carriedSources } from './carried-sources.ts'

/** A job with the models it names, however it is carried: a job file, a job's folder, or a proof. */
export async function jobSources(path: string, given: readonly string[] = []): Promise<SheetSources> {
  return carriedSources(await carried(path), given)
}
