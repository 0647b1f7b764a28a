import type { SealedEntry } from '../job/index.ts'
import { canonicalText } from './canonical-text.ts'
import { sealedShape } from './proof-shape-schema.ts'

/**
 * A sealed entry out of the one line that spells it; null where the line is spelled otherwise or has another shape.
 *
 * @param line without its end
 * @source own derivation: docs/methods/record.md
 * @example readSealedLine('{}') // null
 */
export function readSealedLine(line: string): SealedEntry | null {
  try {
    const value: unknown = JSON.parse(line)
    return canonicalText(value) === line && sealedShape.safeParse(value).success
      ? (value as SealedEntry)
      : null
  } catch {
    return null
  }
}
