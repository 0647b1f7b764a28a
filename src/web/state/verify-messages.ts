import type { ProofVerdict } from '../../proof/index.ts'
import type { Plain } from './messages.ts'

/** A file to be looked through, and the root that is trusted; an empty one is this device's own workshop. */
export interface VerifyAsk {
  readonly bytes: Uint8Array
  readonly root: string
}

/** What comes back. */
export type VerifySays =
  | { readonly kind: 'progress'; readonly done: number; readonly of: number }
  | {
      readonly kind: 'verdict'
      readonly verdict: ProofVerdict
      readonly by: 'named' | 'own workshop' | 'nobody'
    }
  | { readonly kind: 'trouble'; readonly trouble: Plain }
