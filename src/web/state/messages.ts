import type { Side } from '../../linkage/index.ts'
import type { Sheet, SheetMove } from '../../sheet/index.ts'

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
        readonly kind: SheetMove['kind']
        readonly wheel: string
        readonly side: Side
        readonly from: number
        readonly to: number
      }[]
    }
  | {
      /** A field of the round that is being read; `entry` is the reading of the round before. */
      readonly kind: 'again'
      readonly entry: number
      readonly path: string
      readonly label: string
      readonly text: string
    }
  | {
      /** The round is taken as read. */
      readonly kind: 'taken'
      readonly at: string
      /** Rolled and jounced before it was read, or on slip plates. */
      readonly settled: boolean
      /** Everything is at its final torque: the reading that proves the work. */
      readonly proving: boolean
    }

/** One field of a round that is being read. */
interface RoundField {
  readonly entry: number
  readonly path: string
  readonly label: string
  /** What stood there in the round before. */
  readonly before: string
  /** How the gauge is set up: stays as it was until typed over. */
  readonly kept: boolean
  /** What stands there now; empty until it is read. */
  readonly text: string
}

/** The round that is being read after the moves: what each gauge is asked again. */
export interface RoundForm {
  readonly number: number
  readonly observations: readonly {
    readonly entry: number
    readonly title: string
    readonly fields: readonly RoundField[]
    readonly complete: boolean
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
  /** Stands for the log in the file: edits made on another log are not laid on this one. */
  readonly mark: string
}

/** What the page asks of the worker: the sheet of a job with these edits. */
export interface Ask {
  readonly turn: number
  readonly job: string
  readonly edits: readonly Edit[]
}

/** What comes back at once: what of the edits was not understood, and a round that is being read. */
export interface Told {
  /** Index into `edits`. */
  readonly refused: readonly (Plain & { readonly edit: number })[]
  /** Adjusters were turned after the last readings, by the log: what the sheet shows of moves is made. */
  readonly made: boolean
  /** A round that is being read; null when none is open. */
  readonly form: RoundForm | null
}

/** What comes back when it is worked out: the sheet of everything that was understood. */
export interface Answer {
  readonly sheet: Sheet | null
  readonly trouble: Plain | null
}

/** What the worker says. */
export type WorkerSays =
  | { readonly kind: 'jobs'; readonly rows: readonly JobRow[] }
  | { readonly kind: 'told'; readonly turn: number; readonly told: Told }
  | { readonly kind: 'answer'; readonly turn: number; readonly answer: Answer }
