import { Refusal, rad } from '../quantity/index.ts'
import type { LinkageRefusal } from './linkage-refusal.ts'
import type { SteeredDrive } from './steered-poses.ts'
import type { SteeredAxle } from './steering-points.ts'
import { meanHeading } from './straight-ahead.ts'

/** Half of the steering wheel's turn that the ratio is taken over, rad. */
const h = 0.02

/**
 * How far the steering wheel turns per turn of the road wheels (mean of both) at a drive, by a fourth-order central
 * difference.
 *
 * @returns a plain number, above 0 where the wheels follow the steering wheel's sense
 * @throws {Refusal} as `steeredPoses`; `singular` when the steering does not turn the wheels
 * @source own derivation: docs/methods/steering.md
 * @example steeringRatio(axle, { wheel: deg(0), travel: level }) // 15.35416
 */
export function steeringRatio(axle: SteeredAxle, { wheel, travel }: SteeredDrive): number {
  const at = (by: number): number => meanHeading(axle, { wheel: rad(wheel + by), travel })
  const slope = (8 * (at(h) - at(-h)) - (at(2 * h) - at(-2 * h))) / (12 * h)
  if (Math.abs(slope) > 1e-9) return 1 / slope
  throw new Refusal<LinkageRefusal>({
    code: 'singular',
    at: 'steering',
    sentence: 'The steering does not turn the road wheels here.',
    remedy: 'Look at the tie rods, and at how far the rack or the drop arm moves.',
  })
}
