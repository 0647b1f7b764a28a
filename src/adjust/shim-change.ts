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
 * The shims that change a pack by an amount: only added or only taken out where that needs no more than one
 * piece over the fewest, else some swapped for others.
 *
 * @param change m; positive is a thicker pack
 * @returns null when no six shims of these sizes make it up to 0.01 mm
 * @source definition (breadth-first over the sizes, fewest pieces first)
 * @example shimChange(pack, mm(1.5)) // { add: [0.001, 0.0005], takeOut: [] }
 */
export function shimChange(pack: Pick<ShimPack, 'sizes'>, change: number): ShimChange | null {
  const goal = Math.round(change / grain)
  const sizes = [...new Set(pack.sizes.map((size) => Math.round(size / grain)))].sort((a, b) => b - a)
  const sign = goal < 0 ? -1 : 1
  const oneWay = sizes.map((size) => sign * size)
  const plain = fewestPieces(goal, oneWay)
  const mixed = fewestPieces(goal, [...oneWay, ...oneWay.map((size) => -size)])
  const pieces = plain && mixed && plain.length <= mixed.length + 1 ? plain : (mixed ?? plain)
  return (
    pieces && {
      add: pieces.filter((piece) => piece > 0).map((piece) => piece * grain),
      takeOut: pieces.filter((piece) => piece < 0).map((piece) => -piece * grain),
    }
  )
}

function fewestPieces(goal: number, choices: readonly number[]): readonly number[] | null {
  const farthest = Math.abs(goal) + Math.max(0, ...choices.map(Math.abs))
  const seen = new Set([0])
  let edge: { sum: number; pieces: readonly number[] }[] = [{ sum: 0, pieces: [] }]
  for (let count = 0; count <= most; count++) {
    const found = edge.find((state) => state.sum === goal)
    if (found) return found.pieces
    const next: typeof edge = []
    for (const { sum, pieces } of edge)
      for (const piece of choices) {
        const total = sum + piece
        if (seen.has(total) || Math.abs(total) > farthest) continue
        seen.add(total)
        next.push({ sum: total, pieces: [...pieces, piece] })
      }
    edge = next
  }
  return null
}
