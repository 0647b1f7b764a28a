import type { CleanPhoto } from './clean-photo.ts'
import { jpegWithoutMetadata } from './jpeg-without-metadata.ts'
import { photoRefusal } from './photo-refusal.ts'
import { photoType } from './photo-type.ts'
import { pngWithoutMetadata } from './png-without-metadata.ts'
import { webpWithoutMetadata } from './webp-without-metadata.ts'

/**
 * A photo of which nothing is left but the picture: no place, time, device, words or small second picture. Kept are the
 * bytes of the picture itself, unchanged, its colour profile, and which way up it is shown.
 *
 * @throws {Refusal} `no-photo`; `cut-photo`; `moving-picture`
 * @source own derivation: docs/methods/carrying.md
 */
export function withoutMetadata(bytes: Uint8Array): CleanPhoto {
  switch (photoType(bytes)) {
    case 'image/jpeg':
      return jpegWithoutMetadata(bytes)
    case 'image/png':
      return pngWithoutMetadata(bytes)
    case 'image/webp':
      return webpWithoutMetadata(bytes)
    default:
      throw photoRefusal({
        code: 'no-photo',
        given: `${bytes.length} bytes`,
        sentence: 'This is no photo that can be kept: it is neither JPEG nor PNG nor WebP.',
        remedy: 'Set the camera to JPEG, or save the picture as one.',
      })
  }
}
