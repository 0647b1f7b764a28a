import { fieldPath } from '../corner/index.ts'
import type { Typing } from './told.ts'

/**
 * Every quantity in an entry's data that a person typed, with its path and text: whatever has a text beside
 * its value.
 *
 * @param data the data after decoding
 * @source definition
 * @example typingsOf({ reads: [{ text: '441 mm', value: 0.441 }] }, 3) // [{ entry: 3, path: 'reads[0]', text: '441 mm' }]
 */
export function typingsOf(
  data: unknown,
  entry: number,
  path: readonly PropertyKey[] = [],
): readonly Typing[] {
  if (typeof data !== 'object' || data === null) return []
  const { text, value } = data as { text?: unknown; value?: unknown }
  if (typeof text === 'string' && typeof value === 'number') return [{ entry, path: fieldPath(path), text }]
  const members: readonly (readonly [PropertyKey, unknown])[] = Array.isArray(data)
    ? data.map((inner, i) => [i, inner] as const)
    : Object.entries(data)
  return members.flatMap(([step, inner]) => typingsOf(inner, entry, [...path, step]))
}
