import { normalCdf, normalDensity } from '../measure/index.ts'

const root = Math.sqrt(2 * Math.PI)
const CONTINUED_FROM = 60
const FAR = 5
const NARROW = 1e-3

/** What is left of a normal distribution between two ends: log of its share, mean and variance. */
export interface Truncated {
  logShare: number
  mean: number
  variance: number
}

/** (1 − Φ(a)) / φ(a), a ≥ 0. */
function mills(a: number): number {
  if (a < FAR) return (1 - normalCdf(a)) / normalDensity(a)
  let fraction = a
  for (let k = CONTINUED_FROM; k > 0; k--) fraction = a + k / fraction
  return 1 / fraction
}

/**
 * Share, mean and variance of a standard normal variable between two ends, right far out in the tails too.
 *
 * @param low may be −∞
 * @param high above `low`; may be ∞
 * @param into what is found is written here, so that a loop makes no rubbish
 * @source Barr, Sherrill: Mean and variance of truncated normal distributions, The American Statistician 53 (1999) (from memory); Mills' ratio by its continued fraction
 */
export function truncatedNormal(low: number, high: number, into: Truncated): void {
  if (low + high < 0) {
    // the side with more of the mass, mirrored: low is then the end that is nearer to the middle
    truncatedNormal(-high, -low, into)
    into.mean = -into.mean
    return
  }
  const width = high - low
  if (width * Math.max(1, low) < NARROW) {
    const middle = (low + high) / 2
    into.logShare = Math.log(width / root) - (middle * middle) / 2
    into.mean = middle - (middle * width * width) / 12
    into.variance = (width * width) / 12
    return
  }
  if (low <= 0) {
    const share = normalCdf(high) - normalCdf(low)
    const [a, b] = [normalDensity(low), normalDensity(high)]
    const mean = (a - b) / share
    into.logShare = Math.log(share)
    into.mean = mean
    const ends = (Number.isFinite(low) ? low * a : 0) - (Number.isFinite(high) ? high * b : 0)
    into.variance = Math.max(1e-12, 1 + ends / share - mean * mean)
    return
  }
  // both above the middle: everything relative to the density at the lower end
  const fall = Number.isFinite(high) ? Math.exp(-((high - low) * (high + low)) / 2) : 0
  const share = mills(low) - (fall > 0 ? fall * mills(high) : 0)
  const mean = (1 - fall) / share
  const ends = low - (fall > 0 ? high * fall : 0)
  into.logShare = Math.log(share / root) - (low * low) / 2
  into.mean = mean
  into.variance = Math.max(1e-12, 1 + ends / share - mean * mean)
}
