import { combine } from './combine.ts'
import { finite, measureRefusal } from './measure-refusal.ts'
import type { Measured } from './measured.ts'
import { standardUncertainty } from './spread.ts'

const OF_SPREAD = 0.01
const OF_VALUE = 6e-6

/**
 * The value of f with the inputs' errors carried through its slopes. Errors the inputs share stay shared.
 *
 * @param f must be smooth over a hundredth of each input's spread
 * @param gradient ∂f/∂xᵢ in the order of the inputs; by central differences when not given
 * @throws {Refusal} `not-finite` when f or a slope is; `size-mismatch` for a gradient of another length
 * @assumes f is straight over the spreads; compare with `monteCarlo` where it may not be
 * @source JCGM 100:2008, 5.1.2, 5.1.3 note 2, 5.2.2
 * @example propagate(([a, b]) => a * b, [exact(2), normal(0.1, 'b', 3)]).value // 6
 */
export function propagate(
  f: (x: readonly number[]) => number,
  inputs: readonly Measured[],
  gradient?: readonly number[],
): Measured {
  const at = inputs.map((input) => input.value)
  if (gradient && gradient.length !== inputs.length)
    throw measureRefusal(
      'size-mismatch',
      'gradient',
      gradient.length,
      `${gradient.length} slopes for ${inputs.length} inputs.`,
      'Give one slope per input.',
    )
  const value = finite(f(at), 'f')
  const slopes = gradient ?? at.map((_, i) => slope(f, at, i, standardUncertainty(inputs[i]!)))
  const sum = combine(inputs.map((of, i) => ({ of, times: slopes[i]! })))
  return { value, parts: sum.parts }
}

function slope(f: (x: readonly number[]) => number, at: readonly number[], i: number, u: number): number {
  if (u === 0) return 0
  const h = Math.max(OF_SPREAD * u, OF_VALUE * Math.abs(at[i]!))
  const moved = (by: number) => f(at.map((x, j) => (j === i ? x + by : x)))
  return finite((moved(h) - moved(-h)) / (2 * h), `slope of input ${i + 1}`)
}
