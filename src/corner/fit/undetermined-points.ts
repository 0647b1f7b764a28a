import type { Undetermined } from './fitted-corner.ts'
import type { FitPrior } from './prior-of.ts'
import { type Unknowns, type Way, ways, wordsOf } from './unknowns.ts'

/** A spread that shrank by less than this part was not determined. */
const least = 0.1

/** Whether so much of a spread is left that nothing was learned. */
export const isOpen = (after: number, before: number): boolean => before > 0 && after > (1 - least) * before

const spokenWays = (list: readonly Way[]): string => {
  const words = list.map((way) => (way === 'up' ? 'in height' : way))
  return words.length === 1 ? words[0]! : `${words.slice(0, -1).join(', ')} and ${words.at(-1)}`
}

/** Points whose place the measurements left nearly as open as it was. */
export function undeterminedPoints(
  { points }: Unknowns,
  prior: FitPrior,
  covariance: readonly (readonly number[])[],
): readonly Undetermined[] {
  return points.flatMap((point, i) => {
    const open = ways.filter((_, axis) => {
      const at = 3 * i + axis
      return isOpen(Math.sqrt(covariance[at]![at]!), Math.sqrt(prior.covariance[at]![at]!))
    })
    if (open.length === 0) return []
    const spread = Math.max(
      ...open.map((way) => {
        const at = 3 * i + ways.indexOf(way)
        return Math.sqrt(covariance[at]![at]!)
      }),
    )
    return [
      {
        point,
        ways: open,
        spread,
        sentence: `The ${wordsOf(point)} is hardly better known ${spokenWays(open)} than before: ±${(spread * 1000).toFixed(0)} mm.`,
      },
    ]
  })
}
