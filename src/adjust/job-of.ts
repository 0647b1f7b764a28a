import type { Adjuster } from './adjuster.ts'
import { angleOrder } from './angles-at-strokes.ts'
import type { ResponseSurface } from './response-surface.ts'

/**
 * What an adjuster is there for: what it says itself, else toe for a thread, else the angle that it changes
 * most; toe is left to the thread of the wheel where it has one, however much toe the others change beside.
 *
 * @param column its place among the adjusters of its wheel
 * @param fellows all adjusters of its wheel
 * @source common practice, no source
 */
export function jobOf(
  adjuster: Adjuster,
  { slope, at }: ResponseSurface,
  column: number,
  fellows: readonly Adjuster[],
): 'caster' | 'camber' | 'toe' {
  if (adjuster.sets) return adjuster.sets
  if (adjuster.kind === 'thread') return 'toe'
  const size = (angle: 'caster' | 'camber' | 'toe') =>
    Math.abs(slope[angleOrder.indexOf(angle) * at.length + column]!)
  const angles = fellows.some(({ kind }) => kind === 'thread')
    ? (['camber', 'caster'] as const)
    : (['camber', 'caster', 'toe'] as const)
  return angles.reduce<'caster' | 'camber' | 'toe'>(
    (best, angle) => (size(angle) > size(best) ? angle : best),
    'camber',
  )
}
