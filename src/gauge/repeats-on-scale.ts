import type { Shape } from '../measure/index.ts'
import type { ReadingErrors } from './reading-errors.ts'

/** What repeats on one scale leave of a value. */
export interface OnScale {
  readonly mean: number
  readonly u: number
  /** The simple shape nearest to what is left. */
  readonly shape: Shape
}

const CELLS = 1000
/** Excess kurtosis of a box is −1.2, of a triangle −0.6, of a normal 0; between them half way. */
const BOX = -0.9
const TRIANGLE = -0.3

/**
 * What several readings of one value on a stepped scale say together. Each says that the value lies within
 * placing + half a step of it, less surely towards the ends:
 *
 *     p(x) ∝ Π clamp((placing + step/2 − |x − rᵢ|) / (2·min(placing, step/2)), 0 … 1)
 *
 * so two readings a step apart say more than two that are the same: the value lies near the edge between them.
 *
 * @param values at least one
 * @returns null where no value could have given all of them
 * @source Bayes' theorem with a flat prior; own derivation: docs/methods/camber-inclinometer.md
 */
export function repeatsOnScale(
  values: readonly number[],
  { resolution, placing }: ReadingErrors,
): OnScale | null {
  const reach = placing + resolution / 2
  const edge = 2 * Math.min(placing, resolution / 2)
  const [from, to] = [Math.max(...values) - reach, Math.min(...values) + reach]
  if (!(to > from)) return null
  const h = (to - from) / CELLS
  const weights = Array.from({ length: CELLS }, (_, i) => {
    const x = from + (i + 0.5) * h
    return values.reduce((p, r) => p * likelihood(reach - Math.abs(x - r), edge), 1)
  })
  const all = weights.reduce((sum, w) => sum + w, 0)
  if (!(all > 0)) return null
  const moment = (about: number, power: number) =>
    weights.reduce((sum, w, i) => sum + w * (from + (i + 0.5) * h - about) ** power, 0) / all
  const mean = moment(0, 1)
  // a cell is a little box of its own
  const variance = moment(mean, 2) + h ** 2 / 12
  const kurtosis = moment(mean, 4) / variance ** 2 - 3
  return {
    mean,
    u: Math.sqrt(variance),
    shape: kurtosis < BOX ? 'rectangular' : kurtosis < TRIANGLE ? 'triangular' : 'normal',
  }
}

const likelihood = (inside: number, edge: number): number =>
  inside <= 0 ? 0 : edge > 0 ? Math.min(1, inside / edge) : 1
