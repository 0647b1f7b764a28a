import type { Side } from '../linkage/index.ts'
import { type Radian, Refusal, rad } from '../quantity/index.ts'
import type { AdjustRefusal, Eccentric } from './adjuster.ts'

/**
 * The setting of an eccentric from where its mark is seen: the inverse of `clockOf`, for as-found marks.
 * A mark on the far half of the face is refused: it would shift the point alike, but from there every turn works
 * the other way round.
 *
 * @param clock rad, clockwise from 12 o'clock as the person sees it
 * @returns rad, between −π/2 and π/2
 * @throws {Refusal} `setting-out-of-range` when the clock angle is not a number or the range does not hold it
 * @source definition
 * @example settingFromClock(upperFront, 'left', deg(30)) // 0.5236 rad
 */
export function settingFromClock(eccentric: Eccentric, side: Side, clock: number): Radian {
  const left = side === 'left' ? clock : -clock
  const turned = (left - eccentric.markAt) * (eccentric.positiveLooks === 'clockwise' ? 1 : -1)
  const setting = Math.atan2(Math.sin(turned), Math.cos(turned))
  const [low, high] = eccentric.range
  // a clock position is read by eye: a degree beyond the end is the end
  const room = Math.PI / 180
  if (!(setting >= low - room && setting <= high + room))
    throw new Refusal<AdjustRefusal>({
      code: 'setting-out-of-range',
      at: eccentric.id,
      given: String(clock),
      sentence: `The mark of "${eccentric.name}" cannot stand there: that is ${((setting * 180) / Math.PI).toFixed(0)}° from the middle of its slot, outside its range.`,
      remedy:
        'Look again from the side that the adjuster names, or correct where its mark stands in the middle.',
    })
  return rad(Math.min(high, Math.max(low, setting)))
}
