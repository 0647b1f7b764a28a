import type { ProofSheet } from '../../sheet/index.ts'

/** What the paper says of the proof itself: is it intact, whose hands, what is covered. @source definition */
export interface PaperSeal {
  /** "Proven", "Not proven" or "Not sealed", and why in short. */
  readonly head: string
  readonly isGood: boolean
  /** Each answer in a sentence. */
  readonly lines: readonly string[]
  /** The sign-off's, to be compared by eye; null where nobody signed off. */
  readonly fingerprint: string | null
  /** What the square code holds; null where there is nothing to hold. */
  readonly code: string | null
}

/** All that a printed proof is made of. @source definition */
export interface Paper {
  readonly sheet: ProofSheet
  readonly seal: PaperSeal
  /** Version of the program that laid it out. */
  readonly version: string
}

/** The sheets it is cut for. @source ISO 216 (A4); ANSI/ASME Y14.1 (Letter is its size A) */
export type PaperSize = 'A4' | 'Letter'
