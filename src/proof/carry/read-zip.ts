import { crc32 } from '../photo/crc-32.ts'
import { carryRefusal } from './carry-refusal.ts'
import { unpacked } from './packed.ts'
import { runningHash } from './running-hash.ts'
import { isZipName } from './zip-name.ts'
import { endBytes, headBytes, lineBytes, type ZipMember, zipEnd, zipHead, zipLine } from './zip-spelling.ts'

/** Where the bytes of a ZIP are read from: memory, or a file. @source definition */
export interface ZipSource {
  readonly size: number
  readonly read: (at: number, length: number) => Uint8Array
}

/** How much is taken in at most. @source definition */
export interface ZipLimits {
  readonly files: number
  /** Bytes of one file, unpacked. */
  readonly each: number
  /** Bytes of all files, unpacked. */
  readonly all: number
}

/** A file in a ZIP that was looked through. @source definition */
export interface ZipContent {
  readonly name: string
  readonly size: number
  /** @throws {Refusal} `changed` */
  readonly bytes: () => Uint8Array
}

const piece = 1024 * 1024

/**
 * The files of a ZIP that this program wrote, looked through before anything of it is used: it has one spelling, so that
 * each bit that was changed is found, and found at its file; nothing stands between the files or over each other; names
 * lead nowhere else; sizes are bounded before anything is unpacked, and nothing unpacks to more than it says.
 *
 * @throws {Refusal} `no-carried-file`; `cut-off`; `changed`; `too-much`; `strange-name`
 * @source APPNOTE.TXT 6.3.10; own derivation: docs/methods/carrying.md
 */
export function readZip(source: ZipSource, limits: ZipLimits): readonly ZipContent[] {
  if (source.size < 4 || word(source.read(0, 4), 0) !== 0x04034b50)
    throw carryRefusal(
      'no-carried-file',
      `${source.size} bytes`,
      'This is no file that was written for carrying: it does not begin as one.',
      'Name a file that "carry" or "backup" wrote.',
    )
  const listAt = listBegins(source)
  const members = membersOf(source, listAt, limits)
  const { size } = source
  const digest = digestOf(source, size - endBytes)
  const end = zipEnd({ count: members.length, at: listAt, size: size - endBytes - listAt, digest })
  const contents = members.map(
    (member): ZipContent => ({ name: member.name, size: member.size, bytes: () => bytesOf(source, member) }),
  )
  if (!same(end, source.read(size - endBytes, endBytes))) {
    for (const content of contents) content.bytes()
    throw changed('its end')
  }
  return contents
}

/** Where the list begins, as the end says it; what has no end is cut off. */
function listBegins(source: ZipSource): number {
  const { size } = source
  const end = size >= endBytes ? source.read(size - endBytes, endBytes) : new Uint8Array(endBytes)
  const at = word(end, 16)
  const length = word(end, 12)
  if (word(end, 0) === 0x06054b50 && at + length + endBytes === size) return at
  // An end without the comment is another program's.
  if (size >= 22 && word(source.read(size - 22, 22), 0) === 0x06054b50)
    throw carryRefusal(
      'no-carried-file',
      'no digest',
      'Another program packed this file, so nobody can say whether it is as it was written.',
      'Unpack it, and take in the .proof.json that is in it; or have the file sent as it was written.',
    )
  throw placeOfCut(source)
}

/** Which file was cut: the heads tell their names one after the other. */
function placeOfCut(source: ZipSource) {
  let at = 0
  let name = ''
  while (at + headBytes <= source.size) {
    const head = source.read(at, headBytes)
    if (word(head, 0) !== 0x04034b50) break
    const length = half(head, 26)
    if (at + headBytes + length > source.size) break
    name = text(source.read(at + headBytes, length))
    at += headBytes + length + word(head, 18)
  }
  return at > source.size
    ? carryRefusal('cut-off', name, `The file is cut off within “${name}”.`)
    : carryRefusal(
        'cut-off',
        name,
        `The file is cut off or changed behind “${name}”: its end is not as it was written.`,
      )
}

function membersOf(source: ZipSource, listAt: number, limits: ZipLimits): readonly ZipMember[] {
  const listEnd = source.size - endBytes
  if (listEnd - listAt > limits.files * (lineBytes + 600)) throw tooMuch(limits)
  const list = source.read(listAt, listEnd - listAt)
  const members: ZipMember[] = []
  const names = new Set<string>()
  let [from, at, all] = [0, 0, 0]
  while (from < list.length) {
    const name =
      from + lineBytes <= list.length ? text(within(list, from + lineBytes, half(list, from + 28))) : ''
    const method = half(list, from + 10)
    const member: ZipMember = {
      name,
      method: method === 8 ? 8 : 0,
      crc: word(list, from + 16),
      within: word(list, from + 20),
      size: word(list, from + 24),
      at,
    }
    const line = zipLine(member)
    const isAsWritten =
      same(line, within(list, from, line.length)) &&
      at + headBytes + name.length + member.within <= listAt &&
      (member.method === 8 || member.within === member.size)
    if (!isAsWritten) throw changed(isZipName(name) ? `“${name}” in its list` : 'its list of files')
    if (!isZipName(name) || names.has(name.toLowerCase()))
      throw carryRefusal(
        'strange-name',
        name,
        `A file in it is called “${name.slice(0, 80)}”, which leads elsewhere or stands there twice. Nothing was taken in.`,
        'Have it written again by the program, and do not take it from somebody you do not know.',
      )
    all += member.size
    if (members.length >= limits.files || member.size > limits.each || all > limits.all) throw tooMuch(limits)
    const head = zipHead(member)
    if (!same(head, source.read(at, head.length))) throw changed(`“${name}”`)
    names.add(name.toLowerCase())
    members.push(member)
    from += line.length
    at += head.length + member.within
  }
  if (at !== listAt) throw changed('what stands between its files')
  return members
}

function bytesOf(source: ZipSource, member: ZipMember): Uint8Array {
  const held = source.read(member.at + headBytes + member.name.length, member.within)
  const bytes = member.method === 8 ? unpacked(held, member.size) : held
  if (bytes === null || crc32(bytes) !== member.crc) throw changed(`“${member.name}”`)
  return bytes
}

function digestOf({ read }: ZipSource, size: number): string {
  const running = runningHash()
  for (let at = 0; at < size; at += piece) running.add(read(at, Math.min(piece, size - at)))
  return running.digest()
}

const changed = (where: string) =>
  carryRefusal('changed', where, `The file is not as it was written: ${where} was changed.`)

const tooMuch = ({ files, each, all }: ZipLimits) =>
  carryRefusal(
    'too-much',
    'sizes',
    `The file says that it holds more than is taken in: at most ${files} files, ${mega(each)} MB each, ${mega(all)} MB together. Nothing was unpacked.`,
    'If it is yours, carry fewer photos at a time; do not take it from somebody you do not know.',
  )

const mega = (bytes: number) => Math.round(bytes / 1024 / 1024)
const within = (bytes: Uint8Array, at: number, length: number) => bytes.subarray(at, at + length)
const text = (bytes: Uint8Array) => String.fromCharCode(...bytes)
const half = (bytes: Uint8Array, at: number) => (bytes[at] ?? 0) | ((bytes[at + 1] ?? 0) << 8)
const word = (bytes: Uint8Array, at: number) => (half(bytes, at) | (half(bytes, at + 2) << 16)) >>> 0
const same = (a: Uint8Array, b: Uint8Array) => a.length === b.length && a.every((byte, i) => byte === b[i])
