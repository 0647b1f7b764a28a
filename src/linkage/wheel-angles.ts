/** Which end of the vehicle. @source definition */
export type AxleEnd = 'front' | 'rear'
/** Which side, as the driver sits. @source definition */
export type Side = 'left' | 'right'
/** Angles that belong to one wheel. @source definition */
export type WheelAngle = 'camber' | 'caster' | 'sai' | 'toe'

/** A reading of one wheel: "front left camber". Toe is to the vehicle's centre line. @source definition */
export type WheelReading = `${AxleEnd} ${Side} ${WheelAngle}`
/** A reading that two or four wheels make together. Toe "to thrust" is against the rear axle's thrust line. @source common practice, no source; definition of axes: ISO 8855 */
export type AxleReading =
  | `${AxleEnd} total toe`
  | `${AxleEnd} cross camber`
  | 'front cross caster'
  | 'front cross sai'
  | 'thrust'
  | `front ${Side} toe to thrust`
/** Any reading by its name, in files and in the code. @source definition */
export type ReadingName = WheelReading | AxleReading

/**
 * Each axle reading as a sum of wheel readings. Cross is left minus right. Thrust is positive when the
 * thrust line points to the right of the centre line.
 *
 * @source common practice, no source; thrust sign: docs/methods/signs.md
 */
export const axleReadings: Readonly<Record<AxleReading, readonly (readonly [WheelReading, number])[]>> = {
  'front total toe': [
    ['front left toe', 1],
    ['front right toe', 1],
  ],
  'rear total toe': [
    ['rear left toe', 1],
    ['rear right toe', 1],
  ],
  'front cross camber': [
    ['front left camber', 1],
    ['front right camber', -1],
  ],
  'rear cross camber': [
    ['rear left camber', 1],
    ['rear right camber', -1],
  ],
  'front cross caster': [
    ['front left caster', 1],
    ['front right caster', -1],
  ],
  'front cross sai': [
    ['front left sai', 1],
    ['front right sai', -1],
  ],
  thrust: [
    ['rear left toe', 0.5],
    ['rear right toe', -0.5],
  ],
  'front left toe to thrust': [
    ['front left toe', 1],
    ['rear left toe', -0.5],
    ['rear right toe', 0.5],
  ],
  'front right toe to thrust': [
    ['front right toe', 1],
    ['rear left toe', 0.5],
    ['rear right toe', -0.5],
  ],
}
