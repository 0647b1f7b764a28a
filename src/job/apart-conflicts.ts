import type { Effective } from './effective-data.ts'
import type { Entry } from './entry.ts'
import type { Trouble } from './job-state.ts'
import type { Precedes } from './precedence.ts'
import { slotOf } from './slot-of.ts'

/**
 * Entries about the same thing that were written apart, neither knowing of the other, and that say different things:
 * each pair is trouble with a choice, until a decision sets one aside or a later entry that knew of both says it anew.
 * A move that two people noted apart is asked about even when both say the same: it may be one move or two.
 *
 * @source own derivation: docs/methods/record.md
 */
export function apartConflicts(
  entries: readonly Entry[],
  effective: readonly Effective[],
  precedes: Precedes,
  isSetAside: (entry: number) => boolean,
): readonly Trouble[] {
  const slots = new Map<string, number[]>()
  entries.forEach((entry, i) => {
    const slot = isSetAside(i) ? null : slotOf({ ...entry, data: effective[i]!.data })
    if (slot === null) return
    const group = slots.get(slot)
    if (group) group.push(i)
    else slots.set(slot, [i])
  })
  return [...slots.values()].flatMap((group) => {
    // Each knew of the one before it: none was written apart.
    if (group.every((j, k) => k === 0 || precedes(group[k - 1]!, j))) return []
    const { kind } = entries[group[0]!]!
    const apart = (i: number) => group.some((j) => j !== i && !precedes(i, j) && !precedes(j, i))
    // What somebody said anew who knew of all of it stands above it; moves add up, so theirs stay in question.
    const open = group.filter(kind === 'moved' ? apart : (i) => !group.some((j) => precedes(i, j)))
    if (open.length < 2) return []
    const said = new Set(open.map((i) => sorted(effective[i]!.data)))
    if (said.size < 2 && kind !== 'moved') return []
    return [
      {
        entries: open,
        ...(unchosen.includes(kind) ? {} : { choice: open }),
        sentence: `Two people wrote of the same thing without knowing of each other: ${words(kind)}.`,
        remedy: remedyOf(kind, said.size < 2),
      },
    ]
  })
}

/** What frames the log cannot be set aside. */
const unchosen: readonly string[] = ['opened', 'round', 'correction']

const words = (kind: string) => (kind === 'moved' ? 'a move of one adjuster' : `“${kind}”`)

function remedyOf(kind: string, alike: boolean): string {
  if (kind === 'opened') return 'One job was opened on two devices. Correct the one that is wrong.'
  if (kind === 'round') return 'Open a new round and read again, or correct the number of one of the two.'
  if (kind === 'correction') return 'Correct it once more, as it was.'
  if (alike)
    return 'If it was one move, decide which entry holds. If it was two, correct one of them to what both did, and decide for it.'
  return 'Look which is right, and decide.'
}

/** The same members in another order say the same. */
const sorted = (value: unknown): string =>
  JSON.stringify(value, (_, v: unknown) =>
    v && typeof v === 'object' && !Array.isArray(v)
      ? Object.fromEntries(Object.entries(v).sort(([a], [b]) => (a < b ? -1 : 1)))
      : v,
  )
