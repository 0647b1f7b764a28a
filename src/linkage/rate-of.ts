import type { Mechanism } from './mechanism.ts'
import type { Drive } from './points.ts'
import { poseAt } from './pose-at.ts'
import { type Direction, ratesAt, type WheelRates } from './rates-at.ts'

/**
 * How fast the wheel's angles change when the corner is displaced along `direction`, height held.
 *
 * @param direction a displacement per unit of whatever it is counted in: per metre, per radian of an eccentric
 * @returns rad per that unit
 * @throws {Refusal} as `poseAt`; `singular` where the wheel is not held
 * @source own derivation: docs/methods/pose-of-a-corner.md
 * @example rateOf(m, ride, { length: { tie: 1 } }).toe // 6.95043 rad/m
 */
export const rateOf = (m: Mechanism, drive: Drive, direction: Direction): WheelRates =>
  ratesAt(m, poseAt(m, drive))(direction)
