import { type BoxedIntegral, boxedIntegral, type Edges } from './boxed-integral.ts'
import { dot } from './dot.ts'
import type { History } from './history.ts'
import type { KnobProducts } from './knob-products.ts'

/** Keeps an adjuster that nothing was read about from having no end. @source own choice */
const weak = 0.01

/** One more unknown beside the adjusters: a fault's size, in units of its spread. */
export interface Unknown {
  readonly column: Float64Array
  readonly mean: number
  readonly low: number
  readonly high: number
}

/** A story as far as its evidence needs it. */
export type Told = Pick<History, 'knobs' | 'low' | 'high' | 'residual' | 'products'> & {
  readonly edges?: Edges
}

/** What every integral of a story has in common. @source definition */
export function knobProducts({
  knobs,
  low,
  high,
  residual,
}: Pick<History, 'knobs' | 'low' | 'high' | 'residual'>): KnobProducts {
  const n = knobs.length
  const precision = new Float64Array(n * n)
  let constant = -0.5 * dot(residual, residual)
  for (let i = 0; i < n; i++) {
    for (let j = 0; j <= i; j++) precision[i * n + j] = precision[j * n + i] = dot(knobs[i]!, knobs[j]!)
    precision[i * n + i]! += weak
    constant -= Math.log(high[i]! - low[i]!)
  }
  return { precision, pull: Float64Array.from(knobs, (column) => dot(column, residual)), constant }
}

/**
 * Log density of what was read, given the limits, with some unknowns beside the adjusters; and where all of them lie,
 * adjusters first.
 *
 * @source own derivation: docs/methods/findings.md
 */
export function logEvidence(history: History, unknowns: readonly Unknown[]): BoxedIntegral {
  const all = integralOf(history, unknowns)
  return { ...all, log: all.log + history.logScale - history.logSet }
}

/** The integral over adjusters in their box and unknowns in theirs, without the scale of the rows. */
export function integralOf(
  { knobs, low, high, residual, edges, products }: Told,
  unknowns: readonly Unknown[],
): BoxedIntegral {
  const k = knobs.length
  const n = k + unknowns.length
  const precision = new Float64Array(n * n)
  const pull = new Float64Array(n)
  const [from, to] = [new Float64Array(n), new Float64Array(n)]
  for (let i = 0; i < k; i++) precision.set(products.precision.subarray(i * k, (i + 1) * k), i * n)
  pull.set(products.pull)
  from.set(low)
  to.set(high)
  let { constant } = products
  unknowns.forEach(({ column, mean, ...ends }, u) => {
    const i = k + u
    for (let j = 0; j <= i; j++)
      precision[i * n + j] = precision[j * n + i] = dot(column, j < k ? knobs[j]! : unknowns[j - k]!.column)
    precision[i * n + i]! += 1
    pull[i] = dot(column, residual) + mean
    from[i] = ends.low
    to[i] = ends.high
    constant -= 0.5 * (mean ** 2 + Math.log(2 * Math.PI))
  })
  if (n === 0) return { log: constant, mean: pull, variance: from, edges: { tightness: from, push: pull } }
  const found = boxedIntegral(precision, pull, from, to, edges)
  return { ...found, log: found.log + constant }
}
