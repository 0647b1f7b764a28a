import { choleskyOf, type Measured } from '../../measure/index.ts'
import { cornerAt } from './corner-at.ts'
import type { FittedCorner } from './fitted-corner.ts'
import type { Observable } from './observable.ts'

/**
 * What a fitted corner says of anything that can be asked of it, with its spread: the effect of a move, a slope, bump steer.
 * Two answers of one fit share their errors.
 *
 * @param source names the fit's errors; the same for both sides of a vehicle that share their geometry
 * @throws {Refusal} `unreachable`, `not-for-this-layout` and what else the question throws on this corner
 * @source JCGM 100:2008, 5.1.2 with 5.2.2 over the unknowns' covariance; docs/methods/fit.md
 */
export function foreseenOf(
  { unknowns, values, covariance }: FittedCorner,
  question: Observable,
  source = 'fit of the corner',
): Measured {
  const { value, slopes } = question.at(cornerAt(unknowns, values))
  const root = choleskyOf(covariance)
  const parts = root.flatMap((_, k) => {
    const effect = root.reduce((sum, row, i) => sum + slopes[i]! * row[k]!, 0)
    return effect === 0
      ? []
      : [{ source: `${source}, ${k + 1}`, effect, shape: 'normal' as const, dof: Number.POSITIVE_INFINITY }]
  })
  return { value, parts }
}
