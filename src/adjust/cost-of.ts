import type { Aim } from './aim.ts'
import type { Axis } from './axis.ts'
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
  let cost = costOfChange(space, aims, rowShifts(space, strokes, offsets))
  for (let j = 0; j < space.axes.length; j++) cost += costOfMoving(space.axes[j]!, strokes[j]!)
  return cost
}

/** The share of the cost that readings have, each row changed by so much. */
export function costOfChange(
  { rows }: SearchSpace,
  aims: readonly (Aim | null)[],
  change: Float64Array,
): number {
  let cost = 0
  for (let i = 0; i < aims.length; i++) {
    const aim = aims[i]
    if (!aim) continue
    const p = rows[i]!.now.value + change[i]!
    const off = (p - aim.target) / aim.half
    const beyond = Math.max(0, Math.abs(p - aim.middle) - aim.safe) / aim.half
    cost += off * off + beyondSafe * beyond * beyond
  }
  return cost
}

/** The share of the cost that one axis has by being moved. */
export function costOfMoving({ baseStroke, low, high }: Axis, stroke: number): number {
  const moved = (stroke - baseStroke) / (high - low)
  return moving * moved * moved
}
