import { placeOf } from './corner-at.ts'
import type { Observable } from './observable.ts'
import { wordsOf } from './unknowns.ts'

/**
 * The slope of the line between two points against level, as an inclinometer on an arm or a rod shows it at ride height
 * on a level body. Rising from the first to the second is positive.
 *
 *     along the line: asin(Δz / length)    seen from the front: atan(Δz / |Δy|)    from the side: atan(Δz / |Δx|)
 *
 * @param seen `along` when the gauge lies on the line itself, else from where the line is looked at
 * @throws {Refusal} `no-such-point` when it is computed for a corner whose layout has no such point
 * @source definition
 * @example slopeOf({ from: 'tie-inner', to: 'tie-outer' }).says // slope from tie inner to tie outer
 */
export function slopeOf({
  from,
  to,
  seen = 'along',
}: {
  readonly from: string
  readonly to: string
  readonly seen?: 'along' | 'front' | 'side'
}): Observable {
  const axes = seen === 'along' ? [0, 1] : seen === 'front' ? [1] : [0]
  return {
    says: `slope from ${wordsOf(from)} to ${wordsOf(to)}${seen === 'along' ? '' : `, seen from the ${seen}`}`,
    unit: 'rad',
    at: ({ unknowns, values }) => {
      const [a, b] = [placeOf(unknowns, from), placeOf(unknowns, to)]
      const level = axes.map((axis) => values[b + axis]! - values[a + axis]!)
      const rise = values[b + 2]! - values[a + 2]!
      const run = Math.hypot(...level)
      const square = run * run + rise * rise
      const slopes = new Float64Array(unknowns.count)
      const add = (axis: number, by: number) => {
        slopes[b + axis]! += by
        slopes[a + axis]! -= by
      }
      add(2, run / square)
      // run does not change with a level coordinate that stands still
      level.forEach((d, i) => {
        add(axes[i]!, (-rise * d) / (run * square))
      })
      return { value: Math.atan2(rise, run), slopes }
    },
  }
}
