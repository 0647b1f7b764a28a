import type { Entry } from './entry.ts'
import type { Trouble } from './job-state.ts'
import { type Precedes, precedence } from './precedence.ts'

/** What is taken back: which entry, by which. */
export interface TakenBack {
  readonly by: ReadonlyMap<number, number>
  readonly troubles: readonly Trouble[]
}

/** What frames the log stays. */
const frames: readonly string[] = ['opened', 'signed off']

/**
 * The entries that were undone. Taking back a taking back brings the entry in again. What a sign-off covers is not
 * taken back by who knew of it; it is corrected, and the sign-off then does not cover that.
 *
 * @source own derivation: docs/methods/record.md
 */
export function takenBack(entries: readonly Entry[], known?: Precedes): TakenBack {
  const by = new Map<number, number>()
  const troubles: Trouble[] = []
  if (!entries.some(({ kind }) => kind === 'taken back')) return { by, troubles }
  const precedes = known ?? precedence(entries)
  const signed = entries.flatMap(({ kind }, i) => (kind === 'signed off' ? [i] : []))
  for (let entry = entries.length - 1; entry >= 0; entry--) {
    const { of } = entries[entry]!.data
    if (entries[entry]!.kind !== 'taken back' || by.has(entry)) continue
    if (typeof of !== 'number' || of < 0 || of >= entry) continue
    const tell = (sentence: string, remedy: string) =>
      troubles.push({ entries: [of, entry], sentence, remedy })
    if (frames.includes(entries[of]!.kind))
      tell('What opens or signs a job cannot be taken back.', 'Correct it, or open a new job.')
    else if (signed.some((one) => precedes(of, one) && precedes(one, entry)))
      tell(
        'What is signed off cannot be taken back.',
        'Correct it; the correction then stands outside the sign-off.',
      )
    else by.set(of, entry)
  }
  return { by, troubles }
}
