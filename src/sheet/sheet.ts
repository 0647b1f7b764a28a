import type { Adjuster } from '../adjust/index.ts'
import type { Point, ReadingName, Side } from '../linkage/index.ts'
import type { RoundAsk } from './first-round.ts'

/** How a reading stands against its limits (JCGM 106, threshold in `Sheet.threshold`). @source definition */
export type Verdict = 'inside' | 'inside, not proven' | 'outside, not proven' | 'outside' | 'no limit'

/** One thing the person typed, and may type again. @source definition */
export interface SheetInput {
  /** Which log entry, and which field in it. */
  readonly entry: number
  readonly path: string
  readonly label: string
  /** As typed: "-0.9°". */
  readonly text: string
}

/** A number made for people: SI value, 95 % interval, and the text with the digits that it deserves. @source definition */
export interface SheetNumber {
  readonly value: number
  readonly low: number
  readonly high: number
  /** "−0.92°" */
  readonly text: string
  /** "± 0.12°" */
  readonly spread: string
}

/** Where a number comes from: shown behind "why this?". @source definition */
export interface SheetWhy {
  readonly formula: string
  /** Largest first; shares of the variance sum to 1. */
  readonly shares: readonly { readonly source: string; readonly share: number; readonly text: string }[]
  /** Corrections made: "floor −0.11°". */
  readonly corrections: readonly string[]
  readonly source: string
}

/** One reading against its limits. @source definition */
export interface SheetReading extends SheetNumber {
  readonly name: ReadingName
  /** "Camber" */
  readonly label: string
  /** "left", "right", "total", "left minus right" */
  readonly of: string
  readonly unit: 'angle' | 'length'
  readonly limit: {
    readonly low: number
    readonly high: number
    readonly preferred: number | null
    readonly lowText: string
    readonly highText: string
    readonly source: string
  } | null
  /** Probability to be inside the limit; null without one. */
  readonly probability: number | null
  readonly verdict: Verdict
  /** False: even in the very middle of its limits it would not be proven; this method is too rough for them. */
  readonly provable: boolean | null
  /** Where the moves would bring it; null when no move is advised or it does not change. */
  readonly predicted: SheetNumber | null
  /** What it would be at the sheet's ride height, when it was read at another. */
  readonly atSheetHeight: SheetNumber | null
  readonly inputs: readonly SheetInput[]
  readonly why: SheetWhy
}

/** One thing the hand does. @source definition */
export interface SheetMove {
  readonly order: number
  readonly adjuster: string
  /** "rear eccentric" */
  readonly name: string
  /** "right front"; "front axle" for what acts on both wheels, whose side is then the left one */
  readonly wheel: string
  readonly side: Side
  readonly kind: Adjuster['kind']
  /** "34° clockwise", "5/12 turn longer" */
  readonly amount: string
  /** "from 10 to 11 o'clock", "turn the rod towards you at the top" */
  readonly how: string
  /** "seen from the front" */
  readonly seenFrom: string
  /** Setting before and after in SI (rad, m, turn). */
  readonly from: number
  readonly to: number
  /** For an eccentric: clock angle of its mark as the person sees it, rad clockwise from 12 o'clock. */
  readonly dial: { readonly from: number; readonly to: number } | null
  /** Which way the hand turns it, seen from `seenFrom`; null when nothing is turned. */
  readonly looks: 'clockwise' | 'anticlockwise' | null
  /** "within 10° of its end" and the like; empty when there is none. */
  readonly warning: string
}

/** The moves as a whole. @source definition */
export interface SheetMoves {
  /** Adjusters were turned after these readings: what stands here is made already. */
  readonly made: boolean
  readonly moves: readonly SheetMove[]
  /** Probability that every reading with a limit is inside, all at once, now (null where nothing could be judged) and after the moves. */
  readonly insideNow: number | null
  readonly insideAfter: number
  /** "92 %" with no more digits than it deserves. */
  readonly insideAfterText: string
  /** Out of reach: by how much, of what, and what would explain it. */
  readonly outOfReach: readonly {
    readonly reading: ReadingName
    readonly by: number
    readonly sentence: string
  }[]
  /**
   * Where the steering wheel stands when the vehicle runs straight, told at the road wheels (times the steering ratio at
   * its rim), left is plus; null where toe of all four wheels was not read.
   */
  readonly steeringWheel: {
    readonly now: SheetNumber
    readonly after: SheetNumber
    readonly sentence: string
  } | null
  /** Plain sentence: what is done, in which order, what comes after. */
  readonly sentence: string
}

/** Camber against caster: what the adjusters of one wheel can reach. SI, rad. @source definition */
export interface SheetReach {
  readonly side: Side
  readonly title: string
  /** Closed outline of the reachable patch, [camber, caster]. */
  readonly outline: readonly (readonly [number, number])[]
  readonly limit: {
    readonly camber: readonly [number, number]
    readonly caster: readonly [number, number]
  } | null
  /** Now, after each move, and at the end. The last may carry a spread ellipse. */
  readonly path: readonly {
    readonly at: readonly [number, number]
    readonly label: string
    readonly ellipse: readonly (readonly [number, number])[] | null
  }[]
}

/** A line drawing of a corner from its points: metres, ISO 8855, as seen on that side. @source definition */
export interface SheetCorner {
  readonly side: Side
  readonly title: string
  readonly ride: SheetFigure
  /** As it stands, when that differs from the ride pose. */
  readonly present: SheetFigure | null
}

/** The strokes of a corner in one pose. @source definition */
export interface SheetFigure {
  readonly strokes: readonly {
    readonly part: string
    readonly kind: 'arm' | 'knuckle' | 'rod' | 'strut'
    readonly from: Point
    readonly to: Point
  }[]
  readonly joints: readonly {
    readonly letter: string
    readonly name: string
    readonly at: Point
    readonly adjuster: string | null
  }[]
  readonly wheel: {
    readonly centre: Point
    readonly spinAxis: Point
    readonly radius: number
    readonly width: number
  }
  readonly ground: number
}

/** The pose in which bush bolts are final. @source definition */
export interface SheetClamp {
  readonly side: Side
  readonly title: string
  /** Which height is aimed at, and why that one; null: no height can be aimed at. */
  readonly target: SheetNumber | null
  readonly targetWhy: string
  /** How far to raise the hub from where it hangs. */
  readonly raise: SheetNumber | null
  /** How far the arm turns against the body from hanging. */
  readonly armTurn: SheetNumber | null
  readonly bushes: readonly {
    readonly name: string
    readonly letter: string
    /** Twist left if tightened hanging, rad. */
    readonly twistHanging: SheetNumber
    /** N·m, null when no stiffness is known. */
    readonly torque: SheetNumber | null
    /** Change of ride height it would cause, m. */
    readonly height: SheetNumber | null
    /** "stays run up until the last move", "final at ride height" */
    readonly rule: string
  }[]
  readonly cautions: readonly string[]
}

/** Play that was found at a joint, against its limit. @source definition */
export interface SheetWear {
  /** "front right" */
  readonly wheel: string
  /** Its name in the corner model. */
  readonly joint: string
  readonly name: string
  readonly letter: string | null
  /** "up and down"; null where nobody said. */
  readonly direction: string | null
  /** Full swing of the dial, m. */
  readonly play: SheetNumber
  /** The first with a number is the one it is judged by; its own measure where that is another than the dial's. */
  readonly limits: readonly {
    readonly what: string
    /** "1.50 mm", or the rule in words. */
    readonly text: string
    readonly typed: string
    readonly whose: 'the workshop' | 'the maker' | 'the inspection' | 'not said'
    readonly jurisdiction: string | null
    readonly source: string
  }[]
  /** Probability to be within its limit; null without one. */
  readonly probability: number | null
  readonly verdict: Verdict
  readonly provable: boolean | null
  /** What happened to the joint since. */
  readonly since: 'renewed' | 'read again' | null
  readonly sentence: string
  readonly inputs: readonly SheetInput[]
}

/** The seven stages. @source definition */
export type Stage = 'Arrival' | 'Findings' | 'Plan' | 'Strip' | 'Refit' | 'Angles' | 'Handover'

/** The whole job as one plain value: what the terminal, the page and the paper show. @source definition */
export interface Sheet {
  readonly title: {
    readonly vehicle: string
    readonly job: string
    readonly workshop: string
    /** "Readings, second round" */
    readonly round: string
    /** "strings and inclinometer, bay 2" */
    readonly method: string
    /** "Invented for the demo" or the sources of spec and corner. */
    readonly source: string
  }
  /** What the kit can read in the first round; null once something was read. */
  readonly first: readonly RoundAsk[] | null
  readonly stages: readonly { readonly stage: Stage; readonly state: 'done' | 'now' | 'open' }[]
  readonly threshold: number
  readonly heights: readonly {
    readonly wheel: string
    readonly number: SheetNumber
    readonly verdict: Verdict
    readonly limitText: string
    readonly inputs: readonly SheetInput[]
  }[]
  readonly readings: readonly SheetReading[]
  /** Play that was found, in the order found. */
  readonly wear: readonly SheetWear[]
  /** Which error decides, and which single improvement helps most. */
  readonly advice: readonly string[]
  readonly moves: SheetMoves
  readonly reach: readonly SheetReach[]
  readonly corners: readonly SheetCorner[]
  readonly clamp: readonly SheetClamp[]
  /** What must be said on this sheet. */
  readonly cautions: readonly string[]
  /** What is wrong or missing, in plain sentences with what to do. */
  readonly troubles: readonly string[]
  /** Readings that have a limit and were not read in this round, in words. */
  readonly unread: readonly string[]
  readonly next: {
    readonly sentence: string
    readonly button: string
    /** What the button does: read (again), note the moves as turned, make the bolts final and prove, hand over. */
    readonly act: 'read' | 'turned' | 'prove' | 'handover'
  }
}
