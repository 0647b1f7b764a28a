import type { Instance } from './instance.ts'

/** Orders as the exchange knows them: place 0 is the start, place size + 1 the end, the actions between. */
export interface Exchanger {
  /** Swaps neighbouring stretches as long as that saves something. @returns what was saved */
  readonly improve: (places: Int32Array) => number
  /** Swaps two neighbouring stretches drawn at random where that is allowed. @returns what it adds */
  readonly shake: (places: Int32Array, random: () => number) => number
}

/**
 * The exchange that keeps the direction of every stretch: [A][B] becomes [B][A], allowed when nothing of A
 * must come before anything of B. All places are tried, a stretch grown action by action until it is no longer allowed.
 */
export function exchanger({ size, cost, start, end, words, earlier }: Instance): Exchanger {
  const wide = size + 2
  const c = new Float64Array(wide * wide)
  for (let i = 0; i < size; i++) {
    for (let j = 0; j < size; j++) c[(i + 1) * wide + j + 1] = cost[i * size + j]!
    c[i + 1] = start[i]!
    c[(i + 1) * wide + size + 1] = end[i]!
  }
  // must[a · wide + b] = 1 where a comes before b, both as places count: 1 … size.
  const must = new Uint8Array(wide * wide)
  for (let b = 0; b < size; b++)
    for (let a = 0; a < size; a++)
      if ((earlier[b * words + (a >>> 5)]! >>> (a & 31)) & 1) must[(a + 1) * wide + b + 1] = 1
  const room = new Int32Array(wide)
  // firstBlocked[i]: the first place after i whose action must come after the one at i.
  const firstBlocked = new Int32Array(wide)
  const tiny = 1e-9

  function swap(places: Int32Array, h: number, i: number, j: number): void {
    const a = i - h
    for (let k = 0; k < a; k++) room[k] = places[h + 1 + k]!
    places.copyWithin(h + 1, i + 1, j + 1)
    places.set(room.subarray(0, a), h + 1 + (j - i))
  }

  function findBlocks(places: Int32Array): void {
    for (let i = 1; i <= size; i++) {
      let j = i + 1
      const row = places[i]! * wide
      while (j <= size && must[row + places[j]!] === 0) j++
      firstBlocked[i] = j
    }
  }

  function improve(places: Int32Array): number {
    let saved = 0
    let since = 0
    findBlocks(places)
    // Round and round over the place before the stretches, until a whole round saves nothing.
    for (let h = 0; since < size; h = h + 1 < size ? h + 1 : 0) {
      since++
      const before = places[h]! * wide
      const first = places[h + 1]!
      const opened = c[before + first]!
      let blocked = size + 1
      let bestGain = tiny
      let bestI = -1
      let bestJ = -1
      for (let i = h + 1; i < size; i++) {
        if (firstBlocked[i]! < blocked) blocked = firstBlocked[i]!
        if (blocked <= i + 1) break
        const rowI = places[i]! * wide
        const next = places[i + 1]!
        const part = opened + c[rowI + next]! - c[before + next]!
        if (part <= bestGain) continue
        for (let j = i + 1; j < blocked; j++) {
          const rowJ = places[j]! * wide
          const after = places[j + 1]!
          const gain = part + c[rowJ + after]! - c[rowJ + first]! - c[rowI + after]!
          if (gain > bestGain) {
            bestGain = gain
            bestI = i
            bestJ = j
          }
        }
      }
      if (bestI >= 0) {
        swap(places, h, bestI, bestJ)
        findBlocks(places)
        saved += bestGain
        since = 0
        h--
      }
    }
    return saved
  }

  function shake(places: Int32Array, random: () => number): number {
    for (let tries = 0; tries < 50; tries++) {
      const h = Math.floor(random() * (size - 1))
      const a = 1 + Math.floor(random() * Math.min(size - 1 - h, 1 + size / 4))
      const i = h + a
      let blocked = size + 1
      for (let k = h + 1; k <= i; k++) {
        const row = places[k]! * wide
        let j = i + 1
        while (j < blocked && must[row + places[j]!] === 0) j++
        blocked = j
      }
      const most = Math.min(blocked - 1, i + 1 + Math.floor(size / 4))
      if (most <= i) continue
      const j = i + 1 + Math.floor(random() * (most - i))
      const [p, f, l, n, e, q] = [h, h + 1, i, i + 1, j, j + 1].map((k) => places[k]!) as [
        number,
        number,
        number,
        number,
        number,
        number,
      ]
      const added =
        c[p * wide + n]! +
        c[e * wide + f]! +
        c[l * wide + q]! -
        c[p * wide + f]! -
        c[l * wide + n]! -
        c[e * wide + q]!
      swap(places, h, i, j)
      return added
    }
    return 0
  }

  return { improve, shake }
}
