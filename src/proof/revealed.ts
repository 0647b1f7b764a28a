import {
  commitmentIn,
  type Entry,
  inCausalOrder,
  isSealed,
  type PersonalPlace,
  type PrivateValue,
  withPersonal,
} from '../job/index.ts'
import { isCommitted } from './is-committed.ts'

/** A log as people read it. @source definition */
export interface Revealed {
  /** In causal order. What is erased reads "erased"; their ids no longer say what they are. */
  readonly entries: readonly Entry[]
  readonly erased: readonly PersonalPlace[]
  /** What lies beside the log there is not what was sealed. */
  readonly amiss: readonly PersonalPlace[]
  /** Sealed in clear: these cannot be erased. */
  readonly inClear: readonly PersonalPlace[]
  /** What can be erased, and is there. */
  readonly there: readonly (PersonalPlace & { readonly commitment: string })[]
}

/**
 * A log with its personal values in place of their tokens. It is for showing: folds and digests that are signed are made
 * from the log itself.
 *
 * @param values as they lie beside the log
 * @source own derivation: docs/methods/record.md
 */
export function revealed(log: readonly Entry[], values: readonly PrivateValue[]): Revealed {
  const ordered = inCausalOrder(log)
  const kept = new Map(values.map((one) => [one.commitment, one]))
  const erased: PersonalPlace[] = []
  const amiss: PersonalPlace[] = []
  const inClear: PersonalPlace[] = []
  const there: (PersonalPlace & { commitment: string })[] = []
  const entries = withPersonal(ordered, (text, place) => {
    const commitment = commitmentIn(text)
    if (commitment === null) {
      if (isSealed(ordered[place.entry]!)) inClear.push(place)
      return text
    }
    const value = kept.get(commitment)
    if (!value) {
      erased.push(place)
      return 'erased'
    }
    if (!isCommitted(value)) {
      amiss.push(place)
      return 'not what was sealed'
    }
    there.push({ ...place, commitment })
    return value.value
  })
  return { entries, erased, amiss, inClear, there }
}
