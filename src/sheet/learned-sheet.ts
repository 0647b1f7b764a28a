import type { FirstMoveSuccess } from './first-move-success.ts'

/** One answer of an adjuster, against what the points say. @source definition */
export interface LearnedAnswer {
  /** "lower front eccentric" */
  readonly adjuster: string
  readonly angle: string
  /** Times as much as the points say, with its 95 % spread: "0.86 ± 0.12". */
  readonly text: string
  readonly factor: number
  /** Standard uncertainty of it. */
  readonly spread: number
  /** Standard uncertainty without any job. */
  readonly before: number
}

/** What is foreseen of a vehicle before any of its own moves. @source definition */
export interface LearnedOf {
  /** "another vehicle of this model", "port unit 07, crew bus, again" */
  readonly of: string
  /** How many jobs it counts on at that level. */
  readonly jobs: number
  readonly answers: readonly LearnedAnswer[]
}

/** What jobs have taught of one drawing. @source definition */
export interface LearnedModel {
  readonly model: string
  readonly name: string
  readonly layout: string
  readonly jobs: number
  /** The widest level first: a new model of this layout, another vehicle of this model, then each vehicle again. */
  readonly levels: readonly LearnedOf[]
}

/** One move as a past job noted it. @source definition */
export interface LearnedMove {
  readonly job: string
  /** "front left, lower front eccentric" */
  readonly turned: string
  readonly angle: string
  /** Change of the angle, by the points and by the readings, with the spread of the latter. */
  readonly foreseen: string
  readonly seen: string
  readonly when: string | null
}

/** What jobs teach, for terminal, page and paper. @source definition */
export interface LearnedSheet {
  /** Jobs that taught something. */
  readonly jobs: number
  readonly models: readonly LearnedModel[]
  /** How the spread of the points' answers divides, most likely: "common to a layout 20 %, …"; null before any job. */
  readonly split: string | null
  /** Jobs that were noted so that they are hardly believed. */
  readonly doubted: readonly string[]
  readonly moves: readonly LearnedMove[]
  readonly success: FirstMoveSuccess
  /** Jobs that teach nothing, and why that may be. */
  readonly silent: readonly string[]
}
