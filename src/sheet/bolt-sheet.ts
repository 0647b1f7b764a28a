import type { JointState } from '../job/index.ts'

/** A number as it stands on the scale in the hand, and what the fastener receives by it. @source definition */
export interface DoingFigure {
  /** "Floor, on wrench 2", "Stage 2 of 3, on wrench 2", "Turn" */
  readonly label: string
  /** "74" */
  readonly value: string
  /** "N·m" */
  readonly unit: string
  /** "80 at the nut"; empty where the two are the same. */
  readonly atFastener: string
}

/** What is drawn on a doing screen; angles in rad. @source definition */
export type DoingDrawing =
  | {
      readonly kind: 'castle nut'
      readonly slots: number
      /** One slot's pitch: the most that it may have to be turned forward. */
      readonly pitch: number
    }
  | {
      readonly kind: 'ring'
      /** Places round the ring in the order of tightening: order[0] is tightened first; place 0 at 12 o'clock, clockwise. */
      readonly order: readonly number[]
      readonly count: number
    }
  /** Forward is +; a hub is backed off by a negative angle. */
  | { readonly kind: 'turn'; readonly angle: number }

/** One thing the hand does at a joint, and what the log gets when it is done. @source definition */
export interface DoingAct {
  /** "Floor reached", "Pin in", "Stage 1 done", "Run up" */
  readonly label: string
  /** Whether it can be said now; a later one is shown and cannot be pressed yet. */
  readonly ready: boolean
  /**
   * The bare entry that is appended: its kind and data as a job file writes them, but for `hand`, which the caller adds
   * with the moment; null: it is only ticked on the way.
   */
  readonly entry: { readonly kind: string; readonly data: unknown } | null
  /** What must be read and laid into the entry's data first, as text with its unit: an end float. */
  readonly asks?: readonly { readonly path: string; readonly label: string; readonly text: string }[]
}

/** The doing screen of one joint: one action, one scale. @source definition */
export interface BoltDoing {
  /** "Bolt book · 3 of 5 open" */
  readonly place: string
  /** Whether a second look is asked for. */
  readonly secondCheck: boolean
  /** How the vehicle must stand for it, and how it is held. */
  readonly stand: string
  readonly cautions: readonly string[]
  /** "wrench 2 with the 40 mm adapter straight ahead"; empty when no wrench is used. */
  readonly with: string
  readonly figures: readonly DoingFigure[]
  readonly drawing: DoingDrawing | null
  /** What to do now, in sentences; the word that must not be missed is in **bold**. */
  readonly says: readonly string[]
  readonly acts: readonly DoingAct[]
  /** Why it cannot be tightened for good yet ("no value in the sheet", "no wrench covers it"); empty when it can. */
  readonly blocked: readonly string[]
}

/** How something was found at a joint before it was disturbed. @source definition */
export interface SheetMark {
  /** Place in the log. */
  readonly entry: number
  readonly what: string
  /** Where a mark stands, clockwise from 12 o'clock as the hand sees it, rad; null where none does. */
  readonly clock: number | null
  /** "Arrow forward", "shims at the front bolt: 1.5 mm, 0.8 mm", "exposed thread 12 mm". */
  readonly words: readonly string[]
  /** SHA-256 of a photo that lies beside the log. */
  readonly photo: string | null
}

/** One line of the bolt book as people read it. @source definition */
export interface SheetBolt {
  /** "front right"; "front axle" for a joint that the axle has once. */
  readonly wheel: string
  /** Its name in the corner model. */
  readonly joint: string
  /** The wheel under which the log names it: "front left" also of a joint that the axle has once. */
  readonly named: string
  /** The adjuster that its bolt carries, by its name in the corner model. */
  readonly adjuster: string | null
  /** As it was found; shown again when it goes back. */
  readonly marks: readonly SheetMark[]
  readonly letter: string | null
  readonly name: string
  /** "castle nut on a tapered stud" */
  readonly kind: string
  readonly state: JointState
  readonly done: boolean
  /** "105 N·m, then forward to the next slot, never past 130 N·m, dry" */
  readonly required: string
  readonly source: string | null
  /** What is still open and what to do. */
  readonly toDo: readonly { readonly holds: boolean; readonly sentence: string; readonly remedy: string }[]
  /** What is recorded: "final 190 N·m, at ride height, wrench 2, T". */
  readonly recorded: readonly string[]
  readonly doing: BoltDoing
}

/** The bolt book as one plain value, what is open first. @source definition */
export interface BoltSheet {
  readonly bolts: readonly SheetBolt[]
  /** "Open joints: 5. Nothing is handed over before they are closed." */
  readonly sentence: string
  readonly cautions: readonly string[]
  readonly troubles: readonly string[]
}
