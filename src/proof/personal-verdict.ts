import type { PrivateValue, SealedEntry } from '../job/index.ts'
import { isCommitted } from './is-committed.ts'

/** What can be said of the personal values beside a log. @source definition */
export interface PersonalVerdict {
  readonly there: number
  readonly erased: number
  readonly broken: readonly { readonly value: number; readonly sentence: string }[]
}

/**
 * Holds the personal values beside a log against the tokens in it, wherever in an entry they stand: also in members of a
 * newer version.
 *
 * @source own derivation: docs/methods/record.md
 */
export function personalVerdict(
  entries: readonly SealedEntry[],
  values: readonly PrivateValue[],
): PersonalVerdict {
  const named = new Set(
    entries.flatMap(({ data }) =>
      [...JSON.stringify(data).matchAll(/"private:([0-9a-f]{64})"/g)].map(([, commitment]) => commitment!),
    ),
  )
  const seen = new Set<string>()
  const broken = values.flatMap((one, value) => {
    const { commitment } = one
    const sentence = !isCommitted(one)
      ? 'It is not what was sealed: somebody changed it.'
      : !named.has(commitment)
        ? 'No entry names it.'
        : seen.has(commitment)
          ? 'It stands here a second time.'
          : null
    seen.add(commitment)
    return sentence === null ? [] : [{ value, sentence }]
  })
  const there = [...named].filter((one) => seen.has(one)).length
  return { there, erased: named.size - there, broken }
}
