import type { CleanPhoto, PhotoExtra } from './clean-photo.ts'
import { exifOrientation, orientationOnly } from './exif-orientation.ts'
import { holds } from './holds.ts'
import { joined } from './joined.ts'
import { cutPhoto } from './photo-refusal.ts'

const soi = 0xd8
const eoi = 0xd9
const sos = 0xda
const app0 = 0xe0
const app1 = 0xe1
const comment = 0xfe
/** Marker codes that stand alone: TEM and RST0 to RST7. */
const standsAlone = (marker: number) => marker === 0x01 || (marker >= 0xd0 && marker <= 0xd7)
/** Frames, Huffman and arithmetic tables, scans, quantization, lines, restart, hierarchical ones. */
const isOfPicture = (marker: number) => marker >= 0xc0 && marker <= 0xdf
const isFrame = (marker: number) =>
  marker >= 0xc0 && marker <= 0xcf && marker !== 0xc4 && marker !== 0xc8 && marker !== 0xcc

/**
 * A JPEG without anything but its picture: segments that a decoder needs, the JFIF header without its small picture, the
 * colour profile, Adobe's colour transform, and which way up it is.
 *
 * @throws {Refusal} `cut-photo`
 * @source ITU-T T.81, B.1 and B.2; ITU-T T.871 (JFIF), 10; ICC.1:2022, B.4; CIPA DC-008-2019, 4.5.4
 */
export function jpegWithoutMetadata(bytes: Uint8Array): CleanPhoto {
  const kept: Uint8Array[] = []
  const without = new Set<PhotoExtra>()
  let jfif: Uint8Array | null = null
  let orientation = 0
  let [width, height, scans] = [0, 0, 0]
  let at = 2
  for (;;) {
    if (bytes[at] !== 0xff) throw cutPhoto(`at byte ${at} a part of it should begin, and does not`)
    while (bytes[at + 1] === 0xff) at++
    const marker = bytes[at + 1]
    if (marker === undefined) throw cutPhoto('it breaks off before its end')
    if (marker === eoi) break
    if (standsAlone(marker)) {
      kept.push(bytes.subarray(at, at + 2))
      at += 2
      continue
    }
    const length = marker === soi ? 0 : (bytes[at + 2] ?? 0) * 256 + (bytes[at + 3] ?? 0)
    const end = at + 2 + length
    if (length < 2) throw cutPhoto(`the part at byte ${at} breaks off`)
    const data = bytes.subarray(at + 4, end)
    const whole = bytes.subarray(at, end)
    if (isFrame(marker) && data.length >= 5) {
      height = data[1]! * 256 + data[2]!
      width = data[3]! * 256 + data[4]!
    }
    if (isOfPicture(marker)) kept.push(whole)
    else if (marker === app0 && holds(data, 'JFIF\0') && data.length >= 14) {
      jfif ??= data.slice(0, 12)
      if (data.length > 14) without.add('thumbnail')
    } else if (marker === 0xe2 && holds(data, 'ICC_PROFILE\0')) kept.push(whole)
    else if (marker === 0xee && holds(data, 'Adobe') && data.length >= 12)
      kept.push(segment(marker, data.subarray(0, 12)))
    else {
      without.add(extraOf(marker, data))
      if (marker === app1 && holds(data, 'Exif\0\0')) orientation ||= exifOrientation(data.subarray(6))
    }
    at = end
    if (marker !== sos) continue
    scans++
    at = scanEnd(bytes, at)
    kept.push(bytes.subarray(end, at))
  }
  if (scans === 0 || width === 0) throw cutPhoto('there is no picture in it')
  if (at + 2 < bytes.length) without.add('data behind the picture')
  const head = [
    ...(jfif ? [segment(app0, joined([jfif, new Uint8Array(2)]))] : []),
    ...(orientation > 1 ? [segment(app1, joined([exifName, orientationOnly(orientation)]))] : []),
  ]
  return {
    bytes: joined([Uint8Array.of(0xff, soi), ...head, ...kept, Uint8Array.of(0xff, eoi)]),
    type: 'image/jpeg',
    width,
    height,
    orientation: orientation || 1,
    without: [...without],
  }
}

const exifName = Uint8Array.from('Exif\0\0', (c) => c.charCodeAt(0))

const segment = (marker: number, data: Uint8Array): Uint8Array =>
  joined([Uint8Array.of(0xff, marker, (data.length + 2) >> 8, (data.length + 2) & 255), data])

/** Where the coded data of a scan ends: at the next marker that is neither a stuffed byte nor a restart. */
function scanEnd(bytes: Uint8Array, from: number): number {
  for (let at = bytes.indexOf(0xff, from); at >= 0; at = bytes.indexOf(0xff, at + 1)) {
    const next = bytes[at + 1]
    if (next !== undefined && next !== 0 && next !== 0xff && !standsAlone(next)) return at
  }
  throw cutPhoto('it breaks off before its end')
}

function extraOf(marker: number, data: Uint8Array): PhotoExtra {
  if (marker === comment) return 'comment'
  if (marker === app0) return 'thumbnail'
  if (marker === app1) return holds(data, 'Exif') ? 'Exif' : holds(data, 'http') ? 'XMP' : 'other data'
  return marker === 0xed ? 'IPTC' : 'other data'
}
