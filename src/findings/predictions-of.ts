import { boxedIntegral } from './boxed-integral.ts'
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
 * @source own derivation: docs/methods/findings.md
 */
export function predictionsOf(history: History, hypotheses: readonly Hypothesis[]): readonly Prediction[] {
  const { knobs } = history
  const n = knobs.length
  const precision = new Float64Array(n * n)
  for (let i = 0; i < n; i++)
    for (let j = 0; j < n; j++) precision[i * n + j] = dot(knobs[i]!, knobs[j]!) + (i === j ? 1 : 0)
  const [low, high] = [
    new Float64Array(n).fill(Number.NEGATIVE_INFINITY),
    new Float64Array(n).fill(Number.POSITIVE_INFINITY),
  ]
  const place = (effect: Float64Array): Float64Array => {
    const pull = Float64Array.from(knobs, (column) => dot(column, effect))
    const turned = n === 0 ? pull : boxedIntegral(precision, pull, low, high).mean
    const all = new Float64Array(effect.length + n)
    all.set(effect)
    for (let k = 0; k < n; k++) {
      const column = knobs[k]!
      for (let i = 0; i < effect.length; i++) all[i]! -= turned[k]! * column[i]!
      all[effect.length + k] = turned[k]!
    }
    return all
  }
  const nothing = place(new Float64Array(history.residual.length))
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

function dot(a: Float64Array, b: Float64Array): number {
  let sum = 0
  for (let i = 0; i < a.length; i++) sum += a[i]! * b[i]!
  return sum
}
