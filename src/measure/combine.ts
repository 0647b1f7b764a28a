import { finite, measureRefusal } from './measure-refusal.ts'
import type { Measured, Part } from './measured.ts'

/**
 * One summand: a measured value times a factor.
 *
 * @source definition
 */
export interface Term {
  readonly of: Measured
  readonly times: number
}

/**
 * A weighted sum of measured values. Parts of one source are the same error, so their effects add with their
 * signs before anything is squared: a zero common to both wheels leaves their difference.
 *
 * @param terms values and factors
 * @param plus added to the value, exact
 * @throws {Refusal} `not-finite`; `source-conflict` when one source appears with two shapes
 * @source JCGM 100:2008, 5.2.2 and F.1.2.3
 * @example combine([{ of: normal(0.1, 'zero', 1), times: 1 }, { of: normal(0.1, 'zero', 3), times: -1 }]).parts.length // 0
 */
export function combine(terms: readonly Term[], plus = 0): Measured {
  const sum = new Map<string, Part>()
  const largest = new Map<string, number>()
  let value = finite(plus, 'plus')
  for (const { of, times } of terms) {
    value += finite(times, 'times') * finite(of.value, 'value')
    for (const part of of.parts) {
      const before = sum.get(part.source)
      if (before && (before.shape !== part.shape || before.dof !== part.dof)) throw conflict(part)
      const effect = times * finite(part.effect, part.source)
      largest.set(part.source, Math.max(largest.get(part.source) ?? 0, Math.abs(effect)))
      sum.set(part.source, { ...part, effect: (before?.effect ?? 0) + effect })
    }
  }
  const parts: Part[] = []
  for (const part of sum.values())
    if (Math.abs(part.effect) > ROUNDING * largest.get(part.source)!) parts.push(part)
  return { value, parts }
}

/** What is left of an error that cancels, relative to what it was, is the machine's rounding. */
const ROUNDING = 1e-12

const conflict = (part: Part) =>
  measureRefusal(
    'source-conflict',
    part.source,
    part.shape,
    `The error “${part.source}” appears with two different shapes or degrees of freedom.`,
    'Give two different errors two names.',
  )
