import { type Metre, metre, type Radian, Refusal } from '../quantity/index.ts'
import { checkFinite } from './check-points.ts'
import type { LinkageRefusal } from './linkage-refusal.ts'
import type { Side } from './wheel-angles.ts'

/**
 * How much longer each tie rod has to be for a change of toe.
 *
 *     rod = change / rate
 *
 * @param change of toe per side, rad
 * @param rate of toe against the rod's length, rad/m: `rateOf(m, drive, { length: { tie: 1 } }).toe`; below 0 where
 *   the rod lies ahead of the axle
 * @returns m per side, longer is positive; by turns: divided by the pitch
 * @throws {Refusal} `not-finite`; `singular` when a rod does not move its wheel
 * @source own derivation: docs/methods/steering.md
 * @example inMillimetres(rodsForToes({ left: deg(0.2), right: deg(-0.2) }, { left: 7, right: 7 }).right) // -0.498666
 */
export function rodsForToes(
  change: Readonly<Record<Side, Radian>>,
  rate: Readonly<Record<Side, number>>,
): Readonly<Record<Side, Metre>> {
  checkFinite({ change, rate }, '')
  for (const side of ['left', 'right'] as const)
    if (Math.abs(rate[side]) < 1e-9)
      throw new Refusal<LinkageRefusal>({
        code: 'singular',
        at: side,
        given: String(rate[side]),
        sentence: `The ${side} tie rod does not move its wheel here.`,
        remedy: 'Ask at another steering angle, or measure the rod again.',
      })
  return { left: metre(change.left / rate.left), right: metre(change.right / rate.right) }
}
