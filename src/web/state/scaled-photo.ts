import { withoutMetadata } from '../../proof/index.ts'
import { Refusal } from '../../quantity/index.ts'

/** A photo as it is kept: the right way up, small enough, nothing in it but the picture. */
export interface ScaledPhoto {
  readonly bytes: Uint8Array<ArrayBuffer>
  readonly width: number
  readonly height: number
}

/** Longest edge, pixels: a thread's pitch can still be counted on it. */
const longest = 2000
const quality = 0.85

/**
 * A photo scaled down and turned the right way up, as a JPEG without anything besides its picture. Works in a worker too.
 *
 * @throws {Refusal} `no-photo` where this browser cannot show it
 */
export async function scaledPhoto(file: Blob): Promise<ScaledPhoto> {
  const picture = await createImageBitmap(file, { imageOrientation: 'from-image' }).catch(() => {
    throw new Refusal({
      code: 'no-photo',
      at: 'file',
      given: file.type,
      sentence: 'This file is no photo that can be shown here.',
      remedy: 'Set the camera to JPEG, or take the photo again.',
    })
  })
  const scale = Math.min(1, longest / Math.max(picture.width, picture.height))
  const width = Math.max(1, Math.round(picture.width * scale))
  const height = Math.max(1, Math.round(picture.height * scale))
  const sheet = new OffscreenCanvas(width, height)
  const pen = sheet.getContext('2d')!
  // A JPEG has no see-through places.
  pen.fillStyle = '#fff'
  pen.fillRect(0, 0, width, height)
  pen.imageSmoothingQuality = 'high'
  pen.drawImage(picture, 0, 0, width, height)
  picture.close()
  const scaled = await sheet.convertToBlob({ type: 'image/jpeg', quality })
  return { bytes: withoutMetadata(new Uint8Array(await scaled.arrayBuffer())).bytes, width, height }
}
