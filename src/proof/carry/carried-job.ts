import { hashOf } from '../hash-of.ts'
import { joined } from '../photo/joined.ts'
import { photoType } from '../photo/photo-type.ts'
import { carryRefusal } from './carry-refusal.ts'
import { readZip } from './read-zip.ts'
import { zipInParts } from './zip-in-parts.ts'

/** A job as one file holds it. @source definition */
export interface CarriedJob {
  /** The proof, in its one spelling. */
  readonly proof: Uint8Array
  /** Photos by hash. */
  readonly photos: ReadonlyMap<string, Uint8Array>
}

const proofName = 'job.proof.json'
const endings = { 'image/jpeg': '.jpg', 'image/png': '.png', 'image/webp': '.webp' } as const
const mega = 1024 * 1024
/** More would not go into the memory of a tablet. */
const limits = { files: 5000, each: 128 * mega, all: 512 * mega }

/**
 * A job and its photos as one file (`*.job.zip`): the same job gives the same bytes each time. It can be looked into with
 * whatever opens a ZIP.
 *
 * @throws {Refusal} `too-much`
 * @source own derivation: docs/methods/carrying.md
 */
export function carriedJob({ proof, photos }: CarriedJob): Uint8Array<ArrayBuffer> {
  const sizes = [proof, ...photos.values()].map(({ length }) => length)
  const all = sizes.reduce((sum, size) => sum + size, 0)
  if (sizes.length > limits.files || all > limits.all || Math.max(...sizes) > limits.each)
    throw carryRefusal(
      'too-much',
      `${Math.ceil(all / mega)} MB`,
      `This job with its photos is ${Math.ceil(all / mega)} MB, and one file for carrying holds ${limits.all / mega}.`,
      'Carry the job’s whole folder instead.',
    )
  const parts: Uint8Array[] = []
  const zip = zipInParts((part) => parts.push(part))
  zip.add({ name: proofName, bytes: proof, pack: true })
  for (const [hash, bytes] of [...photos].sort(([a], [b]) => (a < b ? -1 : 1))) {
    const type = photoType(bytes)
    zip.add({ name: `photos/${hash}${type ? endings[type] : ''}`, bytes, pack: false })
  }
  zip.end()
  return joined(parts)
}

/**
 * A job out of such a file: each photo is what its name says. What the proof says is not looked at here.
 *
 * @throws {Refusal} `no-carried-file`; `cut-off`; `changed`; `too-much`; `strange-name`
 * @source own derivation: docs/methods/carrying.md
 */
export function readCarriedJob(bytes: Uint8Array): CarriedJob {
  const contents = readZip({ size: bytes.length, read: (at, n) => bytes.subarray(at, at + n) }, limits)
  const proof = contents.find(({ name }) => name === proofName)
  if (!proof)
    throw carryRefusal(
      'no-carried-file',
      contents[0]?.name ?? 'nothing',
      'There is no job in this file.',
      'Name a file that "carry" wrote.',
    )
  const photos = new Map<string, Uint8Array>()
  for (const content of contents) {
    if (content === proof) continue
    const hash = /^photos\/([0-9a-f]{64})(\.(jpg|png|webp))?$/.exec(content.name)?.[1]
    if (!hash)
      throw carryRefusal(
        'strange-name',
        content.name,
        `“${content.name}” in this file belongs to no job. Nothing was taken in.`,
        'Have it written again by the program.',
      )
    const held = content.bytes()
    if (hashOf(held) !== hash)
      throw carryRefusal('changed', hash, `The photo “${content.name}” is another one than its name says.`)
    photos.set(hash, held)
  }
  return { proof: proof.bytes(), photos }
}
