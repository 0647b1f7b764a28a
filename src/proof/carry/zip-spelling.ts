/** A file in a ZIP, as its heads tell of it. @source definition */
export interface ZipMember {
  readonly name: string
  /** 0 stored, 8 packed. */
  readonly method: 0 | 8
  readonly crc: number
  /** Bytes as they stand in the ZIP. */
  readonly within: number
  /** Bytes unpacked. */
  readonly size: number
  /** Where its head begins. */
  readonly at: number
}

/** Bytes of a head before the name. @source APPNOTE.TXT 6.3.10, 4.3.7 and 4.3.12 */
export const headBytes = 30
/** Bytes of a line of the list before the name. @source APPNOTE.TXT 6.3.10, 4.3.12 */
export const lineBytes = 46

const ascii = (text: string) => Uint8Array.from(text, (c) => c.charCodeAt(0))
/** 1980-01-01, midnight: the same bytes each time. */
const day = 0x0021

function put(size: number, fields: readonly (readonly [at: number, bytes: 2 | 4, value: number])[]) {
  const view = new DataView(new ArrayBuffer(size))
  for (const [at, bytes, value] of fields)
    if (bytes === 2) view.setUint16(at, value, true)
    else view.setUint32(at, value, true)
  return new Uint8Array(view.buffer)
}

const together = (a: Uint8Array, b: Uint8Array) => {
  const all = new Uint8Array(a.length + b.length)
  all.set(a)
  all.set(b, a.length)
  return all
}

/**
 * The head before a file.
 *
 * @source APPNOTE.TXT 6.3.10, 4.3.7
 */
export const zipHead = ({ name, method, crc, within, size }: ZipMember): Uint8Array =>
  together(
    put(headBytes, [
      [0, 4, 0x04034b50],
      [4, 2, 20],
      [8, 2, method],
      [12, 2, day],
      [14, 4, crc],
      [18, 4, within],
      [22, 4, size],
      [26, 2, name.length],
    ]),
    ascii(name),
  )

/**
 * Its line in the list at the end.
 *
 * @source APPNOTE.TXT 6.3.10, 4.3.12
 */
export const zipLine = ({ name, method, crc, within, size, at }: ZipMember): Uint8Array =>
  together(
    put(lineBytes, [
      [0, 4, 0x02014b50],
      [4, 2, 20],
      [6, 2, 20],
      [10, 2, method],
      [14, 2, day],
      [16, 4, crc],
      [20, 4, within],
      [24, 4, size],
      [28, 2, name.length],
      [42, 4, at],
    ]),
    ascii(name),
  )

const before = 'axlewright sha256 '
/** Bytes of the end, which are always as many. */
export const endBytes = 22 + before.length + 64

/**
 * The end of the ZIP; its comment says the SHA-256 of all that stands before the end.
 *
 * @source APPNOTE.TXT 6.3.10, 4.3.16
 */
export const zipEnd = (list: {
  readonly count: number
  readonly at: number
  readonly size: number
  readonly digest: string
}): Uint8Array =>
  together(
    put(22, [
      [0, 4, 0x06054b50],
      [8, 2, list.count],
      [10, 2, list.count],
      [12, 4, list.size],
      [16, 4, list.at],
      [20, 2, before.length + 64],
    ]),
    ascii(before + list.digest),
  )
