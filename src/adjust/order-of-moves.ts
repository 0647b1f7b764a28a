import type { Axis } from './axis.ts'
import type { SearchSpace } from './search-space.ts'

/**
 * Trade order: rear before front; caster, camber, toe, and after total toe the drag link that centres the steering
 * wheel; what acts on both wheels, left, right; then as the adjusters are listed.
 *
 * @returns negative when the first comes first
 * @source common practice, no source
 */
export function orderOfMoves(space: SearchSpace, first: Axis, second: Axis): number {
  const jobs = ['caster', 'camber', 'toe', 'steering wheel']
  const rank = (axis: Axis) => [
    space.ends[axis.axle] === 'rear' ? 0 : 1,
    jobs.indexOf(space.jobs[space.axes.indexOf(axis)]!),
    ['both', 'left', 'right'].indexOf(axis.on),
    axis.column,
  ]
  const [a, b] = [rank(first), rank(second)]
  for (let i = 0; i < a.length; i++) if (a[i] !== b[i]) return a[i]! - b[i]!
  return 0
}
