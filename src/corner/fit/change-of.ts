import type { Observable } from './observable.ts'
import { seenLazily } from './seen-lazily.ts'

/**
 * How much something changes from one state to another: the toe between two heights (bump steer), the camber between straight
 * ahead and lock. Errors common to both readings are gone, so it is read better than either.
 *
 * @param says as a person says it: "toe from 40 mm below to 40 mm above ride height"
 * @source definition
 * @example changeOf(angleRead('toe'), angleRead('toe', { travel: mm(40) })).says // change from toe to toe 40 mm above ride height
 */
export function changeOf(
  from: Observable,
  to: Observable,
  says = `change from ${from.says} to ${to.says}`,
): Observable {
  return {
    says,
    unit: to.unit,
    at: (corner) => {
      const [before, after] = [from.at(corner), to.at(corner)]
      return seenLazily(after.value - before.value, () =>
        after.slopes.map((slope, i) => slope - before.slopes[i]!),
      )
    },
  }
}
