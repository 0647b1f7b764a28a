import { type CarriedJob, readCarriedJob } from './carried-job.ts'

/** How every part of a ZIP begins. @source APPNOTE.TXT 6.3.10, 4.3.7 */
const opening = [0x50, 0x4b, 0x03, 0x04] as const

/**
 * The proof in a file, and the photos that came with it: a file for carrying holds both, any other file is taken as the
 * proof itself.
 *
 * @throws {Refusal} `no-carried-file`; `cut-off`; `changed`; `too-much`; `strange-name`
 * @source own derivation: docs/methods/carrying.md
 */
export const carriedParts = (bytes: Uint8Array): CarriedJob =>
  opening.every((byte, i) => bytes[i] === byte) ? readCarriedJob(bytes) : { proof: bytes, photos: new Map() }
