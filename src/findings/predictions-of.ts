import { choleskyOf } from '../measure/index.ts'
import type { History } from './history.ts'
import { type Hypothesis, sizeOf } from './hypothesis.ts'

/** What a hypothesis does to the readings, in standard deviations, with what adjusters could do taken out. */
export interface Prediction {
  /** At its best size. */
  readonly best: Float64Array
  /** At its usual size. */
  readonly usual: Float64Array
}

/**
 * Places of all hypotheses, first "no part at fault" at the origin: the distance of two places is how well these
 * readings tell them apart, the adjusters turned so as to make it least, each turn counted against its half range.
 *
 * @param history the story in which adjusters may stand anywhere
 * @source own derivation: docs/methods/findings.md; the matrix identity: Woodbury (textbooks)
 */
export function predictionsOf(history: History, hypotheses: readonly Hypothesis[]): readonly Prediction[] {
  const { knobs, residual } = history
  const n = residual.length
  // least of |d − K·t|² + |t|² over all turns t is dᵀ·(1 + K·Kᵀ)⁻¹·d
  const open = Array.from({ length: n }, (_, i) =>
    Array.from({ length: n }, (_, j) =>
      knobs.reduce((sum, column) => sum + column[i]! * column[j]!, i === j ? 1 : 0),
    ),
  )
  const triangle = Float64Array.from(choleskyOf(open).flat())
  const place = (effect: Float64Array): Float64Array => {
    const out = Float64Array.from(effect)
    for (let i = 0; i < n; i++) {
      for (let j = 0; j < i; j++) out[i]! -= triangle[i * n + j]! * out[j]!
      out[i]! /= triangle[i * n + i]!
    }
    return out
  }
  const nothing = place(new Float64Array(n))
  return [
    { best: nothing, usual: nothing },
    ...hypotheses.map(({ family, size, beside, main, sides }): Prediction => {
      const own = history.lately(main)
      const others = sides.map(history.lately)
      const best = own.map(
        (x, i) => size * x + others.reduce((sum, side, k) => sum + beside[k]! * side[i]!, 0),
      )
      const { mean } = sizeOf(family)
      return { best: place(best), usual: place(own.map((x) => (size < 0 ? -mean : mean) * x)) }
    }),
  ]
}
