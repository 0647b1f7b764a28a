import type { Metre, NewtonMetre, Radian, TorqueUnit } from '../quantity/index.ts'
import type { WrenchClass } from './wrench-class.ts'

/** The marks of a wrench: from low to high in steps. @source definition */
export interface WrenchScale {
  readonly low: NewtonMetre
  readonly high: NewtonMetre
  readonly step: NewtonMetre
}

/** A torque wrench as the workshop owns it. @source definition */
export interface TorqueWrench {
  readonly name: string
  readonly kind: WrenchClass
  readonly scale: WrenchScale
  /** Unit its scale is marked in. */
  readonly unit: TorqueUnit
  /** Drive centre to middle of the grip. */
  readonly reach: Metre
  /** How far from the middle of the grip the hand may pull; 0 for a grip on a pivot. */
  readonly handSpread: Metre
  /** Largest deviation by its certificate, as a share; else its class counts. */
  readonly deviation?: number | undefined
  /** Last day of its calibration, "2026-11-25"; null when nobody knows. */
  readonly calibratedUntil: string | null
}

/** An adapter as it is put on: its offset and how it stands. @source definition */
export interface Adapter {
  readonly name: string
  readonly offset: Metre
  /** From the wrench's axis: 0 straight ahead, π/2 square, π back over the handle. */
  readonly angle: Radian
  /** How well the offset is known (half-width). */
  readonly offsetSpread: Metre
  /** How well the angle is held by eye (half-width). */
  readonly angleSpread: Radian
}
