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
    bend: ({ unknowns, values }, covariance) => {
      const [a, b] = [placeOf(unknowns, from), placeOf(unknowns, to)]
      const apart = [0, 1, 2].map((axis) => values[b + axis]! - values[a + axis]!)
      const length = Math.hypot(...apart)
      const c = [0, 1, 2].map((i) =>
        [0, 1, 2].map(
          (j) =>
            covariance[b + i]![b + j]! +
            covariance[a + i]![a + j]! -
            covariance[a + i]![b + j]! -
            covariance[b + i]![a + j]!,
        ),
      )
      return bendOf(apart, length, c)
    },
  }
}

/**
 * A distance grows with the square of what lies across it: by ½ tr P C in the mean, scattered by ½ tr (P C)², where
 * P = (I − u uᵀ) / length and C is the covariance of one end against the other.
 */
function bendOf(apart: readonly number[], length: number, c: readonly (readonly number[])[]): number {
  const pc = apart.map((d, i) =>
    apart.map((_, j) => {
      let along = 0
      for (let k = 0; k < 3; k++) along += apart[k]! * c[k]![j]!
      return (c[i]![j]! - (d * along) / length ** 2) / length
    }),
  )
  let mean = 0
  let scatter = 0
  for (let i = 0; i < 3; i++) {
    mean += pc[i]![i]! / 2
    for (let j = 0; j < 3; j++) scatter += (pc[i]![j]! * pc[j]![i]!) / 2
  }
  return Math.sqrt(mean ** 2 + Math.max(scatter, 0))
}
