/** Angles as a second-order polynomial of their inputs; the search runs on it. */
export interface ResponseSurface {
  /** Inputs at which it was taken: strokes in m, or rad of wedges and sleeves. */
  readonly at: Float64Array
  /** Angles there, rad: four for each wheel, in `angleOrder`. */
  readonly value: Float64Array
  /** rad per input, [angle · inputs + input]. */
  readonly slope: Float64Array
  /** rad per input², [(angle · inputs + first) · inputs + second], symmetric. */
  readonly bend: Float64Array
}

/** Far enough for the bend to stand clear of rounding, near enough for the third order not to matter. @source own choice */
const reach = 2e-3

/**
 * Takes the polynomial from exact poses by central differences: 1 + 2n + n(n − 1)/2 poses for n inputs.
 * Its error is of third order; whatever is reported comes from exact poses, never from here.
 *
 * @param anglesAt exact angles at given inputs
 * @param inputs where to take it
 * @source own derivation: docs/methods/moves.md
 */
export function responseSurface(
  anglesAt: (inputs: Float64Array) => Float64Array,
  inputs: ArrayLike<number>,
): ResponseSurface {
  const n = inputs.length
  const at = Float64Array.from(inputs)
  const moved = (...shifts: readonly (readonly [number, number])[]) => {
    const there = at.slice()
    for (const [i, by] of shifts) there[i]! += by
    return anglesAt(there)
  }
  const value = moved()
  const angles = value.length
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
