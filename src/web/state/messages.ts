import type { Side } from '../../linkage/index.ts'
import type { Sheet } from '../../sheet/index.ts'

/** One change that the person made to a job, in order; together with the job's file it is the whole state. */
export type Edit =
  | {
      readonly kind: 'typed'
      readonly entry: number
      readonly path: string
      readonly label: string
      readonly text: string
    }
  | {
      readonly kind: 'turned'
      /** When, as the device's clock had it (ISO 8601). */
      readonly at: string
      readonly moves: readonly {
        readonly adjuster: string
        readonly side: Side
        readonly from: number
        readonly to: number
      }[]
    }

/** Why something was not taken in, and what to do. */
export interface Plain {
  readonly sentence: string
  readonly remedy: string
}

/** A job on the list. */
export interface JobRow {
  readonly id: string
  readonly vehicle: string
  readonly job: string
  readonly source: string
}

/** What the page asks of the worker: the sheet of a job with these edits. */
export interface Ask {
  readonly turn: number
  readonly job: string
  readonly edits: readonly Edit[]
}

/** What comes back: the sheet of everything that was understood, and what was not. */
export interface Answer {
  readonly sheet: Sheet | null
  /** Index into `edits`. */
  readonly refused: readonly (Plain & { readonly edit: number })[]
  readonly trouble: Plain | null
}

/** What the worker says. */
export type WorkerSays =
  | { readonly kind: 'jobs'; readonly rows: readonly JobRow[] }
  | { readonly kind: 'answer'; readonly turn: number; readonly answer: Answer }
