import { closestName, fieldPath, type Problem, readPart } from '../corner/index.ts'
import { type EntryData, type EntryKind, entryData, entryKinds } from './entries-schema.ts'
import type { SealedEntry } from './sealed-entry.ts'
import type { Vocabulary } from './vocabulary-schema.ts'

/**
 * An entry's data after decoding, or what is wrong with it, or a kind that this version does not know. `beyond`: it has
 * members besides, of a newer version.
 */
export type EntryReading =
  | { [K in EntryKind]: { readonly kind: K; readonly data: EntryData<K>; readonly beyond?: true } }[EntryKind]
  | { readonly kind: 'newer' }
  | { readonly kind: 'faulty'; readonly problems: readonly Problem[] }

/**
 * One entry's data, decoded by its kind. A kind that is one slip of the pen from a known one is a fault,
 * any other unknown kind is taken for a newer version's.
 *
 * @param path where the data stands in the file: ['entries', 3, 'data']
 * @param vocabulary the kinds that the rules of folding know
 * @source definition
 */
export function readEntry(
  kind: string,
  data: unknown,
  path: readonly PropertyKey[],
  vocabulary: Vocabulary = entryData,
): EntryReading {
  if (!Object.hasOwn(vocabulary, kind)) {
    const close = closestName(kind, entryKinds)
    if (close === null) return { kind: 'newer' }
    const problem = {
      field: `entries[${String(path[1])}].kind`,
      wrong: `There is no kind of entry "${kind}".`,
      right: `"${close}", if that is meant`,
    }
    return { kind: 'faulty', problems: [problem] }
  }
  const known = kind as EntryKind
  const read = readPart(data, vocabulary[known]!, path)
  const slips = !read.ok
    ? []
    : known === 'moved'
      ? moveSlips(read.value as EntryData<'moved'>, path)
      : known === 'decision'
        ? decisionSlips(read.value as EntryData<'decision'>, path)
        : []
  if (slips.length > 0) return { kind: 'faulty', problems: slips }
  return (
    read.ok ? { kind: known, data: read.value } : { kind: 'faulty', problems: read.problems }
  ) as EntryReading
}

function moveSlips(
  { from, fromClock, to, toClock, by }: EntryData<'moved'>,
  path: readonly PropertyKey[],
): readonly Problem[] {
  const said = Object.entries({ to, toClock, by }).flatMap(([name, value]) =>
    value === undefined ? [] : [name],
  )
  const ends: readonly Problem[] =
    said.length === 1
      ? []
      : [
          {
            field: fieldPath(path),
            wrong:
              said.length === 0
                ? 'It says neither "to" nor "by".'
                : `It says both ${said.map((name) => `"${name}"`).join(' and ')}.`,
            right: 'the new setting under "to" (a clock position under "toClock"), or the change under "by"',
          },
        ]
  if (from === undefined || fromClock === undefined) return ends
  return [
    ...ends,
    {
      field: fieldPath(path),
      wrong: 'It says both "from" and "fromClock".',
      right: 'one of the two',
    },
  ]
}

function decisionSlips(
  { of, keep }: EntryData<'decision'>,
  path: readonly PropertyKey[],
): readonly Problem[] {
  if (of.includes(keep) && new Set(of).size === of.length) return []
  return [
    {
      field: fieldPath([...path, of.includes(keep) ? 'of' : 'keep']),
      wrong: of.includes(keep)
        ? 'An entry is named twice.'
        : `Entry ${keep} is not among those of the decision.`,
      right: 'each entry once under "of", and one of them under "keep"',
    },
  ]
}

/**
 * A sealed entry's data: as `readEntry`, but members that this version does not know are a newer version's, since
 * members are only ever added and nobody can change what is sealed.
 *
 * @source own derivation: docs/methods/formats.md
 */
export function readSealed(
  { kind, format }: SealedEntry,
  data: Readonly<Record<string, unknown>>,
  path: readonly PropertyKey[],
  vocabulary: Vocabulary = entryData,
): EntryReading {
  if (format > 1 || !Object.hasOwn(vocabulary, kind)) return { kind: 'newer' }
  const read = readEntry(kind, data, path, vocabulary)
  if (read.kind !== 'faulty') return read
  const { error } = vocabulary[kind as EntryKind]!.safeDecode(data as never)
  const issues = error?.issues ?? []
  if (issues.length === 0 || issues.some(({ code }) => code !== 'unrecognized_keys')) return read
  const beyond = issues.flatMap((issue) =>
    issue.code === 'unrecognized_keys' && issue.path.length === 0 ? issue.keys : [],
  )
  const known = Object.fromEntries(Object.entries(data).filter(([name]) => !beyond.includes(name)))
  const again = readEntry(kind, known, path, vocabulary)
  return again.kind === 'faulty' || again.kind === 'newer' ? { kind: 'newer' } : { ...again, beyond: true }
}
