import { placeOf } from './corner-at.ts'
import type { Observable } from './observable.ts'
import { wordsOf } from './unknowns.ts'

/**
 * The straight distance between two points of a corner, pivot to pivot, as a tape or a trammel takes it.
 *
 * @param from by the file's names: `upper-front-pivot`
 * @throws {Refusal} `no-such-point` when it is computed for a corner whose layout has no such point
 * @source definition
 * @example distanceBetween('tie-inner', 'tie-outer').says // tie inner to tie outer
 */
export function distanceBetween(from: string, to: string): Observable {
  return {
    says: `${wordsOf(from)} to ${wordsOf(to)}`,
    unit: 'm',
    at: ({ unknowns, values }) => {
      const [a, b] = [placeOf(unknowns, from), placeOf(unknowns, to)]
      const apart = [0, 1, 2].map((axis) => values[b + axis]! - values[a + axis]!)
      const value = Math.hypot(...apart)
      const slopes = new Float64Array(unknowns.count)
      apart.forEach((d, axis) => {
        slopes[b + axis]! += d / value
        slopes[a + axis]! -= d / value
      })
      return { value, slopes }
    },
  }
}
