import type * as z from 'zod'
import { faultsOf } from './faults-schema.ts'
import { fieldPath } from './field-path.ts'
import { bad, good, type Problem, type Reading } from './reading.ts'
import type { Seen } from './seen.ts'
import { withoutFaults } from './without-faults.ts'

/** The version of the four formats that this program writes. @source definition */
export const newestFormat = 1

/**
 * Reads one file of an open format: shape, unknown members and quantities by its schema, then what the
 * schema cannot see (names that lead nowhere) by `refers`, which gets whatever is sound. Both lists come
 * back together, in the order of the file's own members.
 *
 * @param json plain value, as `readJsonText` gives it
 * @param called "corner model": the format's name in a sentence
 * @param refers finds what is wrong between members that are sound by themselves
 * @source definition
 */
export function readFile<S extends z.ZodType>(
  json: unknown,
  schema: S,
  called: string,
  refers: (file: Seen<z.input<S>>) => readonly Problem[] = () => [],
): Reading<z.output<S>> {
  if (typeof json !== 'object' || json === null || Array.isArray(json))
    return bad([{ field: 'the file', wrong: `This is no ${called}.`, right: 'a JSON object { … }' }])
  const format = (json as { format?: unknown }).format
  if (typeof format === 'number' && Number.isInteger(format) && format > newestFormat)
    return bad([
      {
        field: 'format',
        wrong: `This ${called} was made by a newer version (format ${format}; this program reads up to format ${newestFormat}).`,
        right: 'a newer version of this program, or the file saved in the older format',
      },
    ])
  const nameless = protoFaults(json)
  if (nameless.length > 0) return bad(nameless)
  const parsed = schema.safeDecode(json as z.input<S>, { error: faultsOf.told })
  const faults = parsed.success ? [] : faultsOf(parsed.error.issues, json)
  const sound = withoutFaults(json, parsed.success ? [] : parsed.error.issues) as Seen<z.input<S>>
  const problems = [...faults, ...refers(sound)]
  if (problems.length > 0) return bad(problems)
  return good((parsed as { data: z.output<S> }).data)
}

/** A member that no object can be trusted to keep: copied by assignment it would change the object itself. */
function protoFaults(value: unknown, path: readonly PropertyKey[] = []): readonly Problem[] {
  if (typeof value !== 'object' || value === null) return []
  return Object.entries(value).flatMap(([name, inner]) =>
    name === '__proto__'
      ? [
          {
            field: fieldPath([...path, name]),
            wrong: 'No member can be called "__proto__".',
            right: 'another name, or the member left out',
          },
        ]
      : protoFaults(inner, [...path, Array.isArray(value) ? Number(name) : name]),
  )
}
