/** Numerator and denominator of the rational part, highest power first. */
const NUMERATOR = [
  3.52624965998911e-2, 0.700383064443688, 6.37396220353165, 33.912866078383, 112.079291497871,
  221.213596169931, 220.206867912376,
]
const DENOMINATOR = [
  8.83883476483184e-2, 1.75566716318264, 16.064177579207, 86.7807322029461, 296.564248779674,
  637.333633378831, 793.826512519948, 440.413735824752,
]
const RATIONAL_BELOW = 5 * Math.SQRT2
const NOTHING_BEYOND = 37
const CONTINUED_FROM = 30

/**
 * Probability that a standard normal variable lies below x.
 *
 * @source Hart et al.: Computer Approximations (1968), algorithm 5666, as printed by West: Better approximations to cumulative normal functions (2005), from memory; held against the power series in the tests
 * @example normalCdf(0) // 0.5
 */
export function normalCdf(x: number): number {
  const size = Math.abs(x)
  let tail = 0
  if (size <= NOTHING_BEYOND) {
    const exponential = Math.exp((-size * size) / 2)
    if (size < RATIONAL_BELOW)
      tail = (exponential * polynomial(NUMERATOR, size)) / polynomial(DENOMINATOR, size)
    else {
      let fraction = size
      for (let k = CONTINUED_FROM; k > 0; k--) fraction = size + k / fraction
      tail = exponential / fraction / Math.sqrt(2 * Math.PI)
    }
  }
  return x > 0 ? 1 - tail : tail
}

function polynomial(coefficients: readonly number[], x: number): number {
  let sum = 0
  for (const c of coefficients) sum = sum * x + c
  return sum
}

/**
 * Density of the standard normal variable.
 *
 * @source definition
 * @example normalDensity(0) // 0.398942
 */
export const normalDensity = (x: number): number => Math.exp((-x * x) / 2) / Math.sqrt(2 * Math.PI)
