import type { PrivateValue, SealedEntry } from '../job/index.ts'

/** A file that a log pins, as plain JSON. @source definition */
export interface Snapshot {
  readonly what: 'corner' | 'spec' | 'kit'
  readonly digest: string
  readonly file: unknown
}

/** What a proof of a later format holds besides. @source definition */
interface BeyondProof {
  readonly format: number
  /** Parts of the file that this version does not know, by their names. */
  readonly parts: readonly string[]
  /** The whole file, so that nothing of it is lost. */
  readonly text: string
}

/**
 * All that is needed to check a job anywhere: its log, the files it pins, and the workshop's own log, which says whose the
 * devices are.
 *
 * @source own derivation: docs/methods/record.md
 */
export interface Proof {
  readonly head: {
    readonly format: 1
    readonly kind: 'proof'
    readonly workshop: string
    readonly job: string
    /** Public key of the workshop's root; null where the workshop has none yet. */
    readonly root: string | null
  }
  /** In causal order. */
  readonly entries: readonly SealedEntry[]
  readonly snapshots: readonly Snapshot[]
  /** Personal values that stand in the log as tokens, by commitment; what was erased is not there any more. */
  readonly private?: readonly PrivateValue[]
  /** The workshop's own log. */
  readonly workshop: readonly SealedEntry[]
  /** Only where a newer version made the file. */
  readonly beyond?: BeyondProof
}
