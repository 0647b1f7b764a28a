import { type Radian, rad } from '../quantity/index.ts'
import { checkFinite } from './check-points.ts'
import type { HeldStraight } from './steering-wheel-off.ts'
import type { Side } from './wheel-angles.ts'

/**
 * How far each front wheel's toe has to change so that the steering wheel stands straight when the vehicle runs
 * straight: both get half of the total toe to the thrust line. With the total kept, one side gives what the other
 * takes: equal and opposite.
 *
 *     left = total/2 + thrust − left toe,   right = total/2 − thrust − right toe
 *
 * @param total toe of both wheels that is wanted; what it is now when left out
 * @returns rad per side, toe-in positive
 * @throws {Refusal} `not-finite`
 * @source own derivation: docs/methods/steering.md
 * @example inDegrees(centringChange({ toes: { left: deg(0.3), right: deg(-0.1) }, thrust: deg(0) }).left) // -0.2
 */
export function centringChange(
  { toes, thrust }: HeldStraight,
  total: Radian = rad(toes.left + toes.right),
): Readonly<Record<Side, Radian>> {
  checkFinite({ toes, thrust, total }, '')
  return {
    left: rad(total / 2 + thrust - toes.left),
    right: rad(total / 2 - thrust - toes.right),
  }
}
