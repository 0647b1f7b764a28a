import * as z from 'zod'
import { entryData } from './entries-schema.ts'

/**
 * The paths of what is personal in an entry's data, by its kind, as the schemas declare it.
 *
 * @source own derivation: docs/methods/record.md
 * @example personalMembers('not road-ready') // [['told']]
 */
export const personalMembers = (kind: string): readonly (readonly string[])[] => known[kind] ?? []

const pathsIn = (schema: unknown, path: readonly string[] = []): readonly (readonly string[])[] => {
  if (!(schema instanceof z.ZodType)) return []
  if (z.globalRegistry.get(schema)?.['personal'] === true) return [path]
  if (schema instanceof z.ZodOptional) return pathsIn(schema.unwrap(), path)
  if (schema instanceof z.ZodObject)
    return Object.entries(schema.shape).flatMap(([name, part]) => pathsIn(part, [...path, name]))
  return []
}

const known: Readonly<Record<string, readonly (readonly string[])[]>> = Object.assign(
  Object.create(null),
  Object.fromEntries(Object.entries(entryData).map(([kind, schema]) => [kind, pathsIn(schema)])),
)
