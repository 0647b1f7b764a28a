import { expect, test } from 'vitest'
import { leastSquares } from '../../../src/measure/index.ts'
import { near } from '../../support/law.ts'
import { published } from '../../support/published.ts'
import { longSets } from './strd/long-sets.ts'
import { type ReferenceSet, sets } from './strd/sets.ts'

const all = [...sets, ...longSets]
const solved = (set: ReferenceSet, start: readonly number[]) =>
  leastSquares({
    start,
    rows: (b) => ({
      residuals: set.x.map((x, i) => set.model(b, x) - set.y[i]!),
      slopes: set.x.map((x) => set.slopes(b, x)),
    }),
  })
const worst = (got: ArrayLike<number>, want: readonly number[]) =>
  Math.max(...want.map((value, i) => Math.abs(got[i]! / value - 1)))

// Certified to 11 digits. 1e-9 leaves what one unit in the last place of exp and of the powers can do; six digits are
// what the sets ask of a program.
for (const set of all)
  published(
    `ME17 ${set.name}`,
    set.starts.flatMap((start, k) => {
      const source = `NIST StRD, nonlinear regression, ${set.name}, certified values`
      const found = solved(set, start)
      const dof = set.y.length - set.certified.length
      const rows = [
        { id: `${set.name}.${k + 1}.parameters`, got: worst(found.at, set.certified) },
        { id: `${set.name}.${k + 1}.sum`, got: worst([found.sumOfSquares], [set.residualSumOfSquares]) },
        {
          id: `${set.name}.${k + 1}.spread`,
          got: worst(
            set.spread.map((_, i) => Math.sqrt((found.covariance[i]![i]! * found.sumOfSquares) / dof)),
            set.spread,
          ),
        },
      ]
      // residuals of 1e-14 are rounding of the data's doubles, whatever the parameters
      return (set.name === 'Lanczos1' ? rows.slice(0, 1) : rows).map((row) => ({
        ...row,
        want: 0,
        within: 1e-9,
        source,
      }))
    }),
  )

test('ME17 the slopes typed for the sets are the slopes of their models', () => {
  for (const set of all)
    set.certified.forEach((value, j) => {
      const step = 1e-5 * Math.abs(value)
      const moved = (by: number) => set.certified.map((b, i) => (i === j ? b + by : b))
      for (const x of set.x) {
        const difference = (set.model(moved(step), x) - set.model(moved(-step), x)) / (2 * step)
        near(set.slopes(set.certified, x)[j]!, difference, {
          rel: 1e-4,
          abs: (1e-6 * Math.max(...set.y.map(Math.abs))) / Math.abs(value),
        })
      }
    })
  expect(all.length).toBe(23)
})
