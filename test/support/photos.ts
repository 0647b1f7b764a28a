/**
 * Small real pictures, 48 × 32 pixels, each a colour ramp with two blocks off its middle, drawn and coded by ImageMagick
 * 6.9 with libjpeg-turbo 2.1.5, libpng 1.6.39 and libwebp 1.2.4. The progressive one has restart intervals, the CMYK one
 * Adobe's segment.
 */
const coded = {
  baseline:
    '/9j/4AAQSkZJRgABAQAAAQABAAD/2wBDAAUDBAQEAwUEBAQFBQUGBwwIBwcHBw8LCwkMEQ8SEhEPERETFhwXExQaFRERGCEYGh0dHx8fExciJCIeJBweHx7/2wBDAQUFBQcGBw4ICA4eFBEUHh4eHh4eHh4eHh4eHh4eHh4eHh4eHh4eHh4eHh4eHh4eHh4eHh4eHh4eHh4eHh4eHh7/wAARCAAgADADASIAAhEBAxEB/8QAGQAAAwEBAQAAAAAAAAAAAAAAAAMEBgUC/8QAMRAAAAQDBwAHCQAAAAAAAAAAAAEDEgIFEQQGBxMUFTEWIzJBYaLRCCElRFFTVGLB/8QAGQEBAAIDAAAAAAAAAAAAAAAABwAGAwQF/8QAJREAAQMCBgMAAwAAAAAAAAAAAQIDEQAEBQYSFSFhIjFBFFFx/9oADAMBAAIRAxEAPwDdYR4eXPnuHksms1lGoti+bmKalWFzVY4S90MRFwRFwMr7QV07v3W2TYrBo9VqM7rlI3Ny29uI6UcfH1CbgYzFdW6VikPR3WaXM67W5bnKRR9lh0o6nPcOFixiL07234Rt2hzfmc172frDSjPHkGOGZazKjManrgK/F1ue1gjSQrT46if1AjjqKRWcQuk3hcUs6JPE8fY4msY8Dwh4HhP2nqu1vfdPeB4Q8DxNp6qb33SHgeEOA4Je09UQ733T3hiEKi6pJJQujPgq0EjhVKLQmhMElVYmwQ1qdK9xjXu8OW0wtbaZUASB7kgcCKw3GOrQ0pTfKgDH9+VVttv+x54fUeF7Fa0UjVVSbBDybiP+jsbxLvyPJF6CWbTKxLy9VJJZ0cVKE0y7y8BUbS4xd19CHLYhJIBOhQgE8mSartvmvFlupS42AkkT4q9Tz9r/2Q==',
  progressive:
    '/9j/4AAQSkZJRgABAQAAAQABAAD/2wBDAAYEBQYFBAYGBQYHBwYIChAKCgkJChQODwwQFxQYGBcUFhYaHSUfGhsjHBYWICwgIyYnKSopGR8tMC0oMCUoKSj/2wBDAQcHBwoIChMKChMoGhYaKCgoKCgoKCgoKCgoKCgoKCgoKCgoKCgoKCgoKCgoKCgoKCgoKCgoKCgoKCgoKCgoKCj/wgARCAAgADADASIAAhEBAxEB/8QAGQAAAgMBAAAAAAAAAAAAAAAAAAIBAwUE/8QAGAEBAAMBAAAAAAAAAAAAAAAABQACBAb/2gAMAwEAAhADEAAAAdjNXjDYyhBzU4hIgg3zrzXZStkdVZ2P/8QAIRAAAgIBAgcAAAAAAAAAAAAAAQQCAwUAFBAREhMgITD/2gAIAQEAAQUCxyS9yeYXqX8VMpt18g7u/gPZ6JaMSBxrPKfcjqycTD//xAAbEQEAAgMBAQAAAAAAAAAAAAABAAIDBBQRIf/aAAgBAwEBPwGuW5k9X5OmdM6ZfaSqkpv52wJP/8QAHxEAAQQCAgMAAAAAAAAAAAAAAQACAwQRExIhQXGh/9oACAECAQE/AYaV0XOT88Mnz7x1laFoWhSQlrSQFG6w5wBZ8K//xAAhEAABAwMEAwAAAAAAAAAAAAARAAECAxIhEyAxQSIwUf/aAAgBAQAGPwKnOpTMnPb/AFUtKNpJztjS0rh3coeFlp7PowuFltjFcpw6/8QAHxAAAwAABwEBAAAAAAAAAAAAAAERITFBUWFx8IHR/9oACAEBAAE/Ic0Jjlq5Prdjsm5SlKb1XQtbex+/VZxwUpSlKURwzHsyswOylKJYbA90JDE6P//aAAwDAQACAAMAAAAQRAABVi//xAAbEQACAwEBAQAAAAAAAAAAAAAAAREhcUExkf/aAAgBAwEBPxCeSzqa7yTZs2WAtJxomGk2pp+fT//EABwRAQACAgMBAAAAAAAAAAAAAAEAESFxMVFh0f/aAAgBAgEBPxBiXi0r4GKxNZrNZYWQUO2opcFBeAuf/8QAIRAAAgIABQUAAAAAAAAAAAAAAREAMSAhUdHwMIGxweH/2gAIAQEAAT8Q1iRYQBkAFAT1uRmxVnCHzb+R1auceAaEvLoABYTKg5whvDZQLKYArILZ7GcxbR6Q0g2s/9k=',
  cmyk: '/9j/7gAOQWRvYmUAZAAAAAAC/9sAQwAGBAUGBQQGBgUGBwcGCAoQCgoJCQoUDg8MEBcUGBgXFBYWGh0lHxobIxwWFiAsICMmJykqKRkfLTAtKDAlKCko/9sAQwEHBwcKCAoTCgoTKBoWGigoKCgoKCgoKCgoKCgoKCgoKCgoKCgoKCgoKCgoKCgoKCgoKCgoKCgoKCgoKCgoKCgo/8AAFAgAIAAwBAEiAAIRAQMRAQQiAP/EABwAAAICAwEBAAAAAAAAAAAAAAAGAwUBAgQHCP/EADUQAAADBgQFAQQLAAAAAAAAAAABAgMEBRESFQYTFGIiMVFSYUEHU5HRFiEjMkJDVJKho8H/xAAYAQADAQEAAAAAAAAAAAAAAAAABgcDBP/EACgRAAEDAwMDAwUAAAAAAAAAAAECAxEABCEFElEGExQVFkIiMUFhwf/aAA4EAQACEQMRBAAAPwDz7GmMY3D8Svjq4v2U7M6KEZSFSmhJn9ZpnzMxd+zXEkSi9yuj1n5WXl8CUynVP7pF0IUMdw6iLRVu+m/5RtaeDKqlJJFzq8DvwrDkQDVUvWfn0/gplTPyfUOd71FoatHDbKk9/aj4kGcbvq2xzmc1OX27NViG0JHchPxzOJzH9r6Hw44uj/Bnd5bMjUtdUzrUXJRl6H4FZjJLvCtHp00Ztc+IznKnqfkKOHvaUiEQh3cVQ7PNlV9pn0zmoz5Un1Fdi7HKcQaSl00uRX+bXVVLwUuX8j0XVeQaryFi4l3AuJdwR/WU80v+EeKu7ruBddwQ7ruBddwZ9V5BqvIWLiXcC4l3A9ZTzR4R4p8uu4F13BDuu4F13Ca1F2gtRdocNEXQGiLoJd5p5qwe30cVDbtoLdtDlbtoLdtCfai7RG3cGTBkpo14UJ5nKYdNEXQcEehbV4hTdk7M62yqaUzIp8RH6+B02dyh24bbdVCSQCftAJyZOMCtrbpxlbyEO4SSAT+pzSbbtoyUNmciSHG3bRo1hyiZnlpmr0IJ1bh74v2q+QkYIc3hqlmxaEpauRUmX+DX6MRf9H/Yj5iwgOHoi7xVg1eXahimqpVaTlwmXoYc7zTtGat3HGrqVAEgb0GSBgQBOaabnovREMrW06SoAwNycmMfilO1K7S+IwcLMimaSDLoHn3R/Ehsxh7c2hZjMyT6nMh//9k=',
  gray: '/9j/4AAQSkZJRgABAQAAAQABAAD/2wBDAA0JCgsKCA0LCgsODg0PEyAVExISEyccHhcgLikxMC4pLSwzOko+MzZGNywtQFdBRkxOUlNSMj5aYVpQYEpRUk//wAALCAAgADABAREA/8QAGgABAAIDAQAAAAAAAAAAAAAAAAMFAQIGBP/EACkQAAAEBAUDBQEAAAAAAAAAAAABAhEDBBITBQYUMVEVIlMhJENhooH/2gAIAQEAAD8Atst5fwqewKWmZqVrirqqVcUTsoyL0I+CFZnLCpHDNHoYFq7XX3qU7UtuZ8mOYAAHTYPm7pmGQZLQXbVXfepd1Ge1J8jx5ix7ren9rYs1fJU7t9FwKUAAYABtDQqIskIJ1HsQm0Mz4/0Q1iSseGg1rQyS3NyEAAJ5OImFMoWs2STuf8Fnrpby/kxBOTcCJKrQiI6jZiY+R//Z',
  alpha:
    'iVBORw0KGgoAAAANSUhEUgAAADAAAAAgCAYAAABU1PscAAAAyUlEQVRYw2O8oGDQwDCEAcsvRtaBdgNlHvjNyMLAwMDAYHX3OFEajilbDrSbUT1AagwMthgb+h6AJSFiAanqae6BIR8DQ94Do0lo4D1AWoiSqp7mHvhNYoiSqp7mHoAliV7dDOJ0MA60kzE8MLiSBMkeGGxJgmQPDLZShXQPMA3xJDTkY2AY5IHRJDSwHhhNQmSCvZmrKNLvPD0M5oGhGQMwd5PcHxgsAObuoR8DQ94Do0logMBoEqIUiM2vpkj/b2jPcMjGAAwAAD35Om1Kk1oCAAAAAElFTkSuQmCC',
  palette:
    'iVBORw0KGgoAAAANSUhEUgAAADAAAAAgCAMAAABjCgsuAAAAFVBMVEXIITb//wCbKVt1MHpYNZIsPbUQoEA4EPp/AAAA6ElEQVQ4y71OiRbDIAhjHPv/T54CsdjadXs7UiUciZToD7gNfGDgRYaSi4E3DeNsHMTTBubW4Aaf8GgQMpo2dCHHowxx6mMSs+mXOBZ4jGzHLUwbLvEVg5xo5WiQM1nZINnLK5lIzyXLIhDCqEhSmHbxGrdtKJXky1uU6blekkxQlgvQSZ+1n6VhtLXETuqkdQhDPwqVapWiFQp1g0bHSdOBzCM+b5DmfEDOishJX4MhuTDcd+gGC7+NdxBsbQi9ZUihoXUwWNsAQbB55tTqvcGMMDRL1lHZ2mAYA1B3Xhue4PeGI942PAB45BGlAAtn8QAAAABJRU5ErkJggg==',
  deep: 'iVBORw0KGgoAAAANSUhEUgAAADAAAAAgEAIAAACLJrAIAAABaElEQVRo3u2ZoU4EMRCGp2RO3D7A6UvIQQiEnCAhYBDYrUXxAIRTOBI4h0CQoCA8wBlOI1kLCMQlCBSC12gN4iAMENKkO91tJ/3Uqi/tZP+ZbVfNZv3+cAiZf0CrVRenbS8jXtBoVXQ+C7R99fb8eOonehgtbmydtb0dftBo1e3c1hdxeWLjZ8QsAKz4iaRGdf4GMWyMyxMbaMrvHlQHLk9soPkdjVU/kZEaMUub65O/yEpt0nTM14HLExt/I7buJ5Idsa+NvfuLrNAppi5Ga5cHS20vI17QaFWgwObKBUqNBhdsX9JSQVOqQuL04SK/QQ5yD3KQp5iDHDEHOWIOMMUzVDU5vJseh/Pv7l+Xe+fzZ7bTfKNMwuppTTDJe5wCAAbh9LQmaPRCchGDCm7gJJye1oTtTrpRqrB6WpM0x/wRACyH09OapPvreRxOTWvC9me1UV7D6mlN1OBlZ/O+1/aO4yXdiDXEBw7hdaj+yTBiAAAAAElFTkSuQmCC',
  lossy:
    'UklGRgYBAABXRUJQVlA4IPoAAAAQBwCdASowACAAPp1Cnkolo6KhqrgKALATiWwAtRu0gs+Z3z9oGL/+hbeAPQA8sj2RAEF3PZ2ZbbkiiQ4IEm3XMAD8NxZnkLHmM+W71wg29lcf/zcYVd/H/P/T/j5iNA/6bftJR/8PdrDqf/F3x/xf37xr/kzr6Tdyj/4W/sPUC/+HTa3iP4I89SdXaTfvewJqru6SifdQfxvsHhKjnA2DT03qcttIN5IT2FS3xlHayC3tBb8tjA/zk5ib3ViC4BW7VImri2WtU66JyARjxNJA7kHjzmfCfzA01YB4S2I4nCGDitvHw4wlFvkmrzuvSbiF4YpksBiLgAAA',
  exact:
    'UklGRpwAAABXRUJQVlA4TI8AAAAvL8AHAJkuRPQ/NhHR/3CwbSRJivYiOcAmMCLCJDLS+ZoV5+5nmAmYpAVheMlnJF9v84zHVCQb7z308auIDDpopIhaocht20ZJ2urW/Yj+aXQIgSN1O/0XLFd4Uyrx6zkMUQS/ngOCNK7nAMk6A9/DNDpC/btouPomcPJnZdu7ZU/jUub0L8Y3w5ND+7mYAQA=',
  seeThrough:
    'UklGRiIBAABXRUJQVlA4WAoAAAAQAAAALwAAHwAAQUxQSAoAAAABB1DAiAhERP8DVlA4IPIAAACwBgCdASowACAAPrVOo0wnJCMiKrgKAOAWiWwAuzOcyq+m3f9qILq6YB6AHSieUAAn1AnDQktvbxguWCGhAAD8MJtbI1cdNDEEO771iH1T2/+Vel00BdP+L2Eaf3pIj9/8QDsbkVSdCH8f8X9+f+Ga9fOb+5R/8LuIZgP90rlUNroyHo9g5A7ceu0UTMswvA1IEMmGcXO3oGBj5QjWl6KXRJza7CL3mHv4/je8+NEJD50syP7gABzwjixl4qyWfNeEv9/F6WXAxdpKDdFjiZd3vXbT74q9hUwJm5gKl83CG3irCqjncW78haj8nY0LRQAAAA==',
} as const

/** Which pictures there are. */
export const pictures = Object.keys(coded) as readonly (keyof typeof coded)[]

/** One of them. */
export const picture = (name: keyof typeof coded): Uint8Array<ArrayBuffer> =>
  Uint8Array.from(atob(coded[name]), (c) => c.charCodeAt(0))

const bytesOf = (text: string) => Uint8Array.from(text, (c) => c.charCodeAt(0))
const joined = (...parts: readonly Uint8Array[]) => new Uint8Array(parts.flatMap((part) => [...part]))

/** Texts by which what must be gone is found again. */
export const telltales = [
  'INVENTED CAMERA',
  'N\0\0\0',
  '2026:11:25',
  'a note',
  'W5M0MpCehiHzreSzNTczkc9d',
  '8BIM',
]

/**
 * An Exif block written out by hand: who made it, which way up, where it was taken (12°34′56″ N, 45°06′07″ W, invented),
 * when, and a small second picture.
 *
 * CIPA DC-008-2019 (Exif 2.32): 4.6.2 (structure), 4.6.4 (IFD0 tags), 4.6.6 (GPS tags), 4.5.5 (thumbnail)
 */
export function exifWithPlace(orientation: number, thumbnail: Uint8Array = picture('gray')): Uint8Array {
  const size = 8 + 2 + 12 * 3 + 4 + 16 + 2 + 12 * 5 + 4 + 48 + 12 + 2 + 12 * 2 + 4
  const view = new DataView(new ArrayBuffer(size + thumbnail.length))
  let at = 0
  const u16 = (n: number) => {
    view.setUint16(at, n, true)
    at += 2
  }
  const u32 = (n: number) => {
    view.setUint32(at, n, true)
    at += 4
  }
  const text = (said: string) => {
    for (const c of said) view.setUint8(at++, c.charCodeAt(0))
  }
  const field = (tag: number, type: number, count: number, value: number) => {
    u16(tag)
    u16(type)
    u32(count)
    u32(value)
  }
  u16(0x4949)
  u16(42)
  u32(8)
  const maker = 8 + 2 + 36 + 4
  const gps = maker + 16
  const places = gps + 2 + 60 + 4
  const second = places + 48 + 12
  u16(3)
  field(0x010f, 2, 16, maker)
  field(0x0112, 3, 1, orientation)
  field(0x8825, 4, 1, gps)
  u32(second)
  text('INVENTED CAMERA\0')
  u16(5)
  field(0x0001, 2, 2, 'N'.charCodeAt(0))
  field(0x0002, 5, 3, places)
  field(0x0003, 2, 2, 'W'.charCodeAt(0))
  field(0x0004, 5, 3, places + 24)
  field(0x001d, 2, 11, places + 48)
  u32(0)
  for (const part of [12, 34, 56, 45, 6, 7]) {
    u32(part)
    u32(1)
  }
  text('2026:11:25\0\0')
  u16(2)
  field(0x0201, 4, 1, size)
  field(0x0202, 4, 1, thumbnail.length)
  u32(0)
  if (at !== size) throw new Error(`${at} is not ${size}`)
  const bytes = new Uint8Array(view.buffer)
  bytes.set(thumbnail, size)
  return bytes
}

const segment = (marker: number, data: Uint8Array) =>
  joined(Uint8Array.of(0xff, marker, (data.length + 2) >> 8, (data.length + 2) & 255), data)

/** A profile's segment: its bytes are held, not read. */
export const profileSegment = segment(0xe2, bytesOf('ICC_PROFILE\0\x01\x01 not a real one'))

const xmp = '<?xpacket begin="" id="W5M0MpCehiHzreSzNTczkc9d"?><x:xmpmeta xmlns:x="adobe:ns:meta/"/>'

/** A JPEG as a telephone writes it: place, words, second pictures before the picture and behind it. */
export const jpegAsTaken = (name: 'baseline' | 'progressive' | 'cmyk' | 'gray', orientation = 1) => {
  const plain = picture(name)
  return joined(
    plain.subarray(0, 2),
    segment(0xe1, joined(bytesOf('Exif\0\0'), exifWithPlace(orientation))),
    segment(0xe1, bytesOf(`http://ns.adobe.com/xap/1.0/\0${xmp}`)),
    segment(0xed, bytesOf('Photoshop 3.0\x008BIM\x04\x04 a town')),
    segment(0xe2, bytesOf('MPF\0 more pictures')),
    segment(0xfe, bytesOf('a note')),
    plain.subarray(2),
    jpegTail,
  )
}
const jpegTail = joined(picture('gray'), bytesOf('INVENTED CAMERA film'))

/** A chunk of a PNG. @source W3C PNG, 5.3; the checksum is Node's own */
const pngChunk = (type: string, data: Uint8Array, crc: (bytes: Uint8Array) => number) => {
  const ends = new DataView(new ArrayBuffer(8))
  ends.setUint32(0, data.length)
  ends.setUint32(4, crc(joined(bytesOf(type), data)))
  const bytes = new Uint8Array(ends.buffer)
  return joined(bytes.subarray(0, 4), bytesOf(type), data, bytes.subarray(4))
}

/** A PNG with a place and words in it. */
export const pngAsTaken = (
  name: 'alpha' | 'palette' | 'deep',
  crc: (bytes: Uint8Array) => number,
  orientation = 1,
) => {
  const plain = picture(name)
  const chunk = (type: string, data: Uint8Array) => pngChunk(type, data, crc)
  return joined(
    plain.subarray(0, 33),
    chunk('eXIf', exifWithPlace(orientation)),
    chunk('tEXt', bytesOf('Comment\0a note')),
    chunk('iTXt', bytesOf(`XML:com.adobe.xmp\0\0\0\0\0${xmp}`)),
    chunk('tIME', Uint8Array.of(7, 234, 11, 25, 10, 0, 0)),
    chunk('prVt', bytesOf('INVENTED CAMERA')),
    plain.subarray(33),
    bytesOf('INVENTED CAMERA behind'),
  )
}

/** A WebP with a place and words in it, and the flags that say so. @source RFC 9649, 2.7 */
export const webpAsTaken = (name: 'lossy' | 'exact' | 'seeThrough', orientation = 1) => {
  const plain = picture(name)
  const chunk = (type: string, data: Uint8Array) => {
    const length = new DataView(new ArrayBuffer(4))
    length.setUint32(0, data.length, true)
    return joined(bytesOf(type), new Uint8Array(length.buffer), data, new Uint8Array(data.length % 2))
  }
  const extended = String.fromCharCode(...plain.subarray(12, 16)) === 'VP8X'
  const head = Uint8Array.of((extended ? 0x10 : 0) | 0x0c, 0, 0, 0, 47, 0, 0, 31, 0, 0)
  return joined(
    chunk(
      'RIFF',
      joined(
        bytesOf('WEBP'),
        chunk('VP8X', head),
        plain.subarray(extended ? 30 : 12),
        chunk('EXIF', exifWithPlace(orientation)),
        chunk('XMP ', bytesOf(xmp)),
        chunk('PRVT', bytesOf('INVENTED CAMERA')),
      ),
    ),
    bytesOf('INVENTED CAMERA behind'),
  )
}
