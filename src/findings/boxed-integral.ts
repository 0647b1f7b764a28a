import { type Truncated, truncatedNormal } from './truncated-normal.ts'

/** An integral over a box, and where its mass lies. */
export interface BoxedIntegral {
  /** Log of ∫ exp(−½ xᵀΛx + ηᵀx) dx over the box. */
  readonly log: number
  readonly mean: Float64Array
  readonly variance: Float64Array
  /** The normal factors that stand in for the edges: a good start for an integral that is nearly the same. */
  readonly edges: Edges
}

/** Normal factors exp(push·x − ½ tightness·x²), one for each dimension. */
export interface Edges {
  readonly tightness: Float64Array
  readonly push: Float64Array
}

const SWEEPS = 30
const SETTLED = 3e-4
const found: Truncated = { logShare: 0, mean: 0, variance: 1 }

/**
 * The integral of a normal density over a box, all dimensions at once, by expectation propagation: the edge of each
 * dimension is stood in for by a normal factor that leaves the same share, mean and variance, round and round until they
 * agree. A dimension without ends costs nothing and is exact.
 *
 * @param precision Λ, symmetric and positive definite, row by row; n × n
 * @param pull η
 * @param start factors of the first dimensions, from an integral like this one
 * @source Minka: Expectation propagation for approximate Bayesian inference (2001); Cunningham, Hennig, Lacoste-Julien: Gaussian probabilities and expectation propagation (2011) (from memory)
 */
export function boxedIntegral(
  precision: Float64Array,
  pull: Float64Array,
  low: ArrayLike<number>,
  high: ArrayLike<number>,
  start?: Edges,
): BoxedIntegral {
  const n = pull.length
  const [tightness, push, share] = [new Float64Array(n), new Float64Array(n), new Float64Array(n)]
  const spread = Float64Array.from(precision)
  const together = Float64Array.from(pull)
  if (start)
    for (let i = 0; i < start.push.length; i++) {
      tightness[i] = start.tightness[i]!
      push[i] = start.push[i]!
      spread[i * n + i]! += tightness[i]!
      together[i]! += push[i]!
    }
  let logDet = -invert(spread, n)
  const mean = product(spread, together, n)
  const column = new Float64Array(n)
  for (let sweep = 0; sweep < SWEEPS; sweep++) {
    let moved = 0
    for (let i = 0; i < n; i++) {
      const [from, to] = [low[i]!, high[i]!]
      if (from === Number.NEGATIVE_INFINITY && to === Number.POSITIVE_INFINITY) continue
      const own = spread[i * n + i]!
      const loose = 1 / own - tightness[i]!
      if (!(loose > 0)) continue
      const lean = mean[i]! / own - push[i]!
      const at = lean / loose
      const deviation = 1 / Math.sqrt(loose)
      truncatedNormal((from - at) / deviation, (to - at) / deviation, found)
      const newMean = at + deviation * found.mean
      const newVariance = Math.max(1e-14, found.variance / loose)
      const newTightness = Math.max(0, 1 / newVariance - loose)
      const newPush = newMean / newVariance - lean
      share[i] =
        found.logShare +
        0.5 * Math.log((loose + newTightness) / loose) -
        (0.5 * (lean + newPush) ** 2) / (loose + newTightness) +
        (0.5 * lean * lean) / loose
      const more = newTightness - tightness[i]!
      const pushed = newPush - push[i]!
      tightness[i] = newTightness
      push[i] = newPush
      const scale = 1 + more * own
      moved = Math.max(moved, Math.abs(Math.log(scale)), Math.abs(newMean - mean[i]!) / deviation)
      const step = (pushed - more * mean[i]!) / scale
      for (let j = 0; j < n; j++) column[j] = spread[j * n + i]!
      for (let j = 0; j < n; j++) {
        const by = (more / scale) * column[j]!
        for (let k = 0; k < n; k++) spread[j * n + k]! -= by * column[k]!
        mean[j]! += step * column[j]!
      }
      logDet -= Math.log(scale)
    }
    if (moved < SETTLED) break
  }
  let log = 0.5 * (n * Math.log(2 * Math.PI) + logDet)
  const variance = new Float64Array(n)
  for (let i = 0; i < n; i++) {
    log += share[i]! + 0.5 * (pull[i]! + push[i]!) * mean[i]!
    variance[i] = spread[i * n + i]!
  }
  return { log, mean, variance, edges: { tightness, push } }
}

function product(matrix: Float64Array, x: Float64Array, n: number): Float64Array {
  const y = new Float64Array(n)
  for (let i = 0; i < n; i++) for (let j = 0; j < n; j++) y[i]! += matrix[i * n + j]! * x[j]!
  return y
}

/** Inverts in place, by Gauss and Jordan without exchange (positive definite); returns the log of the determinant. */
function invert(into: Float64Array, n: number): number {
  let logDet = 0
  for (let k = 0; k < n; k++) {
    const pivot = into[k * n + k]!
    logDet += Math.log(pivot)
    into[k * n + k] = 1
    for (let j = 0; j < n; j++) into[k * n + j]! /= pivot
    for (let i = 0; i < n; i++) {
      if (i === k) continue
      const factor = into[i * n + k]!
      into[i * n + k] = 0
      for (let j = 0; j < n; j++) into[i * n + j]! -= factor * into[k * n + j]!
    }
  }
  return logDet
}
