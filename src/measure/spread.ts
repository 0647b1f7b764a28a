import { measureRefusal } from './measure-refusal.ts'
import type { Measured, Part } from './measured.ts'

/** The parts of a value, each source once. */
export function partsBySource(m: Measured): Map<string, Part> {
  const parts = new Map<string, Part>()
  for (const part of m.parts) {
    const before = parts.get(part.source)
    parts.set(part.source, before ? { ...part, effect: before.effect + part.effect } : part)
  }
  return parts
}

/**
 * Combined standard uncertainty: root of the sum of the squared effects, each source once.
 *
 * @returns SI, ≥ 0
 * @source JCGM 100:2008, 5.1.2
 * @example standardUncertainty({ value: 0, parts: [...normal(3, 'a').parts, ...normal(4, 'b').parts] }) // 5
 */
export function standardUncertainty(m: Measured): number {
  let variance = 0
  for (const { effect } of partsBySource(m).values()) variance += effect * effect
  return Math.sqrt(variance)
}

/**
 * Effective degrees of freedom: ν = u⁴ / Σ (uᵢ⁴/νᵢ). Infinity when nothing comes from repeats.
 *
 * @source JCGM 100:2008, G.4.1 (G.2b)
 * @example effectiveDof(repeats([1, 2, 4], 'a')) // 2
 */
export function effectiveDof(m: Measured): number {
  let variance = 0
  let weighted = 0
  for (const { effect, dof } of partsBySource(m).values()) {
    variance += effect ** 2
    weighted += effect ** 4 / dof
  }
  return weighted === 0 ? Number.POSITIVE_INFINITY : variance ** 2 / weighted
}

/**
 * Covariance of two values: the sum over the sources they share of the product of effects.
 *
 * @source JCGM 100:2008, F.1.2.3
 * @example covariance(normal(2, 'floor'), normal(3, 'floor')) // 6
 */
export function covariance(a: Measured, b: Measured): number {
  const of = partsBySource(a)
  let sum = 0
  for (const part of partsBySource(b).values()) sum += (of.get(part.source)?.effect ?? 0) * part.effect
  return sum
}

/**
 * Covariances of several values with one another; symmetric, never below zero along any direction.
 *
 * @source JCGM 102:2011, 3.11
 * @example covarianceMatrix([normal(2, 'floor'), normal(3, 'floor')])[0][1] // 6
 */
export function covarianceMatrix(ms: readonly Measured[]): number[][] {
  const of = ms.map(partsBySource)
  return of.map((a) =>
    of.map((b) => {
      let sum = 0
      for (const [source, part] of a) sum += part.effect * (b.get(source)?.effect ?? 0)
      return sum
    }),
  )
}

/**
 * Correlation of two values, −1 … 1.
 *
 * @throws {Refusal} `not-positive` when one of them has no uncertainty
 * @source JCGM 100:2008, 5.2.2 (14)
 * @example correlation(normal(2, 'floor'), normal(3, 'floor')) // 1
 */
export function correlation(a: Measured, b: Measured): number {
  const product = standardUncertainty(a) * standardUncertainty(b)
  if (product > 0) return Math.min(1, Math.max(-1, covariance(a, b) / product))
  throw measureRefusal(
    'not-positive',
    'u',
    product,
    'A value without uncertainty has no correlation with another.',
    'Compare values that both carry a spread.',
  )
}

/**
 * One line of a budget.
 *
 * @source definition
 */
export interface BudgetLine {
  readonly source: string
  /** Signed standard uncertainty, SI. */
  readonly effect: number
  /** Share of the variance, 0 … 1; the shares add to 1. */
  readonly share: number
}

/**
 * What the spread is made of, largest first.
 *
 * @source JCGM 100:2008, H.1.7 (table of components)
 * @example budget({ value: 0, parts: [...normal(3, 'a').parts, ...normal(4, 'b').parts] })[0].source // b
 */
export function budget(m: Measured): BudgetLine[] {
  const parts = [...partsBySource(m).values()].filter((part) => part.effect !== 0)
  let variance = 0
  for (const { effect } of parts) variance += effect * effect
  return parts
    .map(({ source, effect }) => ({ source, effect, share: effect ** 2 / variance }))
    .sort((a, b) => b.share - a.share)
}
