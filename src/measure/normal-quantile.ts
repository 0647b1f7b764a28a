import { share } from './measure-refusal.ts'
import { normalCdf, normalDensity } from './normal-cdf.ts'

const STEPS = 60

/**
 * The value below which a standard normal variable lies with this probability; the inverse of `normalCdf`.
 *
 * @param probability strictly between 0 and 1
 * @throws {Refusal} `bad-share`
 * @source definition; Halley's iteration on `normalCdf`
 * @example normalQuantile(0.975) // 1.95996
 */
export function normalQuantile(probability: number): number {
  share(probability, 'probability')
  const p = Math.min(probability, 1 - probability)
  // A start on the near side: the tail behaves like exp(−x²/2)/(x√2π).
  let x = p > 0.02 ? 0 : -Math.sqrt(-2 * Math.log(p))
  for (let i = 0; i < STEPS; i++) {
    const step = (normalCdf(x) - p) / normalDensity(x)
    const next = x - step / (1 + (x * step) / 2)
    if (Math.abs(next - x) <= 2 * Number.EPSILON * Math.abs(next)) break
    x = next
  }
  return probability <= 0.5 ? x : -x
}
