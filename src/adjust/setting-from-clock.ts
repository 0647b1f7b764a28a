import type { Side } from '../linkage/index.ts'
import { type Radian, Refusal, rad } from '../quantity/index.ts'
import type { AdjustRefusal } from './adjuster.ts'
import type { Faced } from './faced.ts'

/**
 * The setting of an eccentric or an offset sleeve from where its mark is seen: the inverse of `clockOf`, for as-found
 * marks. A mark outside the range is refused: on the far half of an eccentric's face it would shift the
 * point alike, but from there every turn works the other way round.
 *
 * @param clock rad, clockwise from 12 o'clock as the person sees it
 * @returns rad, inside the range
 * @throws {Refusal} `setting-out-of-range` when the clock angle is not a number or the range does not hold it
 * @source definition
 * @example settingFromClock(upperFront, 'left', deg(30)) // 0.5236 rad
 */
export function settingFromClock(faced: Faced, side: Side, clock: number): Radian {
  const left = side === 'left' ? clock : -clock
  const turned = (left - faced.markAt) * (faced.positiveLooks === 'clockwise' ? 1 : -1)
  const [low, high] = faced.range
  // the turn nearest to the middle of the range: a sleeve's range may lie anywhere on the circle
  const from = (low + high) / 2
  const setting = from + Math.atan2(Math.sin(turned - from), Math.cos(turned - from))
  // a clock position is read by eye: a degree beyond the end is the end
  const room = Math.PI / 180
  if (!(setting >= low - room && setting <= high + room))
    throw new Refusal<AdjustRefusal>({
      code: 'setting-out-of-range',
      at: faced.id,
      given: String(clock),
      sentence: `The mark of "${faced.name}" cannot stand there: that is ${((setting * 180) / Math.PI).toFixed(0)}° from where it stands at setting 0, outside its range.`,
      remedy:
        'Look again from the side that the adjuster names, or correct where its mark stands in the middle.',
    })
  return rad(Math.min(high, Math.max(low, setting)))
}
