import { type Radian, Refusal, rad } from '../quantity/index.ts'
import { checkFinite } from './check-points.ts'
import type { LinkageRefusal } from './linkage-refusal.ts'
import type { Side } from './wheel-angles.ts'

/** Front toes read with the steering wheel held straight, and the rear axle's thrust angle (to the right positive). @source definition */
export interface HeldStraight {
  readonly toes: Readonly<Record<Side, Radian>>
  readonly thrust: Radian
}

/**
 * Where the steering wheel will stand when the vehicle runs straight: both front wheels then share their toe equally
 * about the thrust line.
 *
 *     off = ratio · ((left toe − right toe) / 2 − thrust)
 *
 * @param ratio turn of the steering wheel per turn of the road wheels, > 0
 * @returns rad, to the left positive; 0 is centred
 * @throws {Refusal} `not-finite`; `bad-input` when the ratio is not above 0
 * @assumes small angles and one ratio near the middle; `straightAhead` does it with the linkage
 * @source own derivation: docs/methods/steering.md
 * @example inDegrees(steeringWheelOff({ toes: { left: deg(0), right: deg(0) }, thrust: deg(0.25) }, 16)) // -4
 */
export function steeringWheelOff({ toes, thrust }: HeldStraight, ratio: number): Radian {
  checkFinite({ toes, thrust, ratio }, '')
  if (!(ratio > 0))
    throw new Refusal<LinkageRefusal>({
      code: 'bad-input',
      at: 'ratio',
      given: String(ratio),
      sentence: `The steering ratio is ${ratio}; it must be above 0.`,
      remedy: 'Give how many degrees the steering wheel turns per degree of the road wheels.',
    })
  return rad(ratio * ((toes.left - toes.right) / 2 - thrust))
}
