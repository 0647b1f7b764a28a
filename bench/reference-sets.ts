import { levenbergMarquardt } from 'ml-levenberg-marquardt'
import { leastSquares } from '../src/measure/index.ts'
import { longSets } from '../test/published/measure/strd/long-sets.ts'
import { type ReferenceSet, sets } from '../test/published/measure/strd/sets.ts'
import { timed } from './timed.ts'

/** Certified digits that every parameter has; 0 when the solver throws or gives no numbers. */
function digits(set: ReferenceSet, solve: () => ArrayLike<number>): number {
  try {
    const found = solve()
    const off = set.certified.map((want, i) => Math.abs(found[i]! / want - 1))
    const least = Math.min(...off.map((x) => -Math.log10(Math.max(x, 1e-11))))
    return Number.isFinite(least) ? Math.max(0, least) : 0
  } catch {
    return 0
  }
}

const ours = (set: ReferenceSet, start: readonly number[]) =>
  leastSquares({
    start,
    rows: (b) => ({
      residuals: set.x.map((x, i) => set.model(b, x) - set.y[i]!),
      slopes: set.x.map((x) => set.slopes(b, x)),
    }),
  }).at

/** A general solver with difference slopes: the index of the observation is its abscissa, so that two predictors go too. */
const rival = (set: ReferenceSet, start: readonly number[]) =>
  levenbergMarquardt({ x: set.x.map((_, i) => i), y: [...set.y] }, (b) => (i) => set.model(b, set.x[i]!), {
    initialValues: [...start],
    damping: 1e-2,
    maxIterations: 2000,
    gradientDifference: start.map((b) => 1e-7 * Math.abs(b) || 1e-9),
    centralDifference: true,
    errorTolerance: 0,
  }).parameterValues

/** Both solvers on the public nonlinear reference sets, from both starts. */
export function referenceSets(): void {
  let [all, oursHold, rivalHolds, oursTime, rivalTime] = [0, 0, 0, 0, 0]
  for (const set of [...sets, ...longSets])
    for (const [k, start] of set.starts.entries()) {
      let [mine, other] = [0, 0]
      oursTime += timed(() => {
        mine = digits(set, () => ours(set, start))
      })
      rivalTime += timed(() => {
        other = digits(set, () => rival(set, start))
      })
      all++
      if (mine >= 6) oursHold++
      if (other >= 6) rivalHolds++
      console.log(
        `${set.name} from start ${k + 1}: ${mine.toFixed(1)} digits, ml-levenberg-marquardt ${other.toFixed(1)}`,
      )
    }
  console.log(
    `Six digits or more: ${oursHold} of ${all} in ${(oursTime / 1e6).toFixed(0)} ms, ml-levenberg-marquardt ${rivalHolds} of ${all} in ${(rivalTime / 1e6).toFixed(0)} ms`,
  )
}
