import type { CleanPhoto, PhotoExtra } from './clean-photo.ts'
import { exifOrientation, orientationOnly } from './exif-orientation.ts'
import { holds } from './holds.ts'
import { joined } from './joined.ts'
import { cutPhoto, photoRefusal } from './photo-refusal.ts'

const ofPicture = ['VP8X', 'ICCP', 'ALPH', 'VP8 ', 'VP8L']
const flags = { exif: 0x08, xmp: 0x04 }

/**
 * A WebP without anything but its picture: what a decoder needs, its colours, and which way up it is.
 *
 * @throws {Refusal} `cut-photo`, `moving-picture`
 * @source RFC 9649, 2.3 to 2.7 (container), 3.4 (lossless head); RFC 6386, 9.1 (frame head)
 */
export function webpWithoutMetadata(bytes: Uint8Array): CleanPhoto {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength)
  const kept = new Map<string, Uint8Array>()
  const without = new Set<PhotoExtra>()
  let orientation = 1
  const all = bytes.length >= 12 ? 8 + view.getUint32(4, true) : Number.POSITIVE_INFINITY
  if (all > bytes.length) throw cutPhoto('it breaks off before its end')
  for (let at = 12; at < all; ) {
    const length = at + 8 <= all ? view.getUint32(at + 4, true) : Number.POSITIVE_INFINITY
    if (at + 8 + length > all) throw cutPhoto('it breaks off before its end')
    const type = String.fromCharCode(...bytes.subarray(at, at + 4))
    const data = bytes.subarray(at + 8, at + 8 + length)
    if (type === 'ANIM' || type === 'ANMF')
      throw photoRefusal({
        code: 'moving-picture',
        given: type,
        sentence: 'This is a moving picture, and only still ones are kept.',
        remedy: 'Take a photo of the place that matters.',
      })
    if (ofPicture.includes(type)) {
      if (!kept.has(type)) kept.set(type, data.slice())
    } else if (type === 'EXIF') {
      without.add('Exif')
      orientation = exifOrientation(holds(data, 'Exif\0\0') ? data.subarray(6) : data)
    } else without.add(type === 'XMP ' ? 'XMP' : 'other data')
    at += 8 + length + (length % 2)
  }
  const size = sizeOf(kept)
  if (!size) throw cutPhoto('there is no picture in it')
  if (all + (all % 2) < bytes.length) without.add('data behind the picture')
  const head = kept.get('VP8X')
  // Only a file that says what is in it can say which way up it is.
  const said = head === undefined ? 1 : orientation
  if (head) head[0] = (head[0]! & ~(flags.exif | flags.xmp)) | (said > 1 ? flags.exif : 0)
  const body = joined([
    Uint8Array.from('WEBP', (c) => c.charCodeAt(0)),
    ...ofPicture.flatMap((type) => (kept.has(type) ? [chunk(type, kept.get(type)!)] : [])),
    ...(said > 1 ? [chunk('EXIF', orientationOnly(said))] : []),
  ])
  return { bytes: chunk('RIFF', body), type: 'image/webp', ...size, orientation: said, without: [...without] }
}

function chunk(type: string, data: Uint8Array): Uint8Array<ArrayBuffer> {
  const length = new DataView(new ArrayBuffer(4))
  length.setUint32(0, data.length, true)
  return joined([
    Uint8Array.from(type, (c) => c.charCodeAt(0)),
    new Uint8Array(length.buffer),
    data,
    new Uint8Array(data.length % 2),
  ])
}

/** Of the frame, in pixels; null where there is none. */
function sizeOf(kept: ReadonlyMap<string, Uint8Array>): { width: number; height: number } | null {
  const plain = kept.get('VP8 ')
  if (plain && plain.length >= 10)
    return {
      width: (plain[6]! | (plain[7]! << 8)) & 0x3fff,
      height: (plain[8]! | (plain[9]! << 8)) & 0x3fff,
    }
  const exact = kept.get('VP8L')
  if (!exact || exact.length < 5) return null
  const bits = exact[1]! | (exact[2]! << 8) | (exact[3]! << 16) | (exact[4]! << 24)
  return { width: (bits & 0x3fff) + 1, height: ((bits >>> 14) & 0x3fff) + 1 }
}
