/** Tag, type and byte order of the one field that is read and written. */
const orientationTag = 0x0112
const short = 3

/**
 * Which way up a picture is to be shown, out of its Exif block.
 *
 * @param tiff the block from its byte order on, without the `Exif` before it
 * @returns 1 (as it is) to 8; 1 where nothing is said or it cannot be read
 * @source CIPA DC-008-2019 (Exif 2.32), 4.6.2 and 4.6.4 A; TIFF 6.0, section 2
 */
export function exifOrientation(tiff: Uint8Array): number {
  const view = new DataView(tiff.buffer, tiff.byteOffset, tiff.byteLength)
  if (tiff.length < 8) return 1
  const order = view.getUint16(0)
  const small = order === 0x4949
  if ((!small && order !== 0x4d4d) || view.getUint16(2, small) !== 42) return 1
  const first = view.getUint32(4, small)
  if (first + 2 > tiff.length) return 1
  const fields = view.getUint16(first, small)
  for (let i = 0; i < fields; i++) {
    const at = first + 2 + 12 * i
    if (at + 12 > tiff.length) return 1
    if (view.getUint16(at, small) !== orientationTag) continue
    const value = view.getUint16(at + 8, small)
    return view.getUint16(at + 2, small) === short && value >= 1 && value <= 8 ? value : 1
  }
  return 1
}

/**
 * An Exif block that says which way up a picture is, and nothing else.
 *
 * @param orientation 1 to 8
 * @source CIPA DC-008-2019 (Exif 2.32), 4.6.2 and 4.6.4 A; TIFF 6.0, section 2
 * @example exifOrientation(orientationOnly(6)) // 6
 */
export function orientationOnly(orientation: number): Uint8Array {
  const view = new DataView(new ArrayBuffer(26))
  view.setUint16(0, 0x4d4d)
  view.setUint16(2, 42)
  view.setUint32(4, 8)
  view.setUint16(8, 1)
  view.setUint16(10, orientationTag)
  view.setUint16(12, short)
  view.setUint32(14, 1)
  view.setUint16(18, orientation)
  // 20: the rest of the field; 22: no further directory.
  return new Uint8Array(view.buffer)
}
