import { boxedIntegral } from './boxed-integral.ts'
import type { History } from './history.ts'
import type { Hypothesis } from './hypothesis.ts'
import { suspectPriors } from './suspect-priors.ts'
import type { VehicleModel } from './vehicle-model.ts'

/** What a hypothesis does to the readings, in standard deviations, with what adjusters could do taken out. */
export interface Prediction {
  /** At its best size. */
  readonly best: Float64Array
  /** At its usual size. */
  readonly typical: Float64Array
}

const free = { low: Number.NEGATIVE_INFINITY, high: Number.POSITIVE_INFINITY }

/**
 * Places of all hypotheses, first "no part at fault" at the origin: the distance of two places is how well these
 * readings tell them apart, the adjusters turned so as to make it least, each turn counted against its half range.
 *
 * @source own derivation: docs/methods/findings.md
 */
export function predictionsOf(
  history: History,
  now: VehicleModel,
  hypotheses: readonly Hypothesis[],
): readonly Prediction[] {
  const { knobs } = history
  const n = knobs.length
  const precision = new Float64Array(n * n)
  for (let i = 0; i < n; i++)
    for (let j = 0; j < n; j++) precision[i * n + j] = dot(knobs[i]!, knobs[j]!) + (i === j ? 1 : 0)
  const place = (effect: Float64Array): Float64Array => {
    const pull = Float64Array.from(knobs, (column) => dot(column, effect))
    const turned =
      n === 0 ? pull : boxedIntegral(precision, pull, new Array(n).fill(free.low), new Array(n).fill(free.high)).mean
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
    { best: nothing, typical: nothing },
    ...hypotheses.map(({ family, size, beside }): Prediction => {
      const prior = { ...suspectPriors[family.suspect.kind], ...family.size }
      const usual = prior.mean
      const main = history.lately(now.rate(family.main))
      const sides = family.also.map(({ way }) => history.lately(now.rate(way)))
      const best = main.map((x, i) => size * x + sides.reduce((sum, side, k) => sum + beside[k]! * side[i]!, 0))
      return { best: place(best), typical: place(main.map((x) => usual * x)) }
    }),
  ]
}

function dot(a: Float64Array, b: Float64Array): number {
  let sum = 0
  for (let i = 0; i < a.length; i++) sum += a[i]! * b[i]!
  return sum
}
