import type { Adjuster } from './adjuster.ts'

/** How many inputs of the response an adjuster feeds: an offset sleeve leans the kingpin two ways. */
export const inputCount = (adjuster: Adjuster): 1 | 2 => (adjuster.kind === 'offset sleeve' ? 2 : 1)

/**
 * What a stroke puts into the response: itself, or of an offset sleeve tilt · cos and tilt · sin of its turn.
 *
 * @param into written from `at` on
 * @source definition; sleeve: docs/methods/adjusters.md
 */
export function putInputs(adjuster: Adjuster, stroke: number, into: Float64Array, at: number): void {
  if (adjuster.kind !== 'offset sleeve') into[at] = stroke
  else {
    into[at] = adjuster.tilt * Math.cos(stroke)
    into[at + 1] = adjuster.tilt * Math.sin(stroke)
  }
}
