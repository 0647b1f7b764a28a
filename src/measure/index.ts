export { choleskyOf, type Matrix } from './cholesky-of.ts'
export { combine, type Term } from './combine.ts'
export { correlated, readTogether } from './correlated.ts'
export { type Decision, decide, type Verdict } from './decide.ts'
export { type Draws, drawJoint } from './draw-joint.ts'
export { type ErrorDistribution, errorDistribution } from './error-distribution.ts'
export { exact } from './exact.ts'
export { expandedUncertainty } from './expanded-uncertainty.ts'
export { halfWidth, type Interval, interval } from './interval.ts'
export { type LeastSquares, type LeastSquaresTask, leastSquares, type ResidualRows } from './least-squares.ts'
export type { MeasureRefusal } from './measure-refusal.ts'
export type { Measured, Part, Shape } from './measured.ts'
export { type DrawnResult, monteCarlo } from './monte-carlo.ts'
export { normalCdf, normalDensity } from './normal-cdf.ts'
export { normalQuantile } from './normal-quantile.ts'
export { type Limits, type Prior, probabilityInside } from './probability-inside.ts'
export { propagate } from './propagate.ts'
export { repeats } from './repeats.ts'
export { type SeededRandom, seededRandom } from './seeded-random.ts'
export { arcsine, normal, rectangular, resolution, triangular } from './single-errors.ts'
export { type SingularValues, singularValues } from './singular-values.ts'
export { solveSymmetric } from './solve-symmetric.ts'
export {
  type BudgetLine,
  budget,
  correlation,
  covariance,
  covarianceMatrix,
  effectiveDof,
  standardUncertainty,
} from './spread.ts'
export { studentCdf } from './student-cdf.ts'
export { studentQuantile } from './student-quantile.ts'
