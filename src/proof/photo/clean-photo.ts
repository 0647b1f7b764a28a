import type { PhotoType } from './photo-type.ts'

/** What was taken out of a photo, in words. @source definition */
export type PhotoExtra =
  | 'Exif'
  | 'XMP'
  | 'IPTC'
  | 'comment'
  | 'thumbnail'
  | 'time'
  | 'other data'
  | 'data behind the picture'

/** A photo of which nothing is left but the picture. @source definition */
export interface CleanPhoto {
  readonly bytes: Uint8Array<ArrayBuffer>
  readonly type: PhotoType
  /** As stored, pixels; shown the other way round where it lies on its side. */
  readonly width: number
  readonly height: number
  /** Which way up it is shown: 1 (as it is) to 8, as Exif counts. */
  readonly orientation: number
  /** What was taken out, each once. */
  readonly without: readonly PhotoExtra[]
}
