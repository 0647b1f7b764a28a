import { type Adjuster, strokeOf } from '../adjust/index.ts'

const degree = Math.PI / 180

/**
 * How well an adjuster's place is known when somebody looked at its mark, in the adjuster's unit: what eyes see, half a
 * step and the play.
 *
 * @source from memory, common practice, no source
 */
function markError(adjuster: Adjuster): number {
  switch (adjuster.kind) {
    case 'eccentric':
      return 5 * degree
    case 'offset sleeve':
      return 8 * degree
    case 'shims':
    case 'wedge':
      return adjuster.step / 10
    case 'thread':
      return 0.25
    default:
      return adjuster.step / 2
  }
}

/**
 * Standard uncertainty of the stroke of an adjuster that was seen at a setting.
 *
 * @returns m, or rad of a wedge or a sleeve
 * @source own derivation: docs/methods/findings.md
 */
export function markSpread(adjuster: Adjuster, setting: number): number {
  const spread = Math.hypot(markError(adjuster), adjuster.play / Math.sqrt(3))
  const [low, high] = adjuster.range
  const ends = [setting - spread, setting + spread].map((x) => Math.min(high, Math.max(low, x)))
  const chord = Math.abs(strokeOf(adjuster, ends[1]!) - strokeOf(adjuster, ends[0]!)) / 2
  // an eccentric near its end: half of the bow of its sine
  const bow = adjuster.kind === 'eccentric' ? (adjuster.throw * spread * spread) / 2 : 0
  return Math.hypot(chord, bow)
}
