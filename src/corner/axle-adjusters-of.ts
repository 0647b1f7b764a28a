import type { Adjuster } from '../adjust/index.ts'
import { adjusterIn } from './adjuster-in.ts'
import type { Corner } from './corner-schema.ts'
import { isOfAxle } from './is-of-axle.ts'

/**
 * The adjusters that the axle has once, as the adjust room takes them: a sub-frame that can be shifted, the threads of
 * tie rod, drag link, middle link and track bar of a solid axle.
 *
 * @source definition
 */
export function axleAdjustersOf(corner: Corner): readonly Adjuster[] {
  return Object.entries(corner.adjusters).flatMap(([id, a]) =>
    isOfAxle(a) ? [adjusterIn(corner, id, a)] : [],
  )
}
