import type { Axis } from './axis.ts'
import { strokeOf } from './stroke-of.ts'

/**
 * The stroke to expect of an axis at a setting. Where an eccentric's present setting is not known, a turn by
 * Δ is averaged over every place from which it stays in the range [a, b]:
 *
 *     throw · (cos(a + Δ) − cos(b + Δ) − cos a + cos b) / (b − a)
 *
 * @param setting in the adjuster's unit; of an unknown axis, counted from the middle of its range
 * @returns m
 * @source own derivation: docs/methods/moves.md
 */
export function strokeMeant(axis: Pick<Axis, 'adjuster' | 'known' | 'base'>, setting: number): number {
  const { adjuster, known, base } = axis
  if (known || adjuster.kind !== 'eccentric') return strokeOf(adjuster, setting)
  const turned = setting - base
  const a = Math.max(adjuster.range[0], adjuster.range[0] - turned)
  const b = Math.min(adjuster.range[1], adjuster.range[1] - turned)
  const sign = adjuster.fitted === 'turned round' ? -1 : 1
  // (cos(x) − cos(x + Δ)) summed over both ends, written with sines so that small turns keep their digits
  const half = turned / 2
  const average = (2 * Math.sin(half) * (Math.sin(b + half) - Math.sin(a + half))) / (b - a)
  return strokeOf(adjuster, base) + sign * adjuster.throw * average
}
