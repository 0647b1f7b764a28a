import type { Adjuster } from './adjuster.ts'
import { angleOrder } from './angles-at-strokes.ts'

/** What an adjuster is there for. @source common practice, no source */
export type Job = 'caster' | 'camber' | 'steering wheel' | 'toe'

/** Whether it is left to the end: what sets toe, and what centres the steering wheel. */
export const isForToe = (job: Job): boolean => job === 'toe' || job === 'steering wheel'

/**
 * What an adjuster is there for: what it says itself; else toe for a thread (of a drag link: the steering wheel), the
 * angle of a wedge, camber for a sleeve; else the angle that it changes most, where toe is left to the thread of the
 * wheel if it has one, however much toe the others change beside.
 *
 * @param slope of each angle against it, rad per stroke
 * @param fellows all adjusters that move its wheel
 * @source common practice, no source
 */
export function jobOf(adjuster: Adjuster, slope: ArrayLike<number>, fellows: readonly Adjuster[]): Job {
  if (adjuster.sets) return adjuster.sets
  if (adjuster.kind === 'thread') return adjuster.length === 'drag-link' ? 'steering wheel' : 'toe'
  if (adjuster.kind === 'wedge') return adjuster.tilts
  if (adjuster.kind === 'offset sleeve') return 'camber'
  const size = (angle: 'caster' | 'camber' | 'toe') => Math.abs(slope[angleOrder.indexOf(angle)]!)
  const angles = fellows.some(({ kind }) => kind === 'thread')
    ? (['camber', 'caster'] as const)
    : (['camber', 'caster', 'toe'] as const)
  return angles.reduce<'caster' | 'camber' | 'toe'>(
    (best, angle) => (size(angle) > size(best) ? angle : best),
    'camber',
  )
}
