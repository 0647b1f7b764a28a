import * as z from 'zod'
import { type EntryKind, entryData } from './entries-schema.ts'
import { foldVersion } from './fold-version.ts'

/** The kinds of entries that some version of the rules knows, each with what it holds. @source definition */
export type Vocabulary = Readonly<Partial<Record<EntryKind, z.ZodType>>>

/** What the rules of folding gained since the first. A version before leaves it aside as a newer version's. */
const gained: readonly {
  readonly version: number
  readonly kinds: readonly EntryKind[]
  readonly members: Readonly<Partial<Record<EntryKind, readonly string[]>>>
}[] = [
  {
    version: 2,
    kinds: ['works with'],
    members: { arrival: ['plate', 'owner', 'driver', 'phone'] },
  },
]

/**
 * The kinds that a version of the rules knew, with the members that it knew of them.
 *
 * @param version of the rules of folding
 * @returns null for a version that this program does not know
 * @source own derivation: docs/methods/record.md
 */
export function vocabularyOf(version: number): Vocabulary | null {
  if (!Number.isInteger(version) || version < 1 || version > foldVersion) return null
  const known: Partial<Record<EntryKind, z.ZodType>> = { ...entryData }
  for (const { kinds, members } of gained.filter((one) => one.version > version)) {
    for (const kind of kinds) delete known[kind]
    for (const [kind, names] of Object.entries(members)) {
      const schema = known[kind as EntryKind]
      if (schema instanceof z.ZodObject)
        known[kind as EntryKind] = z.strictObject(
          Object.fromEntries(
            Object.entries(schema.shape as z.ZodRawShape).filter(([name]) => !names.includes(name)),
          ),
        )
    }
  }
  return known
}
