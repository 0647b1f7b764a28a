import type { EntryData, WheelName } from '../job/index.ts'
import type { ArrivalNoted, ArrivalOptions } from './arrival-sheet.ts'
import type { ProofLine, ProofSheet } from './proof-sheet.ts'
import type { SheetOptions } from './sources.ts'

/** A block of the handover. @source definition */
export type HandoverPlace =
  | 'decide'
  | 'not-ready'
  | 'drive'
  | 'road'
  | 'electronics'
  | 'extra'
  | 'follow-ups'
  | 'parts'
  | 'open'
  | 'sign'

/** Why it may not be driven yet, and at which stage that is put right. @source definition */
export interface HandoverHold {
  readonly sentence: string
  /** Place of the stage in the address: "refit"; null where it is looked at here. */
  readonly stage: 'refit' | 'angles' | null
}

/** One question of the road test. @source definition */
export interface HandoverQuestion {
  readonly question: string
  /** What was answered last, after the work; null while nobody did. */
  readonly answer: 'yes' | 'no' | 'could not tell' | null
  /** What else its answer says in the log: whether the brake pedal is firm. */
  readonly tells: 'pedal' | null
}

/** An electronic system that counts from the geometry. @source definition */
export interface HandoverElectronics {
  readonly what: EntryData<'electronics'>['what']
  /** Why it is due; null where nothing was touched that it counts from. */
  readonly why: string | null
  readonly state: EntryData<'electronics'>['state'] | null
  readonly noted: ArrivalNoted | null
}

/** A follow-up that what was done asks for, with the days or distances to choose from. @source definition */
export interface HandoverProposal {
  readonly what: EntryData<'follow-up'>['what']
  readonly why: string
  readonly wheels: readonly WheelName[]
  readonly choices: readonly {
    readonly words: string
    readonly after?: string
    readonly on?: string
  }[]
}

/** Something noted that can be answered, cleared or put right. @source definition */
export interface HandoverFact {
  readonly noted: ArrivalNoted
  readonly what: string
  readonly words: string
  /** Nothing more is to be done about it. */
  readonly done: boolean
}

/** Entries that say different things, each as it differs from the others. @source definition */
export interface HandoverConflict {
  readonly sentence: string
  readonly remedy: string
  readonly values: readonly {
    readonly of: number | string
    /** "torque 190 N·m" */
    readonly says: string
    /** "noted 07:12 by KB" */
    readonly words: string
  }[]
}

/** The job as it is given back. @source definition */
export interface HandoverSheet {
  readonly vehicle: string
  readonly job: string
  readonly workshop: string
  readonly finished: boolean
  /** The proof sheet's own: "Not finished: 2 joints are open." */
  readonly sentence: string
  /** All that the proof sheet has open. */
  readonly open: readonly string[]
  /** Road-test answers that are not well. */
  readonly doubts: readonly string[]
  readonly conflicts: readonly HandoverConflict[]
  readonly notReady: readonly HandoverFact[]
  /** What holds it back from its first drive, the joints first. */
  readonly holds: readonly HandoverHold[]
  /** Whether it may be driven, as it was said when it came. */
  readonly firstTest: string | null
  /** What is looked at before it rolls, then what is felt on the road. */
  readonly standing: readonly HandoverQuestion[]
  readonly road: readonly HandoverQuestion[]
  readonly roadTest: { readonly words: string; readonly driven: boolean } | null
  readonly electronics: readonly HandoverElectronics[]
  readonly extra: readonly HandoverFact[]
  readonly proposals: readonly HandoverProposal[]
  readonly followUps: readonly (HandoverFact & { readonly card: boolean; readonly when: string })[]
  readonly parts: readonly ProofLine[]
  readonly hours: readonly string[]
  readonly days: string | null
  readonly hands: ProofSheet['hands']
  /** What a sign-off would cover, in a sentence. */
  readonly covers: string
  /** The last sign-off, and what came in after it. */
  readonly signed: { readonly words: string; readonly late: readonly string[] } | null
  readonly cautions: readonly string[]
  readonly next: {
    readonly sentence: string
    readonly button: string
    /** A block of this sheet, or a stage. */
    readonly place: HandoverPlace | null
    readonly stage: 'refit' | 'angles' | null
  }
  readonly troubles: readonly string[]
}

/** How a handover is laid out. @source definition */
export interface HandoverOptions extends ArrivalOptions, Pick<SheetOptions, 'units'> {}
