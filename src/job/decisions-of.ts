import type { Effective } from './effective-data.ts'
import type { Entry } from './entry.ts'
import type { Trouble } from './job-state.ts'
import { readEntry } from './read-entry.ts'

/** What the decisions of a log set aside: which entry, by which decision. */
export interface Decided {
  readonly setAside: ReadonlyMap<number, number>
  readonly troubles: readonly Trouble[]
}

interface Choice {
  readonly entry: number
  readonly keep: number
  readonly aside: readonly number[]
}

/** What frames the log itself cannot be chosen between. */
const frames: readonly string[] = ['opened', 'round', 'correction', 'taken back', 'signed off']

/**
 * The entries that decisions set aside. A decision that is itself set aside decides nothing; decisions that set
 * each other's choice aside decide nothing either, and are trouble.
 *
 * @param effective every entry's data with the corrections laid over it
 * @source own derivation: docs/methods/formats.md
 */
export function decisionsOf(
  entries: readonly Entry[],
  effective: readonly Effective[],
  isTakenBack: (entry: number) => boolean,
): Decided {
  const setAside = new Map<number, number>()
  const troubles: Trouble[] = []
  const choices: Choice[] = []
  // From the end: a decision between decisions stands behind both.
  for (let entry = entries.length - 1; entry >= 0; entry--) {
    if (entries[entry]!.kind !== 'decision' || setAside.has(entry) || isTakenBack(entry)) continue
    const read = readEntry('decision', effective[entry]!.data, ['entries', entry, 'data'])
    if (read.kind !== 'decision') continue
    const { keep } = read.data
    const of = read.data.of.filter((e): e is number => typeof e === 'number' && e < entry)
    const kinds = new Set(of.map((e) => entries[e]!.kind))
    const [kind] = kinds
    if (
      typeof keep !== 'number' ||
      of.length < read.data.of.length ||
      kinds.size > 1 ||
      frames.includes(kind!)
    ) {
      troubles.push({
        entries: [entry],
        sentence: 'This decision does not choose between earlier entries of one kind.',
        remedy: 'Name the entries that say different things about the same thing, by their numbers.',
      })
      continue
    }
    const aside = of.filter((e) => e !== keep)
    choices.push({ entry, keep, aside })
    if (kind === 'decision') for (const e of aside) setAside.set(e, entry)
  }
  const rounds = circles(choices)
  for (const circle of rounds)
    troubles.push({
      entries: circle,
      choice: circle,
      sentence: `Decided differently: entries ${circle.join(' and ')} each set aside what the other keeps.`,
      remedy: 'Decide between the decisions; until then none of them counts.',
    })
  const void_ = new Set(rounds.flat())
  for (const { entry, aside } of [...choices].reverse())
    if (!void_.has(entry)) for (const e of aside) setAside.set(e, entry)
  return { setAside, troubles }
}

/** Decisions that lead back to themselves when one follows from what is kept to what sets that aside. */
function circles(choices: readonly Choice[]): readonly (readonly number[])[] {
  const next = (choice: Choice) => choices.filter(({ aside }) => aside.includes(choice.keep))
  const reach = (from: Choice): Set<Choice> => {
    const seen = new Set<Choice>()
    const open = next(from)
    for (let choice = open.pop(); choice; choice = open.pop()) {
      if (seen.has(choice)) continue
      seen.add(choice)
      open.push(...next(choice))
    }
    return seen
  }
  const reached = new Map(choices.map((choice) => [choice, reach(choice)]))
  const groups = new Map<string, readonly number[]>()
  for (const choice of choices) {
    if (!reached.get(choice)!.has(choice)) continue
    const group = choices
      .filter((other) => reached.get(choice)!.has(other) && reached.get(other)!.has(choice))
      .map(({ entry }) => entry)
      .sort((a, b) => a - b)
    groups.set(group.join(), group)
  }
  return [...groups.values()]
}
