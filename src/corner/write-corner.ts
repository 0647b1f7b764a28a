import { type Corner, type CornerFile, cornerSchema } from './corner-schema.ts'

/**
 * A corner model as a file's value: quantities as text, lengths in mm, angles in degrees, twelve digits.
 *
 * @source own derivation: docs/methods/formats.md
 */
export function writeCorner(corner: Corner): CornerFile {
  return cornerSchema.encode(corner as Parameters<typeof cornerSchema.encode>[0])
}
