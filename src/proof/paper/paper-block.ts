import type { ProofPair } from '../../sheet/index.ts'
import type { PaperState } from './state-svg.ts'

/** One cell: what it says, how it stands, or two marks on a line. */
export interface PaperCell {
  readonly state?: PaperState
  readonly bold?: string
  readonly text?: string
  readonly small?: string
  readonly pair?: ProofPair
}

/** One part of the paper; page and file lay the same parts out. */
export type PaperBlock =
  | {
      readonly kind: 'table'
      readonly heading: string
      readonly head: readonly string[]
      /** Shares of the width. */
      readonly widths: readonly number[]
      readonly rows: readonly (readonly PaperCell[])[]
      readonly note?: string
    }
  | {
      readonly kind: 'list'
      readonly heading: string
      readonly items: readonly PaperCell[]
      readonly columns: 1 | 2 | 3
      readonly isBoxed?: boolean
    }
