import {
  type Entry,
  headsOf,
  inCausalOrder,
  isSealed,
  type SealedEntry,
  withReferences,
} from '../job/index.ts'
import { Refusal } from '../quantity/index.ts'
import { entryId } from './entry-id.ts'
import { fromHex } from './hex.ts'
import type { ProofRefusal } from './proof-refusal.ts'
import type { Signer } from './signer.ts'

/** Where and by whom entries are sealed. @source definition */
export interface Sealing {
  readonly workshop: string
  readonly job: string
  readonly signer: Signer
  /** Initials or a sign. */
  readonly person: string
  /** The device's clock: "2026-11-25T09:30:00Z"; for entries that have no time of their own. */
  readonly at: string
  /** "+01:00" */
  readonly offset: string
}

/**
 * A log with its bare entries sealed, one after another, after all that is in it. Places by which bare entries name
 * others become ids.
 *
 * @param entries sealed ones in any order, then bare ones as they stand
 * @throws {Refusal} `gap` when an entry of this device is missing from the log: its count would not hold
 * @source own derivation: docs/methods/record.md
 */
export async function sealEntries(
  entries: readonly Entry[],
  sealing: Sealing,
): Promise<readonly SealedEntry[]> {
  const { signer, workshop, job, person, at, offset } = sealing
  const ordered = inCausalOrder(entries)
  const sealed: SealedEntry[] = ordered.filter(isSealed)
  let heads = headsOf(sealed)
  const mine = sealed.filter(({ device }) => device === signer.key).length
  const last = Math.max(0, ...sealed.flatMap(({ device, seq }) => (device === signer.key ? [seq] : [])))
  if (mine !== last)
    throw new Refusal<ProofRefusal>({
      code: 'gap',
      at: 'entries',
      given: `${mine} entries, the last with number ${last}`,
      sentence: 'This log lacks entries that this device wrote, so the next one cannot be numbered.',
      remedy: 'Bring in the newest file of this job from this device first.',
    })
  let seq = last
  for (const entry of ordered.slice(sealed.length)) {
    const named = withReferences(entry, (of) => (typeof of === 'number' ? (sealed[of]?.id ?? of) : of))
    seq++
    const said = {
      format: 1,
      workshop,
      job,
      device: signer.key,
      seq,
      after: heads,
      at: named.at ?? at,
      offset,
      person,
      kind: named.kind,
      data: named.data,
    }
    const id = entryId(said)
    sealed.push({ ...said, id, signature: await signer.sign(fromHex(id)!) })
    heads = [id]
  }
  return sealed
}
