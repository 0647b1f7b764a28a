import type { Suspect } from './suspect.ts'
import type { KindPrior } from './suspect-priors.ts'
import type { VehicleWay } from './vehicle-way.ts'

/** A way that a fault may take beside its main one. */
export interface SideWay {
  readonly way: VehicleWay
  /** m or rad, whichever the way counts in. */
  readonly spread: number
  readonly mean?: number
}

/** What one suspect does: a main way, whose size has the prior of its kind, and what varies about it. */
export interface Family {
  readonly suspect: Suspect
  /** Of the kind's weight, in parts. */
  readonly share: number
  /** Where its sizes differ from those of its kind. */
  readonly size?: Partial<KindPrior>
  /** Per m or rad of size. */
  readonly main: VehicleWay
  readonly also: readonly SideWay[]
  /** A fault of reading, or one that came after the adjusters were set, in every story. */
  readonly late?: boolean
  /** An adjuster that stood elsewhere when the angles were set: its number among the vehicle's knobs. */
  readonly knob?: number
}
