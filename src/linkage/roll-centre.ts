import { type Metre, metre } from '../quantity/index.ts'
import { type CentreMethod, type InstantCentre, instantCentre } from './instant-centre.ts'
import type { Mechanism } from './mechanism.ts'
import type { Drive } from './points.ts'

/** Height of the roll centre above the contact point, and the instant centre it was drawn from. @source definition */
export interface RollCentre {
  readonly how: CentreMethod
  readonly height: Metre
  readonly instantCentre: InstantCentre
}

/**
 * Where the line from contact point to instant centre crosses the vehicle's centre plane, above the contact point.
 *
 *     height = −contact y · slope
 *
 * @assumes both sides alike and at the same travel
 * @throws {Refusal} `not-for-this-layout`; `singular`; `unreachable`, as `instantCentre`
 * @source own derivation: docs/methods/roll-centre.md
 * @example inMillimetres(rollCentre(m, ride, 'drawing board').height) // 115.077
 */
export function rollCentre(m: Mechanism, drive: Drive, how: CentreMethod): RollCentre {
  const centre = instantCentre(m, drive, how)
  return { how, height: metre(0 - centre.pose.contact[1] * centre.slope), instantCentre: centre }
}
