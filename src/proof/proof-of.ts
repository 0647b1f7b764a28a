import { type Entry, inCausalOrder, isSealed, type PrivateValue, type SealedEntry } from '../job/index.ts'
import { Refusal } from '../quantity/index.ts'
import { digestOf } from './digest-of.ts'
import type { Proof, Snapshot } from './proof.ts'
import type { ProofRefusal } from './proof-refusal.ts'

/**
 * A job as a proof: its log, all of it sealed, with the files it pins and the workshop's own log.
 *
 * @throws {Refusal} `nothing-signed` when an entry is not sealed
 * @throws {Refusal} `not-json`
 * @source own derivation: docs/methods/record.md
 */
export function proofOf({
  workshop,
  job,
  entries,
  files,
  root,
  workshopLog,
  values = [],
}: {
  readonly workshop: string
  readonly job: string
  readonly entries: readonly Entry[]
  readonly files: readonly { readonly what: Snapshot['what']; readonly file: unknown }[]
  readonly root: string | null
  readonly workshopLog: readonly SealedEntry[]
  /** Personal values that lie beside the log. */
  readonly values?: readonly PrivateValue[]
}): Proof {
  const ordered = inCausalOrder(entries)
  if (!ordered.every(isSealed))
    throw new Refusal<ProofRefusal>({
      code: 'nothing-signed',
      at: 'entries',
      given: `${ordered.filter((one) => !isSealed(one)).length} entries without a seal`,
      sentence: 'Some entries of this job are not sealed, so there is nothing to prove them by.',
      remedy: 'Seal the log first.',
    })
  return {
    head: { format: 1, kind: 'proof', workshop, job, root },
    entries: ordered,
    ...(values.length > 0
      ? { private: values.toSorted((a, b) => (a.commitment < b.commitment ? -1 : 1)) }
      : {}),
    snapshots: files.map(({ what, file }) => ({ what, digest: digestOf(what, file), file })),
    workshop: inCausalOrder(workshopLog) as readonly SealedEntry[],
  }
}
