import type { Units } from '../state/messages.ts'
import type { Address } from '../state/use-address.ts'
import type { KeptRows } from '../state/use-kept-rows.ts'

/** What a page that stands beside the jobs is given. */
export interface PageProps {
  readonly address: Address
  readonly go: (...parts: readonly string[]) => void
  readonly kept: KeptRows
  readonly units: Units
  readonly onUnits: (units: Units) => void
}
