import type { ProofVerdict } from '../../proof/index.ts'

/** What was found, besides what the proof room says of it. */
export interface Verified {
  readonly path: string
  readonly verdict: ProofVerdict
  /** Entries that nobody sealed. */
  readonly bare: number
  readonly told: readonly string[]
  /** Where the root that is trusted comes from. */
  readonly by: 'named' | 'own workshop' | 'nobody'
}
