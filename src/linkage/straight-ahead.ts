import { type Radian, Refusal, rad } from '../quantity/index.ts'
import { checkFinite } from './check-points.ts'
import type { LinkageRefusal } from './linkage-refusal.ts'
import { type SteeredDrive, steeredPoses } from './steered-poses.ts'
import type { SteeredAxle } from './steering-points.ts'

/** Mean turn of both road wheels to the left of the centre line, rad. */
export function meanHeading(axle: SteeredAxle, drive: SteeredDrive): number {
  const { left, right } = steeredPoses(axle, drive)
  return (right.toe - left.toe) / 2
}

/**
 * The steering wheel angle at which the vehicle runs straight, with the linkage as it is: both front wheels share
 * their toe equally about the thrust line. Secant from straight ahead.
 *
 * @param thrust to the right positive, rad
 * @returns rad, to the left positive
 * @throws {Refusal} as `steeredPoses`; `singular` when the steering does not turn the wheels
 * @source own derivation: docs/methods/steering.md
 * @example inDegrees(straightAhead(axle, { thrust: deg(0.25), travel: level })) // -3.83854
 */
export function straightAhead(
  axle: SteeredAxle,
  { thrust, travel }: { readonly thrust: Radian; readonly travel: SteeredDrive['travel'] },
): Radian {
  checkFinite({ thrust }, '')
  const miss = (wheel: number): number => meanHeading(axle, { wheel: rad(wheel), travel }) + thrust
  let [before, now] = [0, 0.05]
  let [missBefore, missNow] = [miss(before), miss(now)]
  for (let turn = 0; turn < 30; turn++) {
    if (Math.abs(missNow) < 1e-15) break
    const slope = (missNow - missBefore) / (now - before)
    if (!(Math.abs(slope) > 1e-6)) {
      if (Math.abs(missNow) < 1e-12) break
      throw still()
    }
    const next = now - missNow / slope
    ;[before, missBefore] = [now, missNow]
    now = next
    missNow = miss(now)
    if (now === before) break
  }
  return rad(now)
}

const still = (): Refusal<LinkageRefusal> =>
  new Refusal<LinkageRefusal>({
    code: 'singular',
    at: 'steering',
    sentence: 'The steering does not turn the road wheels here.',
    remedy: 'Look at the tie rods, and at how far the rack or the drop arm moves.',
  })
