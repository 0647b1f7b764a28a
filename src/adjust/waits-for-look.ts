import { canBeTold } from './can-be-told.ts'
import { isToeRow } from './is-toe-row.ts'
import { isForToe } from './job-of.ts'
import type { SearchSpace } from './search-space.ts'

/**
 * Whether a row could be moved by an adjuster of which nobody has seen how it is fitted: nothing is said of its reach
 * before that.
 *
 * @source definition
 */
export const waitsForLook = (space: SearchSpace, i: number): boolean =>
  space.axes.some(
    (axis, j) =>
      !canBeTold(axis) &&
      space.touches[i * space.axes.length + j] &&
      isForToe(space.jobs[j]!) === isToeRow(space.rows[i]!.name),
  )
