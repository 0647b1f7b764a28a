import { choleskyOf, type Matrix } from './cholesky-of.ts'
import { finite, measureRefusal } from './measure-refusal.ts'
import type { Measured, Part } from './measured.ts'

/**
 * Values with a given covariance, as values that share independent errors.
 *
 * @param sources one name per value
 * @param dof degrees of freedom of the covariance; Infinity when it is not from repeats
 * @throws {Refusal} `size-mismatch`; `not-positive-definite`; `not-finite`
 * @assumes with few degrees of freedom each independent error is taken as Student by itself
 * @source JCGM 102:2011, 3.21 (Cholesky factor); own derivation: docs/methods/uncertainty.md
 * @example covariance(...correlated([1, 2], [[4, 1], [1, 9]], ['a', 'b'])) // 1
 */
export function correlated(
  values: readonly number[],
  covariance: Matrix,
  sources: readonly string[],
  dof = Number.POSITIVE_INFINITY,
): Measured[] {
  if (covariance.length !== values.length || sources.length !== values.length)
    throw measureRefusal(
      'size-mismatch',
      'covariance',
      covariance.length,
      `${values.length} values, ${sources.length} names and a covariance of ${covariance.length} rows do not match.`,
      'Give one name and one row per value.',
    )
  const l = choleskyOf(covariance)
  const shape = Number.isFinite(dof) ? 'student' : 'normal'
  return values.map((value, i) => {
    const parts: Part[] = []
    for (const [j, source] of sources.entries()) {
      const effect = l[i]![j]!
      if (effect !== 0) parts.push({ source, effect, shape, dof })
    }
    return { value: finite(value, 'values'), parts }
  })
}

/**
 * Means of quantities that were read together, several times, with the correlation their scatter shows.
 *
 * @param observations one list per quantity, all of one length ≥ 2
 * @param source names the occasion
 * @throws {Refusal} `too-few`; `size-mismatch`; `not-positive-definite`; `not-finite`
 * @source JCGM 100:2008, 5.2.3 (17) and H.2
 * @example readTogether([[1, 2], [3, 5]], 'both gauges')[1].value // 4
 */
export function readTogether(observations: Matrix, source: string): Measured[] {
  const n = observations[0]?.length ?? 0
  if (n < 2)
    throw measureRefusal('too-few', 'observations', n, `${n} rounds show no scatter.`, 'Read at least twice.')
  const means = observations.map((list) => {
    if (list.length !== n)
      throw measureRefusal(
        'size-mismatch',
        'observations',
        list.length,
        `One quantity was read ${list.length} times, another ${n} times.`,
        'Leave out the round that is not complete.',
      )
    let sum = 0
    for (const value of list) sum += finite(value, 'observations')
    return sum / n
  })
  const covariance = observations.map((a, i) =>
    observations.map((b, j) => {
      let sum = 0
      for (let t = 0; t < n; t++) sum += (a[t]! - means[i]!) * (b[t]! - means[j]!)
      return sum / (n * (n - 1))
    }),
  )
  const names = observations.map((_, i) => `${source}, ${i + 1}`)
  return correlated(means, covariance, names, n - 1)
}
