import type { WheelName } from '../job/index.ts'

/** Something that stands in the log: where, since when, by whom, and each of its texts as it was typed. @source definition */
export interface ArrivalNoted {
  /** Place of the entry in the log: texts are typed over there. */
  readonly entry: number
  /** How a later entry names it: by its id once it is sealed. */
  readonly of: number | string
  /** "noted 07:12 by KB" */
  readonly words: string
  /** By their paths in the entry: "depths.outer" → "5 mm". */
  readonly texts: Readonly<Record<string, string>>
}

/** One wheel of the arrival. @source definition */
export interface ArrivalWheel {
  readonly wheel: WheelName
  readonly tyre: (ArrivalNoted & { readonly wear: readonly string[] }) | null
  readonly height: (ArrivalNoted & { readonly when: 'before lifting' | 'settled' }) | null
}

/** A block of the arrival, in the order in which a person comes to it. @source definition */
export type ArrivalPlace = 'told' | 'cautions' | 'tyres' | 'pressures' | 'heights'

/** What is told and looked at before anything is undone. @source definition */
export interface ArrivalSheet {
  readonly vehicle: string
  readonly job: string
  readonly complaint: string
  readonly arrival: ArrivalNoted | null
  /** A hint about the VIN, never a fault; null where nothing is odd. */
  readonly vinHint: string | null
  /** Front left, front right, rear right, rear left: once round the vehicle. */
  readonly wheels: readonly ArrivalWheel[]
  readonly pressures: ArrivalNoted | null
  /** The rule by which heights are read: its id in the kit, and its name. */
  readonly rule: { readonly id: string; readonly name: string }
  /** The state in which a height would be measured now. */
  readonly heightWhen: 'before lifting' | 'settled'
  /** Cautions of this vehicle: said already, or offered with the reason. */
  readonly cautions: readonly { readonly words: string; readonly why: string; readonly said: boolean }[]
  /** What must be said where heights are read. */
  readonly standing: readonly string[]
  /** What is missing and why it matters, in the order in which it is done. */
  readonly missing: readonly {
    readonly what: string
    readonly why: string
    readonly place: ArrivalPlace
  }[]
  readonly next: {
    readonly sentence: string
    readonly button: string
    /** Where the button leads; null: on to the findings. */
    readonly place: ArrivalPlace | null
  }
  readonly troubles: readonly string[]
}

/** When and where the sheet is read, for its clock times. @source definition */
export interface ArrivalOptions {
  /** Of whoever reads: entries without an offset of their own are told by it. "+01:00" */
  readonly offset?: string
  /** "2026-03-10": times of that day stand without their day. */
  readonly today?: string
}
