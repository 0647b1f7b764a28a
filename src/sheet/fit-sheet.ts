import type { WheelName } from '../job/index.ts'
import type { SheetNumber } from './sheet.ts'

/** One thing measured, against the fitted corner. @source definition */
export interface FitRow {
  readonly says: string
  /** The entry that says it; null for a reading of the round. */
  readonly entry: number | null
  readonly read: SheetNumber
  /** What the fitted corner gives there. */
  readonly fitted: string
  /** False when it was left out because it cannot be right. */
  readonly used: boolean
}

/** A point as fitted. @source definition */
export interface FitPoint {
  readonly name: string
  /** Forward, outward, up. */
  readonly at: readonly [string, string, string]
  /** 95 % half-widths of the same three, and what they were before. */
  readonly spread: readonly [string, string, string]
  readonly before: readonly [string, string, string]
}

/** What turning an adjuster does on this vehicle. @source definition */
export interface FitMove {
  readonly adjuster: string
  readonly angle: 'camber' | 'caster' | 'toe'
  /** How far it is turned: "1 turn", "15°". */
  readonly by: string
  readonly change: SheetNumber
  /** What would make it surer, best first: what, minutes, half-width after it. */
  readonly next: readonly { readonly says: string; readonly minutes: number; readonly after: string }[]
}

/** The corner model of one wheel, fitted to what was measured there. @source definition */
export interface FittedWheel {
  readonly wheel: WheelName
  readonly corner: string
  readonly measured: readonly FitRow[]
  readonly points: readonly FitPoint[]
  /** What is hardly better known than before, a sentence each. */
  readonly open: readonly string[]
  /** The reading that cannot be right; null when all agree. */
  readonly grossError: string | null
  readonly moves: readonly FitMove[]
}

/** What was learned of the geometry of one vehicle. @source definition */
export interface FitSheet {
  readonly wheels: readonly FittedWheel[]
  readonly troubles: readonly string[]
}
