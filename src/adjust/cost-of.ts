import type { Aim } from './aim.ts'
import { rowShifts } from './row-shifts.ts'
import type { SearchSpace } from './search-space.ts'

/** Weight of a reading beyond its safe band against its distance from preferred. @source own choice */
export const beyondSafe = 100
/** Weight of moving at all: settles what no reading asks for. @source own choice */
export const moving = 1e-4

/**
 * The cost that the search makes small:
 *
 *     Σ ((p − preferred)/h)² + 100 Σ (max(0, |p − middle| − safe)/h)² + 10⁻⁴ Σ (stroke moved / range)²
 *
 * @source own derivation: docs/methods/moves.md
 */
export function costOf(
  space: SearchSpace,
  aims: readonly (Aim | null)[],
  offsets: Float64Array,
  strokes: Float64Array,
): number {
  const change = rowShifts(space, strokes, offsets)
  let cost = 0
  for (let i = 0; i < aims.length; i++) {
    const aim = aims[i]
    if (!aim) continue
    const p = space.rows[i]!.now.value + change[i]!
    cost += ((p - aim.target) / aim.half) ** 2
    cost += beyondSafe * (Math.max(0, Math.abs(p - aim.middle) - aim.safe) / aim.half) ** 2
  }
  for (let j = 0; j < space.axes.length; j++) {
    const { baseStroke, low, high } = space.axes[j]!
    cost += moving * ((strokes[j]! - baseStroke) / (high - low)) ** 2
  }
  return cost
}
