import { holds } from './holds.ts'

/** The kinds of pictures that are taken, by their media type. @source definition */
export type PhotoType = 'image/jpeg' | 'image/png' | 'image/webp'

/**
 * Which kind of picture bytes are, by how they begin; null for any other.
 *
 * @source ITU-T T.81, B.1.1.3 (SOI); W3C PNG, 5.2 (signature); RFC 9649, 2.4 (WebP file header)
 * @example photoType(new Uint8Array([0xff, 0xd8, 0xff])) // 'image/jpeg'
 */
export function photoType(bytes: Uint8Array): PhotoType | null {
  if (holds(bytes, '\xff\xd8\xff')) return 'image/jpeg'
  if (holds(bytes, '\x89PNG\r\n\x1a\n')) return 'image/png'
  return holds(bytes, 'RIFF') && holds(bytes, 'WEBP', 8) ? 'image/webp' : null
}
