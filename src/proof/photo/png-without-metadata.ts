import type { CleanPhoto, PhotoExtra } from './clean-photo.ts'
import { crc32 } from './crc-32.ts'
import { exifOrientation, orientationOnly } from './exif-orientation.ts'
import { holds } from './holds.ts'
import { joined } from './joined.ts'
import { cutPhoto } from './photo-refusal.ts'

/** Chunks without which the picture, or its colours, would be others. */
const ofPicture = 'IHDR PLTE IDAT tRNS cHRM gAMA iCCP sBIT sRGB bKGD pHYs cICP mDCV cLLI'.split(' ')
const extras: Readonly<Record<string, PhotoExtra>> = {
  eXIf: 'Exif',
  tEXt: 'comment',
  zTXt: 'comment',
  iTXt: 'comment',
  tIME: 'time',
}

/**
 * A PNG without anything but its picture: what a decoder needs, its colours, and which way up it is.
 *
 * @throws {Refusal} `cut-photo`
 * @source W3C Portable Network Graphics (third edition), 5 and 11
 */
export function pngWithoutMetadata(bytes: Uint8Array): CleanPhoto {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength)
  const kept: Uint8Array[] = []
  const without = new Set<PhotoExtra>()
  let orientation = 1
  let at = 8
  for (let type = ''; type !== 'IEND'; ) {
    const length = at + 12 <= bytes.length ? view.getUint32(at) : Number.POSITIVE_INFINITY
    if (at + 12 + length > bytes.length) throw cutPhoto('it breaks off before its end')
    type = String.fromCharCode(...bytes.subarray(at + 4, at + 8))
    const data = bytes.subarray(at + 8, at + 8 + length)
    if (kept.length === 0 && (type !== 'IHDR' || length !== 13))
      throw cutPhoto('it does not begin as it should')
    if (ofPicture.includes(type)) kept.push(bytes.subarray(at, at + 12 + length))
    else if (type === 'eXIf') {
      without.add('Exif')
      orientation = exifOrientation(data)
    } else if (type !== 'IEND') {
      // A large first letter says that nobody can show the picture without it.
      if (type[0]! < 'a') throw cutPhoto(`it holds a part “${type}” that no standard names`)
      without.add(holds(data, 'XML:com.adobe.xmp\0') ? 'XMP' : (extras[type] ?? 'other data'))
    }
    at += 12 + length
  }
  if (!kept.some((chunk) => chunk[4] === 0x49 && chunk[5] === 0x44))
    throw cutPhoto('there is no picture in it')
  if (at < bytes.length) without.add('data behind the picture')
  const [head, ...rest] = kept
  return {
    bytes: joined([
      bytes.subarray(0, 8),
      head!,
      ...(orientation > 1 ? [chunk('eXIf', orientationOnly(orientation))] : []),
      ...rest,
      chunk('IEND', new Uint8Array()),
    ]),
    type: 'image/png',
    width: view.getUint32(16),
    height: view.getUint32(20),
    orientation,
    without: [...without],
  }
}

function chunk(type: string, data: Uint8Array): Uint8Array {
  const body = joined([Uint8Array.from(type, (c) => c.charCodeAt(0)), data])
  const ends = new DataView(new ArrayBuffer(8))
  ends.setUint32(0, data.length)
  ends.setUint32(4, crc32(body))
  const bytes = new Uint8Array(ends.buffer)
  return joined([bytes.subarray(0, 4), body, bytes.subarray(4)])
}
