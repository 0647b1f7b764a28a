import {
  commitmentIn,
  type Entry,
  isSealed,
  type PrivateValue,
  type SealedEntry,
  withReferences,
} from '../job/index.ts'
import { canonicalText } from '../proof/index.ts'
import { refused } from './refused.ts'

/**
 * What of a file's bare entries this device has not sealed yet. A file is written on and taken in again: what was sealed
 * of it stands at its beginning and must be as it was.
 *
 * @param file its name, and its entries, sealed ones first
 * @param known all of the log
 * @param add whether all bare entries are new, whatever was sealed before
 * @returns bare entries; those that name one by its place name it by id, or by its place after all of the log
 * @throws {Refusal} `sealed-otherwise`, `lacks-sealed`
 * @source own derivation: docs/methods/record.md
 */
export function newEntries(
  { path, entries }: { readonly path: string; readonly entries: readonly Entry[] },
  {
    known,
    device,
    add,
    values = [],
    saying = 'say so',
  }: {
    readonly known: readonly SealedEntry[]
    readonly device: string
    readonly add: boolean
    /** Personal values beside the log; of those that were erased any text is taken for the one that was sealed. */
    readonly values?: readonly PrivateValue[]
    /** How a person says that all are new: "say --add". */
    readonly saying?: string
  },
): readonly Entry[] {
  const carried = new Set(entries.filter(isSealed).map(({ id }) => id))
  const mine = add
    ? []
    : known
        .filter((one) => one.device === device && !carried.has(one.id) && one.kind !== 'signed off')
        .sort((a, b) => a.seq - b.seq)
  const said = new Map(values.map(({ commitment, value }) => [commitment, value]))
  const ids: (string | null)[] = []
  const fresh: Entry[] = []
  entries.forEach((entry, place) => {
    if (isSealed(entry)) {
      ids.push(entry.id)
      return
    }
    const bare = place - carried.size
    const named = withReferences(entry, (of) =>
      typeof of === 'number' ? (ids[of] ?? known.length + of - carried.size - mine.length) : of,
    )
    const sealed = mine[bare]
    if (sealed && !isSame(named, sealed, said))
      throw refused(
        'sealed-otherwise',
        `entries[${place}]`,
        `${path}, entries[${place}]: It was sealed otherwise, and what is sealed is not changed any more. Nothing was written.`,
        `Put it back as it was and write a correction behind it; if none of the file was taken in before, ${saying}.`,
      )
    ids.push(sealed?.id ?? null)
    if (!sealed) fresh.push(named)
  })
  if (ids.length - carried.size < mine.length)
    throw refused(
      'lacks-sealed',
      `${ids.length - carried.size} of ${mine.length}`,
      `${path}: It lacks entries that were sealed before: ${mine.length} were taken in, and ${ids.length - carried.size} are left. Nothing was written.`,
      `Bring back what is missing; if they are other ones and all new, ${saying}.`,
    )
  return fresh
}

const isSame = ({ kind, data, at }: Entry, sealed: SealedEntry, said: ReadonlyMap<string, string>): boolean =>
  kind === sealed.kind &&
  (at === undefined || at === sealed.at) &&
  canonicalText(data) === canonicalText(clear(sealed.data, data, said))

/** What was sealed, with personal values in place of their tokens. */
function clear(sealed: unknown, bare: unknown, said: ReadonlyMap<string, string>): unknown {
  if (typeof sealed === 'string') {
    const commitment = commitmentIn(sealed)
    if (commitment === null || bare === sealed) return sealed
    return said.get(commitment) ?? (typeof bare === 'string' ? bare : sealed)
  }
  if (typeof sealed !== 'object' || sealed === null) return sealed
  const inside = (name: string) =>
    typeof bare === 'object' && bare !== null && Object.hasOwn(bare, name)
      ? (bare as Readonly<Record<string, unknown>>)[name]
      : undefined
  if (Array.isArray(sealed)) return sealed.map((one, i) => clear(one, inside(String(i)), said))
  return Object.fromEntries(
    Object.entries(sealed).map(([name, one]) => [name, clear(one, inside(name), said)]),
  )
}
