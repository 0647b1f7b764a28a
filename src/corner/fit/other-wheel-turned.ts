import { metre, type Radian } from '../../quantity/index.ts'
import type { Observable } from './observable.ts'
import { posedAt } from './posed-at.ts'
import { seenLazily } from './seen-lazily.ts'
import { steeredTo } from './steered-to.ts'

/**
 * Toe-out on turns: how far this wheel turns inward from straight ahead while the wheel across the axle, its mirror image on
 * the same rack, is turned outward by an angle on its turn plate.
 *
 * @param outward of the other wheel, the inner one of the turn; commonly 20°
 * @throws {Refusal} when it is computed: `not-for-this-layout` where no rack steers; `unreachable` past the lock
 * @assumes both corners alike, and a steering box that moves both tie rods' inner ends straight across
 * @source own derivation: docs/methods/fit.md
 * @example otherWheelTurned(deg(20)).says // turn of the outer wheel with the inner one at 20°
 */
export function otherWheelTurned(outward: Radian): Observable {
  return {
    says: `turn of the outer wheel with the inner one at ${Math.round((outward * 1800) / Math.PI) / 10}°`,
    unit: 'rad',
    at: (corner) => {
      const { rack, rackSlopes } = steeredTo(corner, 0, outward)
      const straight = posedAt(corner, { travel: metre(0), rack: metre(0) }).angle('toe')
      // what goes outward on one side goes inward on its mirror image
      const outer = posedAt(corner, { travel: metre(0), rack: metre(-rack) })
      const turned = outer.angle('toe')
      return seenLazily(turned.value - straight.value, () => {
        const [perRack, moved] = [outer.perRack('toe'), rackSlopes()]
        return turned.slopes.map((slope, i) => slope - straight.slopes[i]! - perRack * moved[i]!)
      })
    },
  }
}
