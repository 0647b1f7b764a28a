import { crc32 as nodeCrc } from 'node:zlib'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { crc32 } from '../../../src/proof/photo/crc-32.ts'
import { exifOrientation, orientationOnly } from '../../../src/proof/photo/exif-orientation.ts'
import { withoutMetadata } from '../../../src/proof/photo/without-metadata.ts'
import { Refusal } from '../../../src/quantity/index.ts'
import { law, refuses } from '../../support/law.ts'
import {
  exifWithPlace,
  jpegAsTaken,
  picture,
  pictures,
  pngAsTaken,
  profileSegment,
  telltales,
  webpAsTaken,
} from '../../support/photos.ts'

const latin = (bytes: Uint8Array) => Buffer.from(bytes).toString('latin1')
const taken = new Map<number, ReturnType<typeof allTaken>>()
const asTaken = (orientation: number) => {
  const found = taken.get(orientation) ?? allTaken(orientation)
  taken.set(orientation, found)
  return found
}
const allTaken = (orientation: number) =>
  [
    ...(['baseline', 'progressive', 'cmyk', 'gray'] as const).map(
      (name) => [name, jpegAsTaken(name, orientation)] as const,
    ),
    ...(['alpha', 'palette', 'deep'] as const).map(
      (name) => [name, pngAsTaken(name, crc32, orientation)] as const,
    ),
    ...(['lossy', 'exact', 'seeThrough'] as const).map(
      (name) => [name, webpAsTaken(name, orientation)] as const,
    ),
  ] as const

describe('PH1 no place, time, device, words or second picture stays', () => {
  for (const orientation of [1, 6])
    for (const [name, bytes] of asTaken(orientation))
      test(`${name}, orientation ${orientation}`, () => {
        const clean = withoutMetadata(bytes)
        for (const told of telltales.filter((one) => latin(bytes).includes(one)))
          expect(latin(clean.bytes)).not.toContain(told)
        expect(telltales.filter((one) => latin(bytes).includes(one)).length).toBeGreaterThan(2)
        expect(clean.without).toContain('Exif')
        expect(clean.without).toContain('XMP')
        expect(clean.without).toContain('data behind the picture')
        // Of the Exif block nothing is left but which way up it is.
        const exif = latin(clean.bytes).split(latin(orientationOnly(orientation)))
        expect(exif).toHaveLength(orientation === 1 ? 1 : 2)
        expect(clean.orientation).toBe(orientation)
      })
})

describe('PH2 the bytes of the picture itself and its colours stay as they are', () => {
  for (const name of pictures)
    test(`${name}: one without anything besides comes out as it is`, () => {
      const plain = picture(name)
      const clean = withoutMetadata(plain)
      expect(clean.without).toEqual([])
      expect(clean.bytes).toEqual(plain)
      expect([clean.width, clean.height, clean.orientation]).toEqual([48, 32, 1])
    })
  for (const [name, bytes] of asTaken(1))
    test(`${name}: what was put around it comes off again`, () => {
      const [clean, plain] = [withoutMetadata(bytes).bytes, withoutMetadata(picture(name)).bytes]
      // A WebP that got a head for what is in it keeps the head.
      const head = name === 'lossy' || name === 'exact' ? 18 : 0
      expect(latin(clean).slice(12 + head)).toBe(latin(plain).slice(12))
    })
  test('a colour profile stays', () => {
    const plain = picture('baseline')
    const bytes = Buffer.concat([plain.subarray(0, 2), profileSegment, plain.subarray(2)])
    expect(latin(withoutMetadata(bytes).bytes)).toContain(latin(profileSegment))
  })
  test('the JFIF head loses its small picture only', () => {
    const plain = Buffer.from(picture('baseline'))
    const jfif = Buffer.concat([plain.subarray(2, 18), Buffer.from([9, 9, 9])])
    jfif[3] = 19
    jfif[16] = 1
    jfif[17] = 1
    const clean = withoutMetadata(Buffer.concat([plain.subarray(0, 2), jfif, plain.subarray(18)]))
    expect(Buffer.from(clean.bytes)).toEqual(plain)
    expect(clean.without).toEqual(['thumbnail'])
  })
})

law(
  'PH3 taking out is done once: the second time changes nothing',
  fc.record({ which: fc.nat({ max: 9 }), orientation: fc.integer({ min: 1, max: 8 }) }),
  ({ which, orientation }) => {
    const [, bytes] = asTaken(orientation)[which]!
    const once = withoutMetadata(bytes)
    const twice = withoutMetadata(once.bytes)
    expect(twice.bytes).toEqual(once.bytes)
    expect(twice.orientation).toBe(once.orientation)
    return once.orientation === orientation
  },
  { runs: 80 },
)

law(
  'PH4 whatever the bytes, a photo comes out or a plain sentence',
  fc.record({
    which: fc.nat({ max: 9 }),
    cut: fc.double({ min: 0, max: 1, noNaN: true }),
    flips: fc.array(fc.nat({ max: 99_999 }), { maxLength: 6 }),
  }),
  ({ which, cut, flips }) => {
    const [, whole] = asTaken(6)[which]!
    const bytes = whole.slice(0, Math.ceil(whole.length * (flips.length > 0 ? 1 : cut)))
    for (const flip of flips) bytes[(flip >> 3) % bytes.length]! ^= 1 << (flip & 7)
    try {
      return withoutMetadata(bytes).bytes.length <= bytes.length + 64
    } catch (error) {
      if (error instanceof Refusal) return true
      throw error
    }
  },
  { runs: 1000 },
)

/** A part of a PNG with nothing in it. */
function pngPart(type: string): Uint8Array {
  const bytes = Buffer.alloc(12)
  bytes.write(type, 4, 'latin1')
  bytes.writeUInt32BE(nodeCrc(bytes.subarray(4, 8)), 8)
  return bytes
}

test('PH1 a part of a PNG that may be left out is, whatever it is called', () => {
  const plain = picture('palette')
  const more = Uint8Array.from(Buffer.concat([plain.subarray(0, 33), pngPart('abCd'), plain.subarray(33)]))
  expect(withoutMetadata(more)).toMatchObject({ bytes: plain, without: ['other data'] })
})

describe('PH5 a photo that is not whole is not taken', () => {
  for (const name of pictures)
    test(`${name}, cut anywhere`, () => {
      const plain = picture(name)
      const told: string[] = []
      for (let to = 12; to < plain.length - (name === 'seeThrough' ? 1 : 0); to += 7)
        try {
          withoutMetadata(plain.slice(0, to))
          told.push(`${to} was taken`)
        } catch (error) {
          if (!(error instanceof Refusal) || error.code !== 'cut-photo') throw error
        }
      expect(told).toEqual([])
    })
})

// A part of a PNG without which nobody can show it, by its name, and that no standard knows.
refuses('cut-photo', () => {
  const plain = picture('palette')
  return withoutMetadata(
    Uint8Array.from(Buffer.concat([plain.subarray(0, 33), pngPart('ABCD'), plain.subarray(33)])),
  )
})
refuses('no-photo', () => withoutMetadata(new TextEncoder().encode('GIF89a and more')))
refuses('cut-photo', () => withoutMetadata(picture('baseline').slice(0, 300)))
refuses('moving-picture', () =>
  withoutMetadata(
    Uint8Array.from(
      Buffer.concat([
        Buffer.from('RIFF'),
        Buffer.from([18, 0, 0, 0]),
        Buffer.from('WEBPANIM'),
        Buffer.from([6, 0, 0, 0, 0, 0, 0, 0, 0, 0]),
      ]),
    ),
  ),
)

law('PH6 which way up is read and written alike', fc.integer({ min: 1, max: 8 }), (orientation) => {
  expect(exifOrientation(exifWithPlace(orientation))).toBe(orientation)
  return exifOrientation(orientationOnly(orientation)) === orientation
})

law('PH7 the checksum is that of the platform', fc.uint8Array({ maxLength: 2000 }), (bytes) => {
  // Node has it from 20.15 on.
  return crc32(bytes) === nodeCrc(bytes)
})
