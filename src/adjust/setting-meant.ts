import type { Axis } from './axis.ts'
import { settingAt } from './setting-at.ts'
import { strokeMeant } from './stroke-meant.ts'

/**
 * The setting from which a stroke is to be expected: the inverse of `strokeMeant`, stopped at the ends.
 *
 * @param stroke m
 * @source own derivation: docs/methods/moves.md
 */
export function settingMeant(axis: Pick<Axis, 'adjuster' | 'known' | 'base'>, stroke: number): number {
  const { adjuster, known } = axis
  if (known || adjuster.kind !== 'eccentric') return settingAt(adjuster, stroke)
  const rising = adjuster.fitted !== 'turned round'
  let [low, high] = adjuster.range as readonly number[] as [number, number]
  for (let i = 0; i < 60; i++) {
    const middle = (low + high) / 2
    if (strokeMeant(axis, middle) < stroke === rising) low = middle
    else high = middle
  }
  return (low + high) / 2
}
