import type { Aim } from './aim.ts'
import { boxedMinimum } from './boxed-minimum.ts'
import { beyondSafe, costOf, moving } from './cost-of.ts'
import { rowChanges } from './row-changes.ts'
import type { SearchSpace } from './search-space.ts'

const rounds = 12
/** Places on a sleeve's circle that are tried. @source own choice */
const around = 8

/** How well strokes do: smaller is better. */
export interface Settled {
  readonly strokes: Float64Array
  readonly cost: number
}

/**
 * Strokes of the touched axes that make the cost smallest within their ranges. A sleeve goes round, so its
 * neighbourhood is not all: it is also started from other places of its circle.
 *
 * @param touched places of axes
 * @source Gauss–Newton from several starts; own derivation: docs/methods/moves.md
 */
export function settledStrokes(
  space: SearchSpace,
  aims: readonly (Aim | null)[],
  offsets: Float64Array,
  touched: readonly number[],
): Settled {
  const still = Float64Array.from(space.axes, (axis) => axis.baseStroke)
  let best = settledFrom(space, aims, offsets, { free: touched, start: still })
  for (const j of touched) {
    const { adjuster, low, high } = space.axes[j]!
    if (adjuster.kind !== 'offset sleeve') continue
    for (let k = 0; k < around; k++) {
      const start = best.strokes.slice()
      start[j] = low + ((high - low) * (k + 0.5)) / around
      const one = settledFrom(space, aims, offsets, { free: touched, start })
      if (one.cost < best.cost) best = one
    }
  }
  return best
}

/**
 * The nearest place from `start` where the cost is smallest: Gauss–Newton with an active set for the ends of the
 * ranges. Axes that are not free stay where they start.
 *
 * @source Gauss–Newton; own derivation: docs/methods/moves.md
 */
export function settledFrom(
  space: SearchSpace,
  aims: readonly (Aim | null)[],
  offsets: Float64Array,
  { free: touched, start }: { readonly free: readonly number[]; readonly start: Float64Array },
): Settled {
  const strokes = start.slice()
  let cost = costOf(space, aims, offsets, strokes)
  for (let round = 0; round < rounds; round++) {
    const goal = boundedStep(space, aims, offsets, touched, strokes)
    let next = strokes
    let best = cost
    for (let share = 1; share > 0.05; share /= 2) {
      const trial = strokes.slice()
      for (const j of touched) trial[j]! += share * (goal[j]! - strokes[j]!)
      const there = costOf(space, aims, offsets, trial)
      if (there < best) {
        next = trial
        best = there
        break
      }
    }
    if (next === strokes) break
    const gain = cost - best
    strokes.set(next)
    cost = best
    if (gain < 1e-10 * (1 + cost)) break
  }
  return { strokes, cost }
}

/** Minimum, within the ranges, of the quadratic that the cost is near `strokes`. */
function boundedStep(
  space: SearchSpace,
  aims: readonly (Aim | null)[],
  offsets: Float64Array,
  touched: readonly number[],
  strokes: Float64Array,
): Float64Array {
  const count = space.axes.length
  const n = touched.length
  const { change, slope } = rowChanges(space, strokes, offsets)
  // in units of each range, so that turns and millimetres weigh alike
  const range = touched.map((j) => space.axes[j]!.high - space.axes[j]!.low)
  const A = Array.from({ length: n }, () => new Float64Array(n))
  const b = new Float64Array(n)
  const g = new Float64Array(n)
  for (let i = 0; i < aims.length; i++) {
    const aim = aims[i]
    if (!aim) continue
    const value = space.rows[i]!.now.value + change[i]!
    const beyond = Math.abs(value - aim.middle) - aim.safe
    const out = beyond > 0 ? beyondSafe : 0
    // both terms of the cost have the same slope: their weights add up
    const weight = (1 + out) / aim.half ** 2
    const pull = (value - aim.target + out * Math.sign(value - aim.middle) * beyond) / aim.half ** 2
    for (let p = 0; p < n; p++) g[p] = slope[i * count + touched[p]!]! * range[p]!
    for (let p = 0; p < n; p++) {
      if (g[p] === 0) continue
      b[p]! -= pull * g[p]!
      for (let q = 0; q <= p; q++) A[p]![q]! += weight * g[p]! * g[q]!
    }
  }
  for (let p = 0; p < n; p++) for (let q = 0; q < p; q++) A[q]![p] = A[p]![q]!
  for (let p = 0; p < n; p++) {
    const axis = space.axes[touched[p]!]!
    A[p]![p]! += moving
    b[p]! -= (moving * (strokes[touched[p]!]! - axis.baseStroke)) / range[p]!
  }
  const low = touched.map((j, p) => (space.axes[j]!.low - strokes[j]!) / range[p]!)
  const high = touched.map((j, p) => (space.axes[j]!.high - strokes[j]!) / range[p]!)
  const step = boxedMinimum(A, b, low, high)
  const goal = strokes.slice()
  for (let p = 0; p < n; p++) goal[touched[p]!]! += step[p]! * range[p]!
  return goal
}
