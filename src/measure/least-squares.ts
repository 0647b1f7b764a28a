import { finite, measureRefusal } from './measure-refusal.ts'
import { orthogonalTriangle } from './orthogonal-triangle.ts'
import { type SingularValues, singularValues } from './singular-values.ts'

/** Residuals, each over its own standard uncertainty, and their slopes. @source definition */
export interface ResidualRows {
  readonly residuals: ArrayLike<number>
  /** One row per residual, one number per unknown. */
  readonly slopes: readonly ArrayLike<number>[]
}

/** What is to be made small. A prior is rows like any other. @source definition */
export interface LeastSquaresTask {
  readonly start: readonly number[]
  /** Null where nothing can be computed: the step there is not taken. */
  readonly rows: (at: Float64Array) => ResidualRows | null
  /** How far the first step may go, in lengths of the start measured by the rows' own scale. */
  readonly reach?: number
  /** Most evaluations of the rows. */
  readonly most?: number
  /** Ends when no step promises to lower the sum by more than this share. Default: as far as rounding lets it. */
  readonly enough?: number
}

/** Where the sum of squares is least. @source definition */
export interface LeastSquares {
  readonly at: Float64Array
  readonly residuals: Float64Array
  /** (JᵀJ)⁻¹ there, as rows: the covariance, when the rows are over their own uncertainty. */
  readonly covariance: number[][]
  readonly sumOfSquares: number
  /** How often the rows were computed. */
  readonly evaluations: number
  /** Whether the last step was as small as rounding lets it be; false when `most` came first. */
  readonly settled: boolean
}

interface Place {
  readonly x: Float64Array
  readonly residuals: Float64Array
  readonly slopes: readonly ArrayLike<number>[]
  readonly size: number
}

/** A place whose rows, columns scaled, are turned into a triangle. */
interface View {
  readonly triangle: Float64Array
  readonly right: Float64Array
  readonly scale: Float64Array
  /** Its singular values, and the right side along the left vectors; taken when first needed. */
  readonly apart: () => { readonly svd: SingularValues; readonly along: Float64Array }
}

/**
 * Unknowns with the least sum of squared residuals: Levenberg–Marquardt with analytic slopes, the damping chosen so
 * that the step stays inside a region where the last one kept its promise; at the end plain steps until rounding.
 *
 *     step = −D⁻¹ V diag(s / (s² + λ)) Uᵀ r,   J D⁻¹ = U diag(s) Vᵀ,   D = largest column sizes so far
 *
 * @throws {Refusal} `too-few` for fewer rows than unknowns; `not-finite` when the start has no rows; `not-positive-definite`
 *   when the rows leave a direction open
 * @source Moré: The Levenberg–Marquardt algorithm, implementation and theory (1978), from memory; checked on NIST StRD
 * @example leastSquares({ start: [1], rows: ([x]) => ({ residuals: [x - 2, x - 4], slopes: [[1], [1]] }) }).at[0] // 3
 */
export function leastSquares({
  start,
  rows,
  reach = 10,
  most = 2000,
  enough,
}: LeastSquaresTask): LeastSquares {
  const n = start.length
  let evaluations = 0
  const look = (x: Float64Array): Place | null => {
    evaluations++
    return placeOf(x, rows(x))
  }
  const first = look(Float64Array.from(start, (x) => finite(x, 'start')))
  if (!first) throw unusable()
  if (first.residuals.length < n)
    throw measureRefusal(
      'too-few',
      'rows',
      first.residuals.length,
      `${first.residuals.length} residuals cannot determine ${n} unknowns.`,
      'Add measurements, or a prior for what is not measured.',
    )
  let here = first
  const scale = new Float64Array(n)
  let view = viewOf(here, scale)
  let radius = reach * (scaledSize(here.x, scale) || 1)
  let settled = false
  while (evaluations < most && !settled) {
    const { y, lambda } = stepWithin(view, radius)
    const long = Math.hypot(...y)
    const there = look(moved(here.x, y, scale))
    const gain = there ? 1 - (there.size / here.size) ** 2 : -1
    const promised = promise(view, y, lambda) / here.size ** 2
    if (gain <= 0.25 * promised) radius = Math.min(radius, 10 * long) * 0.3
    else if (lambda === 0 || gain >= 0.75 * promised) radius = 2 * long
    if (there && gain > 1e-4 * promised && gain > 0) {
      here = there
      view = viewOf(here, scale)
    }
    const room = 2 ** -50 * (scaledSize(here.x, scale) + long)
    settled = here.size === 0 || promised < (enough ?? 1e-14) || radius <= room
  }
  for (let polish = 0; !enough && settled && polish < mostPolish && here.size > 0; polish++) {
    const y = stepWithin(view, Number.POSITIVE_INFINITY).y
    const there = look(moved(here.x, y, scale))
    if (!there || !(there.size <= here.size * (1 + 1e-9))) break
    const next = viewOf(there, scale.slice())
    if (!(Math.hypot(...stepWithin(next, Number.POSITIVE_INFINITY).y) < 0.9 * Math.hypot(...y))) break
    here = there
    view = next
  }
  return {
    at: here.x,
    residuals: here.residuals,
    covariance: covarianceOf(view),
    sumOfSquares: here.size ** 2,
    evaluations,
    settled,
  }
}

/** Plain steps at the end. */
const mostPolish = 60

function placeOf(x: Float64Array, rows: ResidualRows | null): Place | null {
  if (!rows) return null
  const residuals = Float64Array.from(rows.residuals)
  let size = 0
  for (const r of residuals) size = Math.hypot(size, r)
  if (!Number.isFinite(size)) return null
  for (const row of rows.slopes) for (let j = 0; j < x.length; j++) if (!Number.isFinite(row[j]!)) return null
  return { x, residuals, slopes: rows.slopes, size }
}

/** Takes a place apart; `scale` grows to the largest column sizes seen. */
function viewOf({ residuals, slopes }: Place, scale: Float64Array): View {
  const n = scale.length
  const m = residuals.length
  const rows = new Float64Array(m * n)
  for (let j = 0; j < n; j++) {
    let sum = 0
    for (let i = 0; i < m; i++) sum = Math.hypot(sum, slopes[i]![j]!)
    scale[j] = Math.max(scale[j]!, sum)
    for (let i = 0; i < m; i++) rows[i * n + j] = slopes[i]![j]! / (scale[j]! || 1)
  }
  const right = residuals.slice()
  const triangle = orthogonalTriangle(rows, right, m, n)
  let taken: ReturnType<View['apart']> | undefined
  const apart = () => {
    if (!taken) {
      const svd = singularValues(triangle, n)
      const along = new Float64Array(n)
      for (let k = 0; k < n; k++) for (let i = 0; i < n; i++) along[k]! += svd.left[i * n + k]! * right[i]!
      taken = { svd, along }
    }
    return taken
  }
  return { triangle, right, scale: scale.slice(), apart }
}

/** The undamped step straight from the triangle; null where its diagonal nearly vanishes. */
function plain({ triangle, right, scale }: View): number[] | null {
  const n = scale.length
  const y = new Array<number>(n).fill(0)
  for (let i = n - 1; i >= 0; i--) {
    const pivot = triangle[i * n + i]!
    if (!(Math.abs(pivot) > 1e-8)) return null
    let sum = -right[i]!
    for (let j = i + 1; j < n; j++) sum -= triangle[i * n + j]! * y[j]!
    y[i] = sum / pivot
  }
  return y
}

/** Scaled step with damping λ. */
function damped(view: View, lambda: number): number[] {
  const {
    svd: { values, right },
    along,
  } = view.apart()
  const n = values.length
  const floor = Number.EPSILON * n * Math.max(...values)
  const y = new Array<number>(n).fill(0)
  for (let k = 0; k < n; k++) {
    const s = values[k]!
    if (s <= floor) continue
    const by = (-s * along[k]!) / (s * s + lambda)
    for (let j = 0; j < n; j++) y[j]! += by * right[j * n + k]!
  }
  return y
}

/** The step that is at most `radius` long: undamped where that is short enough. */
function stepWithin(view: View, radius: number): { y: number[]; lambda: number } {
  const whole = plain(view) ?? damped(view, 0)
  if (Math.hypot(...whole) <= 1.1 * radius) return { y: whole, lambda: 0 }
  const {
    svd: { values },
    along,
  } = view.apart()
  let low = 0
  let high = Math.hypot(...along.map((a, k) => a * values[k]!)) / radius
  let lambda = 1e-3 * high
  for (let turn = 0; turn < 60; turn++) {
    const y = damped(view, lambda)
    const size = Math.hypot(...y)
    if (Math.abs(size - radius) <= 0.1 * radius) return { y, lambda }
    if (size > radius) low = lambda
    else high = lambda
    // Newton on 1/size, which is nearly straight in λ
    let slope = 0
    for (let k = 0; k < values.length; k++) {
      const s = values[k]!
      slope -= (s * along[k]!) ** 2 / (s * s + lambda) ** 3
    }
    const next = lambda - (size / radius) * ((size - radius) / (slope / size))
    lambda = next > low && next < high ? next : low > 0 ? Math.sqrt(low * high) : high / 100
  }
  return { y: damped(view, lambda), lambda }
}

/** By how much the straight model's sum of squares falls: |R y|² + 2 λ |y|². */
function promise({ triangle, scale }: View, y: readonly number[], lambda: number): number {
  const n = scale.length
  let sum = 0
  for (let i = 0; i < n; i++) {
    let part = 0
    for (let j = i; j < n; j++) part += triangle[i * n + j]! * y[j]!
    sum += part ** 2 + 2 * lambda * y[i]! ** 2
  }
  return sum
}

const moved = (x: Float64Array, y: readonly number[], scale: Float64Array): Float64Array =>
  x.map((value, j) => value + y[j]! / (scale[j]! || 1))

const scaledSize = (x: Float64Array, scale: Float64Array): number =>
  Math.hypot(...x.map((value, j) => value * scale[j]!))

function covarianceOf({ apart, scale }: View): number[][] {
  const { values, right } = apart().svd
  const n = values.length
  const floor = Number.EPSILON * n * Math.max(...values)
  const open = values.findIndex((s) => !(s > floor))
  if (open >= 0) {
    let most = 0
    for (let j = 0; j < n; j++)
      if (Math.abs(right[j * n + open]!) > Math.abs(right[most * n + open]!)) most = j
    throw measureRefusal(
      'not-positive-definite',
      `unknown ${most + 1}`,
      values[open],
      `Nothing determines unknown ${most + 1}.`,
      'Add a measurement or a prior that does.',
    )
  }
  return Array.from(scale, (di, i) =>
    Array.from(scale, (dj, j) => {
      let sum = 0
      for (let k = 0; k < n; k++) sum += (right[i * n + k]! / values[k]!) * (right[j * n + k]! / values[k]!)
      return sum / (di * dj)
    }),
  )
}

const unusable = () =>
  measureRefusal(
    'not-finite',
    'start',
    'no rows',
    'At the start nothing can be computed, so there is nowhere to go from.',
    'Start from values for which the model can be worked out.',
  )
