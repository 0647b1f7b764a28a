import type { Metre, NewtonMetre, Radian } from '../quantity/index.ts'
import type { Slots } from './castle-slot.ts'

/** A torque as the workshop typed it from its own information. @source definition */
export interface StatedTorque {
  readonly torque: NewtonMetre
  /** Where a low and a high figure are stated. */
  readonly floor?: NewtonMetre | undefined
  readonly ceiling?: NewtonMetre | undefined
}

/** A turn after a torque. @source definition */
export interface StatedTurn {
  readonly angle: Radian
  /** Half-width of what counts as made. */
  readonly within: Radian
}

/** One stage: a torque, or a turn after one. @source definition */
export type Stage = ({ readonly by: 'torque' } & StatedTorque) | ({ readonly by: 'turn' } & StatedTurn)

/** One torque, one pull. @source definition */
export interface TorqueProcedure {
  readonly kind: 'torque'
  readonly stated: StatedTorque
}
/** A torque, then a turn by angle: checked by mark and record, not pulled again. @source definition */
export interface TorqueThenAngle {
  readonly kind: 'torque then angle'
  readonly stated: StatedTorque
  readonly turn: StatedTurn
}
/** Several stages in order, the last one final. @source definition */
export interface Staged {
  readonly kind: 'stages'
  readonly stages: readonly Stage[]
}
/** To the low figure, then only forward to a slot, never past the high one; then a new pin. @source FAA AC 43.13-1B, par. 7-40 f */
export interface CastleSlot extends Slots {
  readonly kind: 'castle slot'
  readonly floor: NewtonMetre
  readonly ceiling: NewtonMetre
}
/** By hand until it sits; no torque is stated. @source definition */
export interface HandSnug {
  readonly kind: 'hand snug'
}
/** The opposite rule of a castle nut on a taper: seat while the hub turns, then back off for end float. @source common practice, no source */
export interface SeatAndBackOff {
  readonly kind: 'seat and back off'
  readonly seat: NewtonMetre
  /** Backed off by at least and at most. */
  readonly back: { readonly least: Radian; readonly most: Radian }
  /** Brought up again to this after backing off; null where it is not stated. */
  readonly bringUpTo: NewtonMetre | null
  /** Read on a dial before the pin; null where it is not stated. */
  readonly endFloat: { readonly low: Metre; readonly high: Metre } | null
}
