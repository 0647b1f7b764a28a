import { finite, measureRefusal } from './measure-refusal.ts'
import type { Measured } from './measured.ts'

/**
 * The mean of repeated readings, with what their own scatter says (type A): s/√n, n − 1 degrees of freedom.
 * Readings that all agree give no spread: the display's resolution must be added beside it.
 *
 * @param values SI, at least two
 * @throws {Refusal} `too-few`; `not-finite`
 * @source JCGM 100:2008, 4.2.3
 * @example repeats([1, 2, 3], 'camber, front left, repeats').value // 2
 */
export function repeats(values: readonly number[], source: string): Measured {
  const n = values.length
  if (n < 2)
    throw measureRefusal(
      'too-few',
      'values',
      n,
      `${n} reading${n === 1 ? '' : 's'} cannot show a scatter.`,
      'Read at least twice, or state the scatter from experience.',
    )
  let mean = 0
  for (const value of values) mean += finite(value, 'values') / n
  let squares = 0
  for (const value of values) squares += (value - mean) ** 2
  const effect = Math.sqrt(squares / (n - 1) / n)
  return { value: mean, parts: effect === 0 ? [] : [{ source, effect, shape: 'student', dof: n - 1 }] }
}
