import { cornerRefers } from './corner-refers.ts'
import { type Corner, cornerSchema } from './corner-schema.ts'
import { cornerWorks } from './corner-works.ts'
import { readFile } from './file-schema.ts'
import { bad, type Reading } from './reading.ts'

/**
 * A corner model out of a file's value: SI inside, or every fault of the file at once.
 *
 * @param json plain value, as `readJsonText` gives it
 * @source own derivation: docs/methods/formats.md
 * @example readCorner({ format: 1 }).ok // false
 */
export function readCorner(json: unknown): Reading<Corner> {
  const read = readFile(json, cornerSchema, 'corner model', cornerRefers)
  if (!read.ok) return read
  const problems = cornerWorks(read.value)
  return problems.length > 0 ? bad(problems) : read
}
