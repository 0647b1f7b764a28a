import { angleOrder, anglesAtStrokes } from './angles-at-strokes.ts'
import type { WheelSetup } from './problem.ts'

/** A wheel's angles as a second-order polynomial of its adjusters' strokes; the search runs on it. */
export interface ResponseSurface {
  /** Strokes at which it was taken, m. */
  readonly at: Float64Array
  /** Angles there, in `angleOrder`, rad. */
  readonly value: Float64Array
  /** rad/m, [angle · adjusters + adjuster]. */
  readonly slope: Float64Array
  /** rad/m², [(angle · adjusters + first) · adjusters + second], symmetric. */
  readonly bend: Float64Array
}

/** Far enough for the bend to stand clear of rounding, near enough for the third order not to matter. @source own choice */
const reach = 2e-3

/**
 * Takes the polynomial from exact poses by central differences: 1 + 2n + n(n − 1)/2 poses for n adjusters.
 * Its error is of third order; whatever is reported comes from exact poses, never from here.
 *
 * @param strokes m, where to take it
 * @source own derivation: docs/methods/moves.md
 */
export function responseSurface(wheel: WheelSetup, strokes: ArrayLike<number>): ResponseSurface {
  const n = wheel.adjusters.length
  const at = Float64Array.from(strokes)
  const angles = angleOrder.length
  const moved = (...shifts: readonly (readonly [number, number])[]) => {
    const there = at.slice()
    for (const [i, by] of shifts) there[i]! += by
    return anglesAtStrokes(wheel, there)
  }
  const value = moved()
  const up = Array.from(at, (_, i) => moved([i, reach]))
  const down = Array.from(at, (_, i) => moved([i, -reach]))
  const slope = new Float64Array(angles * n)
  const bend = new Float64Array(angles * n * n)
  for (let i = 0; i < n; i++)
    for (let a = 0; a < angles; a++) {
      slope[a * n + i] = (up[i]![a]! - down[i]![a]!) / (2 * reach)
      bend[(a * n + i) * n + i] = (up[i]![a]! - 2 * value[a]! + down[i]![a]!) / reach ** 2
    }
  for (let i = 0; i < n; i++)
    for (let j = i + 1; j < n; j++) {
      const both = moved([i, reach], [j, reach])
      for (let a = 0; a < angles; a++) {
        const cross = (both[a]! - up[i]![a]! - up[j]![a]! + value[a]!) / reach ** 2
        bend[(a * n + i) * n + j] = cross
        bend[(a * n + j) * n + i] = cross
      }
    }
  return { at, value, slope, bend }
}
