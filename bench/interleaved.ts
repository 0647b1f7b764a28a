import { quantile } from './quantile.ts'

/** Two rivals timed in turn. Times are medians, ns per piece; the ratio is ours to theirs, round by round. */
export interface Race {
  readonly ours: number
  readonly theirs: number
  readonly ratio: number
  /** Quartiles of the ratio. */
  readonly low: number
  readonly high: number
  /** Our fastest batch against their fastest. */
  readonly fastest: number
  readonly rounds: number
}

/** Each gives the nanoseconds of one batch. */
export interface Rivals {
  readonly ours: () => number | Promise<number>
  readonly theirs: () => number | Promise<number>
  /** Pieces in one batch. */
  readonly ourPieces: number
  readonly theirPieces: number
}

/** Runs two rivals in turn (AB, BA, …), both warmed up first. */
export async function interleaved(
  { ours, theirs, ourPieces, theirPieces }: Rivals,
  { warm = 60, rounds = 401 }: { warm?: number; rounds?: number } = {},
): Promise<Race> {
  const mine: number[] = []
  const other: number[] = []
  for (let i = 0; i < warm + rounds; i++) {
    let [a, b] = [0, 0]
    if (i % 2 === 0) {
      a = await ours()
      b = await theirs()
    } else {
      b = await theirs()
      a = await ours()
    }
    if (i < warm) continue
    mine.push(a / ourPieces)
    other.push(b / theirPieces)
  }
  const ratios = mine.map((a, i) => a / other[i]!)
  return {
    ours: quantile(mine, 0.5),
    theirs: quantile(other, 0.5),
    ratio: quantile(ratios, 0.5),
    low: quantile(ratios, 0.25),
    high: quantile(ratios, 0.75),
    fastest: Math.min(...mine) / Math.min(...other),
    rounds,
  }
}
