import type { Signer } from '../../proof/index.ts'
import type { LogStore } from '../../store/browser/index.ts'

/** Where jobs are kept on this device, and in whose hand what is written. */
export interface Keeper {
  readonly store: LogStore
  readonly device: () => Promise<Signer>
}
