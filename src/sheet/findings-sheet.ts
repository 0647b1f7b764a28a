import type { AxleEnd, Side } from '../linkage/index.ts'
import type { SheetCorner, SheetFigure } from './sheet.ts'

/** A check by hand or a further reading: what, where, how the vehicle is held for it, how long. @source definition */
export interface FindingsCheck {
  readonly id: string
  /** "Rock at 12 and 6" */
  readonly what: string
  /** "front right wheel" */
  readonly where: string
  /** How the vehicle stands for it, and who may be where. */
  readonly hold: string
  readonly minutes: number
  /** What it would tell apart, in words; empty when that is everything. */
  readonly tells: string
  /** What can be found, and what the log gets with it, but for `found` and `hand`; null for a gauge’s reading. */
  readonly notes: {
    readonly finds: readonly string[]
    readonly data: Readonly<Record<string, string>>
  } | null
}

/** One thing that may be wrong, as people say it. @source definition */
export interface FindingsSuspect {
  readonly id: string
  /** "right front lower arm bent, its outer end 6 mm ± 2 mm in" */
  readonly words: string
  /** Share of belief that it takes part, 0 … 1. */
  readonly belief: number
  /** "about 65 %" */
  readonly beliefText: string
  /** Each a sentence, strongest first. */
  readonly speaksFor: readonly string[]
  readonly speaksAgainst: readonly string[]
  /** How a hand would prove it; empty where it is proven by reading again. */
  readonly proof: string
  /** The wheel with the part displaced, drawn `times` as far as it is; null where no point of a corner moves. */
  readonly ghost: {
    readonly axle: AxleEnd
    readonly side: Side
    readonly figure: SheetFigure
    readonly times: number
  } | null
}

/** What these readings cannot tell apart, as one finding. @source definition */
export interface FindingsGroup {
  readonly sentence: string
  readonly belief: number
  readonly beliefText: string
  /** Likeliest first. */
  readonly suspects: readonly FindingsSuspect[]
  /** What would look nearly the same at the same wheel and is held less likely for its size or rareness alone. */
  readonly alike: readonly string[]
  /** The check that tells them apart best; null for one alone, and where none does. */
  readonly separate: FindingsCheck | null
}

/** A part, and whether to order it. @source definition */
export interface FindingsOrder {
  readonly part: string
  readonly advice: 'order now' | 'check first'
  readonly sentence: string
}

/** Play of one joint: the two answers. @source definition */
export interface FindingsWear {
  readonly joint: string
  readonly play: string
  /** Whether it passes, by whose rule, with jurisdiction, clause and source. */
  readonly passes: string
  /** Whether the wheel can hold an alignment. */
  readonly holds: string
}

/** Which part explains what was read, as one plain value. @source definition */
export interface FindingsSheet {
  readonly title: {
    readonly vehicle: string
    readonly job: string
    readonly workshop: string
    readonly source: string
  }
  /** The round whose readings these are; null when nothing was read. */
  readonly round: number | null
  readonly rounds: readonly { readonly number: number; readonly words: string }[]
  readonly cannotTell: boolean
  readonly answer: string
  readonly groups: readonly FindingsGroup[]
  /** What is left of belief, and how many share it. */
  readonly others: string
  /** Two at once, likeliest first. */
  readonly pairs: readonly string[]
  readonly checks: readonly FindingsCheck[]
  readonly orders: readonly FindingsOrder[]
  readonly wear: readonly FindingsWear[]
  /** Readings that nothing explains. */
  readonly unexplained: readonly string[]
  /** What would have told more and was not read. */
  readonly unread: readonly string[]
  /** The corners as they stood when the round was read, for the ghosts to be drawn over. */
  readonly corners: readonly SheetCorner[]
  readonly cautions: readonly string[]
  readonly troubles: readonly string[]
}
