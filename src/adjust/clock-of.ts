import type { Side } from '../linkage/index.ts'
import { type Radian, rad } from '../quantity/index.ts'
import type { Faced } from './faced.ts'

/**
 * Where the mark of an eccentric or an offset sleeve stands as the person sees it, clockwise from 12 o'clock.
 *
 *     left   mark at 0 ± setting    (+ where a growing setting looks clockwise)
 *     right  the mirror image: minus the left one
 *
 * @param setting rad
 * @returns rad, 0 ≤ angle < 2π
 * @source definition
 * @example clockOf(upperFront, 'right', deg(30)) // 5.7596 rad, 11 o'clock, where the left one shows 1 o'clock
 */
export function clockOf(faced: Faced, side: Side, setting: number): Radian {
  const left = faced.markAt + (faced.positiveLooks === 'clockwise' ? setting : -setting)
  const seen = (side === 'left' ? left : -left) % (2 * Math.PI)
  const positive = seen < 0 ? seen + 2 * Math.PI : seen
  // a hair below 0 rounds up to a whole turn
  return rad(positive < 2 * Math.PI ? positive + 0 : 0)
}
