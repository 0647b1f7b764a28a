import { type Entry, isSealed, type JobState, type Told } from '../job/index.ts'
import type { ArrivalNoted } from './arrival-sheet.ts'
import type { HandoverConflict } from './handover-sheet.ts'

/**
 * What the log says twice and a decision can choose between: each value as it differs from the others, with when and by
 * whom.
 *
 * @source own derivation: docs/methods/record.md
 */
export function handoverConflicts(
  state: JobState,
  entries: readonly Entry[],
  noted: (fact: Told) => ArrivalNoted,
): readonly HandoverConflict[] {
  return state.troubles.flatMap(({ choice, sentence, remedy }): readonly HandoverConflict[] => {
    if (!choice || choice.length < 2) return []
    const values = choice.map((entry) => {
      const fact = factAt(state, entry)
      return fact
        ? { of: noted(fact).of, texts: textsOf(noted(fact)), words: noted(fact).words }
        : { of: idOf(entries, entry), texts: {}, words: '' }
    })
    const shared = (path: string, text: string) => values.every(({ texts }) => texts[path] === text)
    return [
      {
        sentence,
        remedy,
        values: values.map(({ of, texts, words }, i) => ({
          of,
          words,
          says:
            Object.entries(texts)
              .filter(([path, text]) => path !== 'hand' && !shared(path, text))
              .map(([path, text]) => `${path.replaceAll('.', ' ')} ${text}`)
              .join(', ') || `entry ${choice[i]! + 1}, the same in words`,
        })),
      },
    ]
  })
}

const idOf = (entries: readonly Entry[], entry: number): number | string => {
  const one = entries[entry]!
  return isSealed(one) ? one.id : entry
}

const textsOf = ({ texts }: ArrivalNoted): Readonly<Record<string, string>> => texts

/** The fact that an entry of the log became. */
function factAt(state: JobState, entry: number): Told | null {
  const all = [
    state.opened,
    state.arrival,
    state.pressures,
    state.bay,
    ...Object.values(state).flatMap((list: unknown) => (Array.isArray(list) ? list : [])),
    ...state.rounds.flatMap(({ readings }) => readings),
  ] as readonly (Partial<Told> | null)[]
  return (all.find((one) => one?.entry === entry && Array.isArray(one.typings)) as Told | undefined) ?? null
}
