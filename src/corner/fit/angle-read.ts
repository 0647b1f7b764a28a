import type { WheelAngle } from '../../linkage/index.ts'
import { type Metre, metre, type Radian, rad } from '../../quantity/index.ts'
import { atRide } from './at-ride.ts'
import type { Observable } from './observable.ts'
import { posedAt } from './posed-at.ts'
import { seenLazily } from './seen-lazily.ts'
import { steeredTo } from './steered-to.ts'

/** Where the wheel stood when it was read. @source definition */
export interface ReadAt {
  /** Above ride height, m; bump is positive. Default: at ride height. */
  readonly travel?: Metre
  /** Turned from straight ahead, front outward positive. Default: straight ahead. */
  readonly outward?: Radian
}

const millimetres = (length: number) => `${Math.round(Math.abs(length) * 1000)} mm`

/** Where a reading was taken, as words: nothing at ride height straight ahead. */
export function saysWhere({ travel = metre(0), outward = rad(0) }: ReadAt): string {
  const heights = travel === 0 ? '' : ` ${millimetres(travel)} ${travel > 0 ? 'above' : 'below'} ride height`
  const turned = Math.round((Math.abs(outward) * 1800) / Math.PI) / 10
  const lock = outward === 0 ? '' : ` turned ${turned}° ${outward > 0 ? 'outward' : 'inward'}`
  return `${heights}${lock}`
}

/**
 * An angle of the wheel as it is read: at ride height, at another height, or turned. Caster and SAI are those of the joint
 * axis; toe of a turned wheel is against the body.
 *
 * @throws {Refusal} when it is computed: `not-for-this-layout` for an angle, a height or a lock that the layout does not have;
 *   `unreachable` past the end of travel or lock
 * @assumes a steering box moves the tie rod's inner end straight across, as a rack does
 * @source own derivation: docs/methods/fit.md
 * @example angleRead('camber', { travel: mm(40) }).says // camber 40 mm above ride height
 */
export function angleRead(angle: WheelAngle, where: ReadAt = {}): Observable {
  const { travel = metre(0), outward = rad(0) } = where
  return {
    says: `${angle === 'sai' ? 'SAI' : angle}${saysWhere(where)}`,
    unit: 'rad',
    at: (corner) => {
      if (outward !== 0) {
        const { posed, rackSlopes } = steeredTo(corner, travel, outward)
        const seen = posed.angle(angle)
        return seenLazily(seen.value, () => {
          const [perRack, turned] = [posed.perRack(angle), rackSlopes()]
          return seen.slopes.map((slope, i) => slope + perRack * turned[i]!)
        })
      }
      if (travel === 0) return atRide(corner, angle)
      return posedAt(corner, { travel, rack: metre(0) }).angle(angle)
    },
  }
}
