import { type Draws, drawJoint } from './draw-joint.ts'
import type { Interval } from './interval.ts'
import { finite, measureRefusal, share } from './measure-refusal.ts'
import type { Measured } from './measured.ts'

/**
 * What the draws of f say.
 *
 * @source definition
 */
export interface DrawnResult {
  readonly mean: number
  readonly standardUncertainty: number
  /** Shortest interval with the coverage asked for. */
  readonly shortest: Interval
  /** Equal tails on both sides. */
  readonly symmetric: Interval
  readonly draws: number
}

const FEWEST = 100

/**
 * The distribution of f when the inputs' errors are drawn: for models too bent for slopes.
 *
 * @param options draws (at least 100), seed, coverage (0.95)
 * @throws {Refusal} `too-few`; `bad-share`; `not-finite` when f is for a draw; `source-conflict`
 * @source JCGM 101:2008, 7.5–7.7
 * @example monteCarlo(([x]) => x ** 2, [normal(1, 'x')], { draws: 100, seed: 1 }).draws // 100
 */
export function monteCarlo(
  f: (x: readonly number[]) => number,
  inputs: readonly Measured[],
  { draws, seed, coverage = 0.95 }: Draws & { readonly coverage?: number },
): DrawnResult {
  share(coverage, 'coverage')
  if (!(draws >= FEWEST))
    throw measureRefusal(
      'too-few',
      'draws',
      draws,
      `${draws} draws show no interval.`,
      `Ask for at least ${FEWEST}.`,
    )
  const k = inputs.length
  const x = drawJoint(inputs, { draws, seed })
  const y = new Float64Array(draws)
  const row = new Array<number>(k)
  let mean = 0
  for (let d = 0; d < draws; d++) {
    for (let i = 0; i < k; i++) row[i] = x[d * k + i]!
    y[d] = finite(f(row), 'f')
    mean += y[d]! / draws
  }
  let squares = 0
  for (const value of y) squares += (value - mean) ** 2
  y.sort()
  const span = Math.min(draws - 1, Math.round(coverage * draws))
  const from = (i: number): Interval => ({ low: y[i]!, high: y[i + span]! })
  let shortest = 0
  for (let i = 1; i + span < draws; i++)
    if (y[i + span]! - y[i]! < y[shortest + span]! - y[shortest]!) shortest = i
  return {
    mean,
    standardUncertainty: Math.sqrt(squares / (draws - 1)),
    shortest: from(shortest),
    symmetric: from(Math.floor((draws - 1 - span) / 2)),
    draws,
  }
}
