import type { ShimPack } from './adjuster.ts'

/** Which shims go in and which come out, m each. */
export interface ShimChange {
  readonly add: readonly number[]
  readonly takeOut: readonly number[]
}

/** Thinnest difference that counts: a hundredth of a millimetre. */
const grain = 1e-5
const most = 6

/**
 * The fewest shims that change a pack by an amount: added, taken out, or one swapped for another.
 *
 * @param change m; positive is a thicker pack
 * @returns null when no six shims of these sizes make it up to 0.01 mm
 * @source definition (breadth-first over the sizes, fewest pieces first)
 * @example shimChange(pack, mm(1.5)) // { add: [0.001, 0.0005], takeOut: [] }
 */
export function shimChange(pack: Pick<ShimPack, 'sizes'>, change: number): ShimChange | null {
  const goal = Math.round(change / grain)
  const sizes = [...new Set(pack.sizes.map((size) => Math.round(size / grain)))].sort((a, b) => b - a)
  const seen = new Set([0])
  let edge: { sum: number; pieces: readonly number[] }[] = [{ sum: 0, pieces: [] }]
  for (let count = 0; count <= most; count++) {
    const found = edge.find((state) => state.sum === goal)
    if (found)
      return {
        add: found.pieces.filter((piece) => piece > 0).map((piece) => piece * grain),
        takeOut: found.pieces.filter((piece) => piece < 0).map((piece) => -piece * grain),
      }
    const next: typeof edge = []
    // pieces that go the wanted way are tried first, so a plain addition is preferred to a swap
    const sign = goal < 0 ? -1 : 1
    for (const { sum, pieces } of edge)
      for (const piece of [...sizes.map((size) => sign * size), ...sizes.map((size) => -sign * size)]) {
        const total = sum + piece
        if (seen.has(total) || Math.abs(total) > Math.abs(goal) + (sizes[0] ?? 0)) continue
        seen.add(total)
        next.push({ sum: total, pieces: [...pieces, piece] })
      }
    edge = next
  }
  return null
}
