import type { Measured, Part } from './measured.ts'
import { mixtureOf, type NormalMixture, smoothedBox, smoothedBoxNothing } from './normal-mixture.ts'
import { partsBySource } from './spread.ts'

/**
 * The distribution of the error of one value about zero; symmetric.
 *
 * @source definition
 */
export interface ErrorDistribution {
  /** Probability that the error lies below x. */
  readonly cdf: (x: number) => number
  /** Standard uncertainty in the sense of the parts (a Student part by its scale). */
  readonly u: number
}

/**
 * Small boxes together act as a normal error: folded, smallest first, while the sum of their fourth powers stays
 * below this share of u⁴. The excess kurtosis lost is 1.2 times that, so the probability at any point is off by
 * less than 1.2e-3/24 · max |(z³ − 3z)φ(z)| < 3e-5.
 */
const FOLDED = 1e-3
/** So few boxes are worked out one by one. */
const FEW = 4
/** A part of another shape this small against the whole acts as a normal one. */
const SMALL = 0.03
const CELLS = 2048
const REACH = 8
const FEWEST_NODES = 16
const MOST_NODES = 256

/**
 * What the error of a value really looks like: boxes stay boxes, means of repeats stay Student, and the sum is
 * worked out from them, not taken as normal.
 *
 * @source JCGM 101:2008, 5.2 (the distribution of a sum, here for independent symmetric parts); own derivation: docs/methods/uncertainty.md
 * @example errorDistribution(rectangular(1, 'a')).cdf(0.5) // 0.75
 */
export function errorDistribution(m: Measured): ErrorDistribution {
  const known = memory.get(m.parts)
  if (known) return known
  const made = distributionOf(m)
  memory.set(m.parts, made)
  return made
}

/** A value is asked for its interval, its probability and its provability: the same parts, the same answer. */
const memory = new WeakMap<readonly Part[], ErrorDistribution>()

function distributionOf(m: Measured): ErrorDistribution {
  const parts = [...partsBySource(m).values()].filter((part) => part.effect !== 0)
  let variance = 0
  for (const { effect } of parts) variance += effect * effect
  const u = Math.sqrt(variance)
  let folded = 0
  const boxes: number[] = []
  const swings: number[] = []
  const students: Part[] = []
  const small = foldedBoxes(parts, u)
  for (const part of parts) {
    const size = Math.abs(part.effect)
    const spread = varianceOf(part)
    if (part.shape === 'normal' || (Number.isFinite(spread) && size < SMALL * u) || small.has(part))
      folded += spread
    else if (part.shape === 'rectangular') boxes.push(size * Math.sqrt(3))
    else if (part.shape === 'triangular') boxes.push(size * Math.sqrt(1.5), size * Math.sqrt(1.5))
    else if (part.shape === 'arcsine') swings.push(size * Math.SQRT2)
    else students.push(part)
  }
  boxes.sort((a, b) => b - a)
  const smooth = mixtureOf(folded, students)
  const swingFirst = folded === 0 && students.length === 0 && boxes.length === 0 ? swings.shift() : undefined
  const start = swingFirst === undefined ? startOf(smooth, boxes[0]) : swing(swingFirst)
  const kernels = [...boxes.slice(1).map(boxKernel), ...swings.map((a) => swingKernel(a, nodesFor(a, u)))]
  const cdf = kernels.length === 0 ? start : onGrid(start, kernels, u)
  return { u, cdf: (x) => (Number.isFinite(x) ? cdf(x) : x > 0 ? 1 : 0) }
}

function foldedBoxes(parts: readonly Part[], u: number): ReadonlySet<Part> {
  const folded = new Set<Part>()
  let sum = 0
  const boxes = parts.filter(({ shape }) => shape === 'rectangular')
  if (boxes.length <= FEW) return folded
  for (const part of boxes.sort((a, b) => Math.abs(a.effect) - Math.abs(b.effect))) {
    sum += (part.effect / u) ** 4
    if (sum > FOLDED) break
    folded.add(part)
  }
  return folded
}

/** A mean of repeats varies by more than its scale: ν/(ν − 2). */
const varianceOf = ({ effect, shape, dof }: Part) =>
  effect * effect * (shape !== 'student' ? 1 : dof > 2 ? dof / (dof - 2) : Number.POSITIVE_INFINITY)

/** Normal parts, repeats and the largest box: without a grid. */
const startOf = (smooth: NormalMixture, box: number | undefined) => (x: number) =>
  box === undefined ? smoothedBoxNothing(smooth, x) : smoothedBox(smooth, box, x)

/** A sine of amplitude a caught at any moment. */
const swing = (a: number) => (x: number) => (x >= a ? 1 : x <= -a ? 0 : 0.5 + Math.asin(x / a) / Math.PI)

/** Turns the values of F on the grid into those of F smeared by one more part. */
type Kernel = (f: Float64Array, h: number) => Float64Array

/** Mean of F over x ± a, from its running integral. */
const boxKernel =
  (a: number): Kernel =>
  (f, h) => {
    const sum = new Float64Array(f.length)
    for (let i = 1; i < f.length; i++) sum[i] = sum[i - 1]! + ((f[i - 1]! + f[i]!) * h) / 2
    const top = f.length - 1
    const integral = (at: number) => {
      if (at <= 0) return at * h * f[0]!
      if (at >= top) return sum[top]! + (at - top) * h * f[top]!
      const i = Math.floor(at)
      const t = at - i
      return sum[i]! + h * t * (f[i]! + ((f[i + 1]! - f[i]!) * t) / 2)
    }
    return f.map((_, i) => (integral(i + a / h) - integral(i - a / h)) / (2 * a))
  }

/** The smoother the rest, the fewer angles give the mean. */
const nodesFor = (a: number, u: number) =>
  Math.min(
    MOST_NODES,
    Math.ceil(FEWEST_NODES * (1 + a / Math.sqrt(Math.max(1e-9 * u * u, u * u - (a * a) / 2)))),
  )

/** Mean of F over x + a·cos θ, θ even over a half turn. */
const swingKernel =
  (a: number, nodes: number): Kernel =>
  (f, h) => {
    const shifts = Array.from(
      { length: nodes },
      (_, j) => (a * Math.cos(((2 * j + 1) * Math.PI) / (2 * nodes))) / h,
    )
    return f.map((_, i) => {
      let sum = 0
      for (const shift of shifts) sum += between(f, i + shift)
      return sum / nodes
    })
  }

function between(f: Float64Array, at: number): number {
  if (at <= 0) return f[0]!
  if (at >= f.length - 1) return f[f.length - 1]!
  const i = Math.floor(at)
  return f[i]! + (f[i + 1]! - f[i]!) * (at - i)
}

/** Beyond the grid the first part's own tail stands in: there the rest changes it by less than a hundredth. */
function onGrid(start: (x: number) => number, kernels: readonly Kernel[], u: number): (x: number) => number {
  const reach = REACH * u
  const h = (2 * reach) / CELLS
  let f = new Float64Array(CELLS + 1)
  for (let i = 0; i < CELLS / 2; i++) {
    f[i] = start(-reach + i * h)
    f[CELLS - i] = 1 - f[i]!
  }
  f[CELLS / 2] = 0.5
  for (const kernel of kernels) f = kernel(f, h) as Float64Array<ArrayBuffer>
  return (x) => (Math.abs(x) >= reach ? start(x) : between(f, (x + reach) / h))
}
