import type { Proof } from './proof.ts'

/** A list of a proof. @source definition */
export type ProofList = 'entries' | 'private' | 'snapshots' | 'workshop'

/** Where a proof file is not as it was written. @source definition */
export interface SpoiltPlace {
  /** Which list; null for the frame around them. */
  readonly list: ProofList | null
  /** Place in the list, from 0. */
  readonly at: number
  readonly sentence: string
}

/** What a proof file holds. @source definition */
export interface ReadProof {
  /** Null when anything is spoilt. */
  readonly proof: Proof | null
  /** In the order of the file. */
  readonly spoilt: readonly SpoiltPlace[]
}
