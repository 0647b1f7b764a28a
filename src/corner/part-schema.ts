import type * as z from 'zod'
import { faultsOf } from './faults-schema.ts'
import { bad, good, type Reading } from './reading.ts'

/**
 * Reads one part of a file by its schema, when the whole cannot be read at once.
 *
 * @param value the part
 * @param path where it stands in the file, for the problems
 * @source definition
 */
export function readPart<S extends z.ZodType>(
  value: unknown,
  schema: S,
  path: readonly PropertyKey[],
): Reading<z.output<S>> {
  const parsed = schema.safeDecode(value as z.input<S>, { error: faultsOf.told })
  return parsed.success ? good(parsed.data) : bad(faultsOf(parsed.error.issues, value, path))
}
