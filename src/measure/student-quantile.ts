import { share } from './measure-refusal.ts'
import { studentCdf } from './student-cdf.ts'

const HALVINGS = 200

/**
 * The value below which Student's t lies with this probability. The two-sided factor for 95 % is the 0.975 quantile.
 *
 * @param probability strictly between 0 and 1
 * @param dof > 0, not necessarily whole
 * @throws {Refusal} `bad-share`; `not-positive` for dof ≤ 0
 * @source JCGM 100:2008, G.3.2
 * @example studentQuantile(0.975, 5) // 2.57058
 */
export function studentQuantile(probability: number, dof: number): number {
  share(probability, 'probability')
  const p = Math.max(probability, 1 - probability)
  let low = 0
  let high = 1
  while (studentCdf(high, dof) < p && high < Number.MAX_VALUE / 2) {
    low = high
    high *= 2
  }
  for (let i = 0; i < HALVINGS && high - low > Number.EPSILON * high; i++) {
    const middle = (low + high) / 2
    if (studentCdf(middle, dof) < p) low = middle
    else high = middle
  }
  const x = (low + high) / 2
  return probability < 0.5 ? -x : probability === 0.5 ? 0 : x
}
