import type { AxleEnd, Side } from '../linkage/index.ts'
import { combine, type Measured } from '../measure/index.ts'
import type { FloorTilt } from './floor-tilt.ts'
import type { Correction } from './gauge-reading.ts'

/**
 * Which angle is corrected, and where.
 *
 * @source definition
 */
export interface FloorTarget {
  readonly angle: 'camber' | 'caster' | 'sai'
  readonly axle: AxleEnd
  readonly side: Side
}

/**
 * Takes the floor out of an angle read against the vertical. Left pad high tips the vehicle to the right: the left
 * wheel reads too little camber and too much SAI, the right wheel the opposite. Front pads high lean every
 * steering axis back: caster reads too much, one to one.
 *
 *     camber = read ± roll     SAI = read ∓ roll     caster = read − pitch     (upper sign: left wheel)
 *
 * @assumes small tilts; the body follows the two pads of the axle
 * @source own derivation: docs/methods/floor.md
 * @example floorCorrection(exact(0.01), { angle: 'camber', axle: 'front', side: 'left' }, floorTilt({ instruments: [] })).measured.value // 0.01
 */
export function floorCorrection(
  read: Measured,
  { angle, axle, side }: FloorTarget,
  tilt: FloorTilt,
): { measured: Measured; correction: Correction } {
  const outward = side === 'left' ? 1 : -1
  const [of, times] =
    angle === 'caster' ? [tilt.pitch, -1] : [tilt.roll(axle), angle === 'camber' ? outward : -outward]
  return {
    measured: combine([
      { of: read, times: 1 },
      { of, times },
    ]),
    correction: { name: angle === 'caster' ? 'floor pitch' : 'floor roll', by: times * of.value },
  }
}
