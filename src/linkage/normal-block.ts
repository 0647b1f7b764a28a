/** From a signed 32-bit word, centred, to (−1, 1). */
const toUnit = 2 ** -31

/**
 * Fills blocks with normal numbers (mean 0, standard deviation 1) that the same seed repeats: xoshiro128++ by pairs
 * through the polar method, 32 bits to a number. For timed draws; `seededRandom` of `measure` is the finer source.
 *
 * @param seed whole number, 0 … 2³² − 1
 * @source Blackman, Vigna: Scrambled linear pseudorandom number generators (2021), xoshiro128++; Marsaglia, Bray: A convenient method for generating normal variables (1964); from memory
 */
export function normalBlock(seed: number): (block: Float64Array) => void {
  const state = seeded(seed)
  return (block) => {
    let a = state[0]!
    let b = state[1]!
    let c = state[2]!
    let d = state[3]!
    const size = block.length
    for (let i = 0; i < size; ) {
      let sum = (a + d) | 0
      let word = (((sum << 7) | (sum >>> 25)) + a) | 0
      let t = b << 9
      c ^= a
      d ^= b
      b ^= c
      a ^= d
      c ^= t
      d = (d << 11) | (d >>> 21)
      const x = (word + 0.5) * toUnit
      sum = (a + d) | 0
      word = (((sum << 7) | (sum >>> 25)) + a) | 0
      t = b << 9
      c ^= a
      d ^= b
      b ^= c
      a ^= d
      c ^= t
      d = (d << 11) | (d >>> 21)
      const y = (word + 0.5) * toUnit
      const r = x * x + y * y
      if (r >= 1) continue
      const scale = Math.sqrt((-2 * Math.log(r)) / r)
      block[i++] = x * scale
      if (i < size) block[i++] = y * scale
    }
    state[0] = a
    state[1] = b
    state[2] = c
    state[3] = d
  }
}

/** Four words from a seed, by splitmix32. */
function seeded(seed: number): Int32Array {
  const words = new Int32Array(4)
  let z = seed | 0
  for (let i = 0; i < 4; i++) {
    z = (z + 0x9e3779b9) | 0
    let t = Math.imul(z ^ (z >>> 16), 0x21f0aaad)
    t = Math.imul(t ^ (t >>> 15), 0x735a2d97)
    words[i] = t ^ (t >>> 15)
  }
  return words
}
