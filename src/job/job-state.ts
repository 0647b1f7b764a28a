import type { Observation, PlayObservation, RideHeightObservation } from '../gauge/index.ts'
import type { AxleEnd, Side } from '../linkage/index.ts'
import type { EntryData } from './entries-schema.ts'
import type { Gathered } from './gathered.ts'
import type { TypedSetting } from './setting-schema.ts'
import type { Told } from './told.ts'
import type { WheelName } from './wheel-name.ts'

/** A ride height of one wheel. @source definition */
export type HeightFact = Told & {
  readonly wheel: WheelName
  readonly when: EntryData<'ride height'>['when']
  readonly observation: RideHeightObservation
}
/** Play of one joint. @source definition */
export type PlayFact = Told & {
  readonly joint: string
  readonly wheel: WheelName
  readonly direction: string | null
  readonly observation: PlayObservation
}
/** One observation with a gauge, SI. @source definition */
export type ReadingFact = Told & { readonly observation: Observation }
/** A mark that was found before it was undone. @source definition */
export type AsFoundFact = Told & EntryData<'as found'>
/** An adjuster that was turned. @source definition */
export type MoveFact = Told & EntryData<'moved'>
/** A part that was renewed. @source definition */
export type RenewedFact = Told & EntryData<'part renewed'>

/** A round of readings: what was read between two settings. @source definition */
export interface Round {
  readonly number: number
  readonly purpose: EntryData<'round'>['purpose']
  readonly settled: boolean
  /** The entry that opened it; null for readings that stand before any round. */
  readonly entry: number | null
  readonly readings: readonly ReadingFact[]
  /** Moves made after its readings, before the next round. */
  readonly moves: readonly MoveFact[]
  /** Settings as they stood when its readings were taken. */
  readonly settings: readonly Setting[]
}

/** Where one adjuster stands. @source definition */
export interface Setting {
  readonly adjuster: string
  readonly wheel: WheelName
  readonly axle: AxleEnd
  readonly side: Side
  /** As it was found: a setting, a clock position, or nothing recorded. Null as well when two values differ. */
  readonly asFound:
    | TypedSetting
    | { readonly text: string; readonly value: number; readonly unit: 'clock' }
    | null
  /** All moves since, summed, in `unit`; a move to a known setting starts anew from there. */
  readonly movedBy: number
  /** A move "to" a setting makes that the start, whatever was found. */
  readonly movedTo: number | null
  /** The same as a clock position of its mark, rad; what it is as a setting the corner model says. */
  readonly movedToClock?: number | null
  readonly unit: 'rad' | 'm' | 'turn' | null
  /** Found fitted the wrong way round. */
  readonly fitted: 'as drawn' | 'turned round' | null
}

/** Something in the log that a person must look at. @source definition */
export interface Trouble {
  readonly entries: readonly number[]
  /** The entries between which a decision can choose, where that settles it. */
  readonly choice?: readonly number[]
  readonly sentence: string
  readonly remedy: string
}

/** A job as it stands: all that the log says, and nothing that it does not. @source definition */
export interface JobState extends Gathered {
  readonly opened: (Told & EntryData<'opened'>) | null
  readonly arrival: (Told & EntryData<'arrival'>) | null
  readonly pressures: (Told & EntryData<'set pressures'>) | null
  /** The bay whose floor the readings stand on; null when none is named. */
  readonly bay: (Told & EntryData<'floor'>) | null
  readonly heights: readonly HeightFact[]
  readonly play: readonly PlayFact[]
  readonly asFound: readonly AsFoundFact[]
  readonly moves: readonly MoveFact[]
  readonly renewed: readonly RenewedFact[]
  readonly rounds: readonly Round[]
  /** Where the adjusters stand after the last entry. */
  readonly settings: readonly Setting[]
  readonly corrections: readonly { readonly entry: number; readonly of: number }[]
  /** Entries that a decision set aside: they stand in the log and say nothing any more. */
  readonly setAside: readonly { readonly entry: number; readonly by: number }[]
  /** Entries of kinds that this version does not know; kept as they are. */
  readonly newer: readonly { readonly entry: number; readonly kind: string }[]
  readonly troubles: readonly Trouble[]
}
