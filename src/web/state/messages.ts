import type { Side } from '../../linkage/index.ts'
import type { BoltSheet, JobLine, RoundAsk, Sheet, SheetMove } from '../../sheet/index.ts'

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
      /** Where nothing was read before: what to read. */
      readonly asks?: readonly RoundAsk[]
      /** The button said that everything is final: the round that follows proves the work. */
      readonly proving?: boolean
    }
  | {
      /** How the round that is being read is read: boxes to tick. */
      readonly kind: 'how'
      readonly settled: boolean
      readonly proving: boolean
    }
  | {
      /** One thing done at a joint: what the log gets; null where it is only ticked on the way. */
      readonly kind: 'done'
      readonly at: string
      readonly wheel: string
      readonly joint: string
      readonly label: string
      readonly entry: { readonly kind: string; readonly data: Readonly<Record<string, unknown>> } | null
    }
  | {
      /** What a sheet notes in the log: one fact, in as many entries as it takes. */
      readonly kind: 'noted'
      readonly at: string
      readonly label: string
      readonly entries: readonly {
        readonly kind: string
        readonly data: Readonly<Record<string, unknown>>
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
  /** How such a figure is written, where it was not read before. */
  readonly like?: string
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
  readonly workshop: string
  readonly source: string
  /** Stands for the log in the file: edits made on another log are not laid on this one. */
  readonly mark: string
  /** The day on which the work goes on, "2026-03-10", where that is the job's own and not the device's. */
  readonly day: string | null
  readonly line: JobLine
  /** It is kept on this device: what is noted in it is sealed. Else it is a file that came with the page. */
  readonly kept: boolean
  /** Stands for all that its log holds: another version is read anew. */
  readonly version: string
}

/** In which units one person reads. */
export type Units = 'metric' | 'US'

/** What the page asks of the worker about a job with these edits. */
export interface Ask {
  readonly turn: number
  readonly job: string
  /** Of the log, as its row has it. */
  readonly version: string
  readonly edits: readonly Edit[]
  readonly units: Units
  /** The sheet of the angles; it takes longer. */
  readonly sheet: boolean
  readonly bolts: boolean
}

/** What comes back at once: what of the edits was not understood, and a round that is being read. */
export interface Told {
  /** Index into `edits`; the field is a path in the entry's data. */
  readonly refused: readonly (Plain & { readonly edit: number; readonly field: string })[]
  /** Adjusters were turned after the last readings, by the log: what the sheet shows of moves is made. */
  readonly made: boolean
  /** A round that is being read; null when none is open. */
  readonly form: RoundForm | null
  /** What this device sealed last and can take back; null where there is nothing, or the job is none that is kept. */
  readonly last: LastSealed | null
}

/** What was said last and can be taken back. */
export interface LastSealed {
  /** Its entries, by their places in the log. */
  readonly entries: readonly number[]
  readonly label: string
  readonly wheel: string | null
  readonly joint: string | null
}

/** What comes back when it is worked out: the sheet of everything that was understood. */
export interface Answer {
  readonly sheet: Sheet | null
  readonly trouble: Plain | null
}

/** The bolt book of everything that was understood. */
export interface BoltAnswer {
  readonly bolts: BoltSheet | null
  readonly trouble: Plain | null
}

/** What the worker says. */
export type WorkerSays =
  | { readonly kind: 'jobs'; readonly rows: readonly JobRow[] }
  | { readonly kind: 'broken'; readonly reason: string }
  | { readonly kind: 'told'; readonly turn: number; readonly told: Told }
  | { readonly kind: 'bolts'; readonly turn: number; readonly answer: BoltAnswer }
  /** The end of a question; null where no sheet was asked for. */
  | { readonly kind: 'answer'; readonly turn: number; readonly answer: Answer | null }
