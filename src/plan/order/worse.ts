import type { Instance } from './instance.ts'

/**
 * For two actions a and b that may both have been last with the same ones done: by how much at most going on from a
 * costs more than going on from b, whatever comes next. So a state with a is as good as one with b that costs that much more.
 *
 * @returns `[size · a + b]`
 */
export function worseToGoOnFrom({ size, cost, end, follows, laterCount }: Instance): Float64Array {
  const worse = new Float64Array(size * size).fill(Number.NEGATIVE_INFINITY)
  for (let a = 0; a < size; a++)
    for (let b = 0; b < size; b++) {
      let most = Number.NEGATIVE_INFINITY
      for (let j = 0; j < size; j++)
        if (follows[a * size + j] && follows[b * size + j])
          most = Math.max(most, cost[a * size + j]! - cost[b * size + j]!)
      if (laterCount[a] === 0 && laterCount[b] === 0) most = Math.max(most, end[a]! - end[b]!)
      worse[a * size + b] = a === b ? 0 : most
    }
  return worse
}
