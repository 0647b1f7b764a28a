import type { Instance } from './instance.ts'
import type { LaterCosts } from './later-costs.ts'
import { emptyLayer, type Layer } from './layer.ts'
import { nextLayer } from './next-layer.ts'
import { worseToGoOnFrom } from './worse.ts'

/** What one pass over the places gave. */
interface Pass {
  /** An order cheaper than was asked for, where one was met. */
  readonly order: Int32Array | null
  /** No order costs less, unless it is the one found or costs more than was asked about: ∞ when nothing was let go. */
  readonly bound: number
  /** States gone on from. */
  readonly states: number
  /** Whether the pass was ended from outside. */
  readonly stopped: boolean
}

/**
 * Dynamic programming over the sets of done actions, place by place. States that cannot lead to an order of at most
 * `limit` are left out; of the others the `width` most promising are kept. If none had to be let go, the best order
 * met is the best there is.
 */
export interface LayeredSearch {
  readonly pass: (
    later: LaterCosts,
    asked: { limit: number; width: number; goOn: (looked: number) => boolean },
  ) => Pass
}

/** Between two questions whether to go on. */
const breath = 16384

/** Readies the search for one problem. */
export function layeredSearch(inst: Instance): LayeredSearch {
  const { size, cost, start, words, earlier } = inst
  const table = nextLayer(size, words, worseToGoOnFrom(inst))
  const done = new Uint32Array(words)
  const tail = size % 32 === 0 ? 0xffffffff : 2 ** (size % 32) - 1

  function pass(
    later: LaterCosts,
    { limit, width, goOn }: { limit: number; width: number; goOn: (looked: number) => boolean },
  ): Pass {
    const { offset, least, price, allPrices } = later
    const states = offset[size]!
    const nearFirst = new Int32Array(size + 1)
    for (let i = 0; i < size; i++) nearFirst[i + 1] = nearFirst[i]! + later.near[i]!.length
    const nearList = Int32Array.from(later.near.flat())
    const trail: Pick<Layer, 'parent' | 'last'>[] = []
    let layer = emptyLayer(words, Number.NEGATIVE_INFINITY)
    let letGo = Number.POSITIVE_INFINITY
    let expanded = 0
    let looked = 0
    for (let place = 0; place < size; place++) {
      table.clear()
      for (let s = 0; s < layer.count; s++) {
        expanded++
        if (looked >= breath) {
          const more = goOn(looked)
          looked = 0
          if (!more) {
            for (let rest = s; rest < layer.count; rest++) letGo = Math.min(letGo, layer.bound[rest]!)
            return {
              order: null,
              bound: Math.min(letGo, table.leastBound()),
              states: expanded,
              stopped: true,
            }
          }
        }
        const at = s * words
        const from = layer.last[s]!
        const row = from * size
        for (let w = 0; w < words; w++) done[w] = layer.done[at + w]!
        for (let w = 0; w < words; w++) {
          let open = ~done[w]! & (w === words - 1 ? tail : 0xffffffff)
          while (open !== 0) {
            const bit = 31 - Math.clz32(open & -open)
            open &= open - 1
            const j = w * 32 + bit
            let waits = 0
            for (let v = 0; v < words; v++) waits |= earlier[j * words + v]! & ~done[v]!
            if (waits !== 0) continue
            looked++
            const value = place === 0 ? start[j]! : layer.cost[s]! + cost[row + j]!
            const paid = layer.paid[s]! + price[j]!
            let set = 0
            for (let k = nearFirst[j]!, b = 0; k < nearFirst[j + 1]!; k++, b++) {
              const m = nearList[k]!
              set |= ((done[m >>> 5]! >>> (m & 31)) & 1) << b
            }
            const bound = value + allPrices - paid + least[place * states + offset[j]! + set]!
            if (bound > limit) continue
            done[w] = done[w]! | (1 << bit)
            table.add(done, j, value, paid, bound, s)
            done[w] = done[w]! & ~(1 << bit)
          }
        }
      }
      const sifted = table.kept(width)
      letGo = Math.min(letGo, sifted.letGo)
      layer = sifted.layer
      trail.push({ parent: layer.parent, last: layer.last })
      if (layer.count === 0) return { order: null, bound: letGo, states: expanded, stopped: false }
    }
    let best = 0
    for (let s = 1; s < layer.count; s++) if (layer.bound[s]! < layer.bound[best]!) best = s
    const order = new Int32Array(size)
    for (let place = size - 1, s = best; place >= 0; s = trail[place]!.parent[s]!, place--)
      order[place] = trail[place]!.last[s]!
    return { order, bound: letGo, states: expanded, stopped: false }
  }

  return { pass }
}
