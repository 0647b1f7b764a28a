import { measureRefusal } from './measure-refusal.ts'

/**
 * A source of random numbers; calling it draws uniformly from [0, 1).
 *
 * @source definition
 */
export interface SeededRandom {
  (): number
  /** Uniform in [0, 1), 53 bits. */
  readonly uniform: () => number
  /** Mean 0, standard deviation 1. */
  readonly normal: () => number
  /** Chi-squared with these degrees of freedom, > 0. */
  readonly chiSquared: (dof: number) => number
}

/**
 * Random numbers that the same seed repeats: xoshiro128**, seeded through splitmix32; normals by the polar method.
 *
 * @param seed a whole number, 0 … 2³² − 1
 * @throws {Refusal} `not-finite` when the seed is not such a number
 * @source Blackman, Vigna: Scrambled linear pseudorandom number generators (2021), xoshiro128** 1.1; Marsaglia, Bray: A convenient method for generating normal variables (1964); Marsaglia, Tsang: A simple method for generating gamma variables (2000); all from memory
 * @example seededRandom(1)() === seededRandom(1)() // true
 */
export function seededRandom(seed: number): SeededRandom {
  if (!(Number.isInteger(seed) && seed >= 0 && seed < WORD))
    throw measureRefusal(
      'not-finite',
      'seed',
      seed,
      `${seed} is no seed.`,
      'Give a whole number from 0 to 4 294 967 295.',
    )
  const next = words(seed)
  const uniform = () => ((next() >>> 5) * 2 ** 26 + (next() >>> 6)) / 2 ** 53
  let spare: number | undefined
  const normal = (): number => {
    if (spare !== undefined) {
      const kept = spare
      spare = undefined
      return kept
    }
    for (;;) {
      const x = 2 * uniform() - 1
      const y = 2 * uniform() - 1
      const r = x * x + y * y
      if (r >= 1 || r === 0) continue
      const scale = Math.sqrt((-2 * Math.log(r)) / r)
      spare = y * scale
      return x * scale
    }
  }
  return Object.assign(uniform.bind(null), {
    uniform,
    normal,
    chiSquared: (dof: number) => 2 * gamma(dof / 2, uniform, normal),
  })
}

const WORD = 2 ** 32
const rotated = (x: number, by: number) => (x << by) | (x >>> (32 - by))

function words(seed: number): () => number {
  let z = seed
  const split = () => {
    z = (z + 0x9e3779b9) | 0
    let t = Math.imul(z ^ (z >>> 16), 0x21f0aaad)
    t = Math.imul(t ^ (t >>> 15), 0x735a2d97)
    return t ^ (t >>> 15)
  }
  let [a, b, c, d] = [split(), split(), split(), split()]
  return () => {
    const out = Math.imul(rotated(Math.imul(b, 5), 7), 9)
    const t = b << 9
    c ^= a
    d ^= b
    b ^= c
    a ^= d
    c ^= t
    d = rotated(d, 11)
    return out
  }
}

/** Gamma variate of shape k: squeeze without table; below 1 by the power of a uniform. */
function gamma(k: number, uniform: () => number, normal: () => number): number {
  if (k < 1) return gamma(k + 1, uniform, normal) * (1 - uniform()) ** (1 / k)
  const d = k - 1 / 3
  const c = 1 / Math.sqrt(9 * d)
  for (;;) {
    const x = normal()
    const v = (1 + c * x) ** 3
    if (v > 0 && Math.log(1 - uniform()) < (x * x) / 2 + d - d * v + d * Math.log(v)) return d * v
  }
}
