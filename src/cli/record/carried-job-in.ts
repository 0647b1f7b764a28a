import { closeSync, openSync, readSync, statSync } from 'node:fs'
import { type CarriedJob, readCarriedJob } from '../../proof/index.ts'
import { readBytes } from '../files/read-bytes.ts'

/** Bytes; the room that reads it knows the limits of what is in it. */
const most = 520 * 1024 * 1024

/** The job in a file for carrying, told by how it begins; null for any other file. */
export function carriedJobIn(path: string): CarriedJob | null {
  if (!statSync(path, { throwIfNoEntry: false })?.isFile() || !beginsAsZip(path)) return null
  return readCarriedJob(readBytes(path, most, 'Carry the job’s folder instead.'))
}

function beginsAsZip(path: string): boolean {
  try {
    const file = openSync(path, 'r')
    try {
      const head = Buffer.alloc(4)
      return readSync(file, head) === 4 && head.readUInt32LE() === 0x04034b50
    } finally {
      closeSync(file)
    }
  } catch {
    return false
  }
}
