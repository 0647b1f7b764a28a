import type { Instance } from './instance.ts'

/**
 * An order that always goes on with the cheapest action whose turn has come; ties to the smaller number.
 *
 * @param blur factor ≥ 1 by which a cost may be taken for larger, drawn anew each time; 1 for none
 */
export function greedyOrder(
  { size, cost, start, words, later, earlierCount }: Instance,
  blur: () => number = () => 1,
): Int32Array {
  const order = new Int32Array(size)
  const waits = Int32Array.from(earlierCount)
  const done = new Uint8Array(size)
  let last = -1
  for (let k = 0; k < size; k++) {
    let best = -1
    let least = Number.POSITIVE_INFINITY
    for (let j = 0; j < size; j++) {
      if (done[j] || waits[j]! > 0) continue
      const c = (last < 0 ? start[j]! : cost[last * size + j]!) * blur()
      if (c < least) {
        least = c
        best = j
      }
    }
    order[k] = best
    done[best] = 1
    for (let j = 0; j < size; j++) if ((later[best * words + (j >>> 5)]! >>> (j & 31)) & 1) waits[j]!--
    last = best
  }
  return order
}
