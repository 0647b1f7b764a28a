import type { Adjuster } from '../adjust/index.ts'
import { adjusterIn } from './adjuster-in.ts'
import type { Corner } from './corner-schema.ts'
import { isOfAxle } from './is-of-axle.ts'

/**
 * The adjusters of a corner model that each wheel has of its own, as the adjust room takes them: names of points and
 * links are the linkage room's, directions have length 1, a play that is not given is 0.
 *
 * @source definition
 */
export function adjustersOf(corner: Corner): readonly Adjuster[] {
  return Object.entries(corner.adjusters).flatMap(([id, a]) =>
    isOfAxle(a) ? [] : [adjusterIn(corner, id, a)],
  )
}
