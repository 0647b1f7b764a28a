import { logGamma } from './log-gamma.ts'
import { measureRefusal } from './measure-refusal.ts'
import { normalCdf } from './normal-cdf.ts'

const STEPS = 400
const CLOSE = 1e-16
const TINY = 1e-300
const AS_GOOD_AS_NORMAL = 1e7

/**
 * Probability that Student's t with these degrees of freedom lies below x; not a whole number of them is meant too.
 *
 * @param dof > 0; Infinity gives the normal distribution
 * @throws {Refusal} `not-positive` for dof ≤ 0
 * @source JCGM 100:2008, G.3; incomplete beta function by its continued fraction (Abramowitz, Stegun, 26.5.8 and 26.7.1)
 * @example studentCdf(1, 1) // 0.75
 */
export function studentCdf(x: number, dof: number): number {
  if (!(dof > 0))
    throw measureRefusal(
      'not-positive',
      'dof',
      dof,
      `${dof} degrees of freedom are none.`,
      'Read at least twice.',
    )
  if (dof >= AS_GOOD_AS_NORMAL) return normalCdf(x)
  const tail = betaRatio({ x: dof / (dof + x * x), rest: (x * x) / (dof + x * x) }, dof / 2, 0.5) / 2
  return x > 0 ? 1 - tail : tail
}

/** Regularised incomplete beta function I_x(a, b); `rest` is 1 − x with all its digits. */
function betaRatio({ x, rest }: { x: number; rest: number }, a: number, b: number): number {
  if (x <= 0) return 0
  if (rest <= 0) return 1
  const front = Math.exp(logGamma(a + b) - logGamma(a) - logGamma(b) + a * Math.log(x) + b * Math.log(rest))
  return x < (a + 1) / (a + b + 2) ? (front * fraction(x, a, b)) / a : 1 - (front * fraction(rest, b, a)) / b
}

/** The continued fraction, by the modified Lentz method. */
function fraction(x: number, a: number, b: number): number {
  let c = 1
  let d = 1 / away(1 - ((a + b) * x) / (a + 1))
  let value = d
  for (let m = 1; m <= STEPS; m++) {
    for (const numerator of [
      (m * (b - m) * x) / ((a + 2 * m - 1) * (a + 2 * m)),
      (-(a + m) * (a + b + m) * x) / ((a + 2 * m) * (a + 2 * m + 1)),
    ]) {
      d = 1 / away(1 + numerator * d)
      c = away(1 + numerator / c)
      value *= c * d
    }
    if (Math.abs(c * d - 1) < CLOSE) break
  }
  return value
}

const away = (x: number) => (Math.abs(x) < TINY ? TINY : x)
