import { dirname, join } from 'node:path'
import { carriedJob, proofText } from '../../proof/index.ts'
import { folderName, writeWhole } from '../../store/index.ts'
import type { Outcome } from '../files/outcome.ts'
import { carried } from '../record/carried.ts'
import { photosOf } from '../record/carried-photos.ts'
import { proofOfCarried } from '../record/proof-of-carried.ts'

/** What `carry` can be told. */
export interface CarryOptions {
  readonly to?: string
  readonly overwrite?: boolean
}

/** `axlewright carry JOB`: the job with its photos as one file. It ends with 1 when a photo is not with it. */
export async function carryCommand(path: string, options: CarryOptions): Promise<Outcome> {
  const job = await carried(path)
  const proof = await proofOfCarried(job)
  const { photos, told } = await photosOf(job)
  const bytes = carriedJob({ proof: new TextEncoder().encode(proofText(proof)), photos })
  const to = options.to ?? join(dirname(path), `${folderName(job.whose.job)}.job.zip`)
  writeWhole(to, bytes, { replace: options.overwrite ?? false })
  const personal = proof.private?.length ?? 0
  const lines = [
    ...job.told,
    ...told,
    `${to}: ${proof.entries.length} entries, ${proof.snapshots.length} files, ${photos.size} photos, ${size(bytes.length)}.`,
    ...(personal > 0
      ? [`${personal} personal values go with it; "axlewright erase" takes them out of a job.`]
      : []),
    `On the other device: axlewright merge ${folderName(job.whose.job)}.job.zip --to ${folderName(job.whose.job)}`,
  ]
  return { out: `${lines.join('\n')}\n`, code: told.length > 0 ? 1 : 0 }
}

const size = (bytes: number): string =>
  bytes < 1024 * 1024 ? `${Math.ceil(bytes / 1024)} kB` : `${(bytes / 1024 / 1024).toFixed(1)} MB`
