import type { ReadingName } from '../linkage/index.ts'
import type { SheetNumber, SheetReading, Verdict } from './sheet.ts'

/** A round whose readings stand on the proof: which, and when. @source definition */
export interface ProofRound {
  readonly number: number
  readonly purpose: 'as found' | 'provisional' | 'proving'
  /** "2026-03-10"; null where no clock was on it. */
  readonly day: string | null
  /** Adjusters were turned after its readings. */
  readonly movedSince: boolean
  /** A part was renewed after its readings. */
  readonly renewedSince: boolean
}

/** A number with how it stood against its limits. @source definition */
export interface ProofMark extends SheetNumber {
  readonly verdict: Verdict
  /** Probability to be inside the limit; null without one. */
  readonly probability: number | null
}

/** Two marks on one dimension line. @source definition */
export interface ProofPair {
  /** "Camber, left front" */
  readonly label: string
  readonly limit: SheetReading['limit']
  readonly before: ProofMark | null
  readonly after: ProofMark | null
  /** Both ends of the one scale on which limits and both marks are drawn, SI. */
  readonly scale: readonly [low: number, high: number]
}

/** One joint of the bolt book as the proof tells it. @source definition */
export interface ProofBolt {
  readonly wheel: string
  readonly letter: string | null
  readonly name: string
  /** "open", "run up", "final", "checked" */
  readonly state: string
  readonly done: boolean
  readonly required: string
  /** What it was made final with: "190 N·m ± 8 N·m", "then 90°", "end float 0.06 mm"; empty while it is not final. */
  readonly value: string
  /** "long clicking wrench, calibrated until 2026-05-18" */
  readonly wrench: string
  /** "at ride height, dry, new fastener" */
  readonly how: string
  /** "T, 2026-03-10" */
  readonly hand: string
  /** "K, pulled again: passed" */
  readonly secondLook: string
  readonly pin: string
  /** Why it is open, in sentences. */
  readonly open: readonly string[]
  /** What is due later and holds nothing back. */
  readonly due: readonly string[]
}

/** A line of the proof in words. @source definition */
export interface ProofLine {
  /** "Left rear eccentric, front right" */
  readonly what: string
  readonly words: string
  /** Open: something is still to be done or was not put right. */
  readonly open: boolean
}

/** A hand on the job: the sign it used, and what it did. @source definition */
export interface ProofHand {
  readonly hand: string
  readonly did: string
}

/** The job as it is handed over: what was found, what was done, what it is like now, and what is open. @source definition */
export interface ProofSheet {
  readonly title: {
    readonly vehicle: string
    readonly job: string
    readonly workshop: string
    readonly complaint: string
    /** What the owner asked for and agreed to. */
    readonly asked: string | null
    readonly mileage: string | null
    /** As read; "erased" where personal data was taken off this copy. */
    readonly vin: string | null
    /** "2026-03-10 to 2026-03-11" */
    readonly days: string | null
    readonly invented: boolean
  }
  readonly finished: boolean
  /** "Finished: …" or "Not finished: 12 joints are open; …" */
  readonly sentence: string
  /** All that is open, each in a sentence; empty only when `finished`. */
  readonly open: readonly string[]
  /** Why it may not go on the road, where somebody said so and nobody cleared it. */
  readonly notRoadReady: readonly string[]
  readonly threshold: number
  readonly before: ProofRound | null
  readonly after: ProofRound | null
  readonly angles: readonly (ProofPair & { readonly name: ReadingName })[]
  readonly heights: readonly ProofPair[]
  /** Play that was found, in the order found, with what happened to the joint since. */
  readonly wear: readonly ProofLine[]
  /** Joints that were worked on, or that hold something; those never opened are only counted. */
  readonly bolts: readonly ProofBolt[]
  readonly untouched: number
  readonly marks: readonly ProofLine[]
  readonly parts: readonly ProofLine[]
  readonly declined: readonly ProofLine[]
  readonly electronics: readonly ProofLine[]
  readonly deviations: readonly ProofLine[]
  readonly followUps: readonly ProofLine[]
  readonly decisions: readonly ProofLine[]
  readonly roadTests: readonly ProofLine[]
  readonly hands: readonly ProofHand[]
  /** "Signed off by KB, 2026-03-11 16:40 +01:00" */
  readonly signOffs: readonly string[]
  readonly sources: readonly string[]
  readonly cautions: readonly string[]
  /** What the log says against itself, or what could not be worked out. */
  readonly troubles: readonly string[]
}
