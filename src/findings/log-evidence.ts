import { type BoxedIntegral, boxedIntegral, type Edges } from './boxed-integral.ts'
import type { History } from './history.ts'

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
export type Told = Pick<History, 'knobs' | 'low' | 'high' | 'residual'> & { readonly edges?: Edges }

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
  { knobs, low, high, residual, edges }: Told,
  unknowns: readonly Unknown[],
): BoxedIntegral {
  const columns = [...knobs, ...unknowns.map(({ column }) => column)]
  const n = columns.length
  const precision = new Float64Array(n * n)
  const pull = new Float64Array(n)
  const [from, to] = [new Float64Array(n), new Float64Array(n)]
  let constant = -0.5 * dot(residual, residual)
  for (let i = 0; i < n; i++) {
    const column = columns[i]!
    for (let j = 0; j <= i; j++) precision[i * n + j] = precision[j * n + i] = dot(column, columns[j]!)
    pull[i] = dot(column, residual)
    if (i < knobs.length) {
      precision[i * n + i]! += weak
      from[i] = low[i]!
      to[i] = high[i]!
      constant -= Math.log(to[i]! - from[i]!)
      continue
    }
    const { mean, ...ends } = unknowns[i - knobs.length]!
    precision[i * n + i]! += 1
    pull[i]! += mean
    from[i] = ends.low
    to[i] = ends.high
    constant -= 0.5 * (mean ** 2 + Math.log(2 * Math.PI))
  }
  if (n === 0) return { log: constant, mean: pull, variance: from, edges: { tightness: from, push: pull } }
  const found = boxedIntegral(precision, pull, from, to, edges)
  return { ...found, log: found.log + constant }
}

function dot(a: Float64Array, b: Float64Array): number {
  let sum = 0
  for (let i = 0; i < a.length; i++) sum += a[i]! * b[i]!
  return sum
}
