import { choleskyOf, type Measured, seededRandom } from '../../measure/index.ts'
import { Refusal } from '../../quantity/index.ts'
import { cornerAt } from './corner-at.ts'
import type { FittedCorner } from './fitted-corner.ts'
import type { Observable } from './observable.ts'

/** Pairs of places, to either side of the fitted corner, at which the slopes are looked at again. */
const pairs = 3
/** The same places each time. */
const seed = 20261125

/**
 * What a fitted corner says of anything that can be asked of it, with its spread: the effect of a move, a slope, bump steer.
 * Two answers of one fit share their errors. Slopes differ from place to place: by how much the spread grows when they are
 * averaged over where the corner may lie is a further error of this answer alone.
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
  const seen = question.at(cornerAt(unknowns, values))
  const { value } = seen
  if (covariance.every((row) => row.every((x) => x === 0))) return { value, parts: [] }
  const root = choleskyOf(covariance)
  const effects = effectsOf(root, seen.slopes)
  const straight = squares(effects)
  const parts = effects.flatMap((effect, k) => (effect === 0 ? [] : [part(`${source}, ${k + 1}`, effect)]))
  if (straight === 0) return { value, parts }
  const { normal } = seededRandom(seed)
  const looked = [straight]
  for (let pair = 0; pair < pairs; pair++) {
    const z = values.map(normal)
    const shift = root.map((row) => row.reduce((sum, x, k) => sum + x * z[k]!, 0))
    for (const side of [1, -1])
      try {
        const place = values.map((x, i) => x + side * shift[i]!)
        looked.push(squares(effectsOf(root, question.at(cornerAt(unknowns, place)).slopes)))
      } catch (error) {
        // a corner that cannot be is none that the vehicle may have
        if (!(error instanceof Refusal)) throw error
      }
  }
  const mean = looked.reduce((sum, x) => sum + x, 0) / looked.length
  const curve = Math.sqrt(Math.max(0, mean - straight))
  return {
    value,
    parts: curve === 0 ? parts : [...parts, part(`${source}, curve of ${question.says}`, curve)],
  }
}

const part = (source: string, effect: number) =>
  ({ source, effect, shape: 'normal', dof: Number.POSITIVE_INFINITY }) as const

/** Slopes along the columns of a root of the covariance. */
const effectsOf = (root: readonly (readonly number[])[], slopes: ArrayLike<number>): number[] =>
  root.map((_, k) => root.reduce((sum, row, i) => sum + slopes[i]! * row[k]!, 0))

const squares = (list: readonly number[]): number => list.reduce((sum, x) => sum + x * x, 0)
