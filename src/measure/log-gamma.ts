/** Lanczos' coefficients for g = 7, nine terms. */
const LANCZOS = [
  0.99999999999980993, 676.5203681218851, -1259.1392167224028, 771.32342877765313, -176.61502916214059,
  12.507343278686905, -0.13857109526572012, 9.9843695780195716e-6, 1.5056327351493116e-7,
]
const G = 7

/**
 * Natural logarithm of the gamma function for x ≥ ½.
 *
 * @source Lanczos: A precision approximation of the gamma function (1964), coefficients from memory; held against factorials in the tests
 */
export function logGamma(x: number): number {
  const z = x - 1
  let sum = LANCZOS[0]!
  for (let i = 1; i < LANCZOS.length; i++) sum += LANCZOS[i]! / (z + i)
  const t = z + G + 0.5
  return Math.log(2 * Math.PI) / 2 + (z + 0.5) * Math.log(t) - t + Math.log(sum)
}
