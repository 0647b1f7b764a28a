import { crc32 } from '../photo/crc-32.ts'
import { carryRefusal } from './carry-refusal.ts'
import { packed } from './packed.ts'
import { runningHash } from './running-hash.ts'
import { isZipName } from './zip-name.ts'
import { type ZipMember, zipEnd, zipHead, zipLine } from './zip-spelling.ts'

/** A file that goes into a ZIP. @source definition */
export interface ZipFile {
  readonly name: string
  readonly bytes: Uint8Array
  /** Pictures are packed already, and are stored as they are. */
  readonly pack: boolean
}

/** A ZIP that is being written. @source definition */
export interface ZipInParts {
  /** @throws {Refusal} `too-much`, `strange-name` */
  readonly add: (file: ZipFile) => void
  /** Writes the list and the end. */
  readonly end: () => void
}

/** What one ZIP holds without its later extensions. */
const mostFiles = 0xffff - 1
const mostBytes = 0xffffffff - 1

/**
 * A ZIP written part by part: the same files in the same order give the same bytes, at any time and place.
 *
 * @param write takes the parts, one after the other
 * @source APPNOTE.TXT 6.3.10
 */
export function zipInParts(write: (part: Uint8Array) => void): ZipInParts {
  const members: ZipMember[] = []
  const names = new Set<string>()
  const running = runningHash()
  let at = 0
  let list = 0
  const out = (part: Uint8Array) => {
    running.add(part)
    write(part)
    at += part.length
  }
  return {
    add: ({ name, bytes, pack }) => {
      if (!isZipName(name) || names.has(name.toLowerCase()))
        throw carryRefusal(
          'strange-name',
          name,
          `“${name}” cannot be the name of a file in a ZIP${names.has(name.toLowerCase()) ? ': it is there already' : ''}.`,
          'Give the job another number, or the file another name.',
        )
      const within = pack ? packed(bytes) : bytes
      const member: ZipMember = {
        name,
        method: pack ? 8 : 0,
        crc: crc32(bytes),
        within: within.length,
        size: bytes.length,
        at,
      }
      list += zipLine(member).length
      if (members.length === mostFiles || at + within.length + list + 2000 > mostBytes)
        throw carryRefusal(
          'too-much',
          `${at} bytes`,
          'This is more than one file can hold: 4 GB, or 65,534 files.',
          'Take fewer jobs into one file.',
        )
      names.add(name.toLowerCase())
      members.push(member)
      out(zipHead(member))
      out(within)
    },
    end: () => {
      const begins = at
      for (const member of members) out(zipLine(member))
      write(zipEnd({ count: members.length, at: begins, size: at - begins, digest: running.digest() }))
    },
  }
}
