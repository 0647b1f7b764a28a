import { cheapestTree } from './cheapest-tree.ts'
import type { Instance } from './instance.ts'

const mostTurns = 1000
const patience = 15
/** How much of the last direction is kept: without it the ascent zigzags where some costs are a thousand times others. */
const momentum = 0.9

/**
 * The Lagrangian ascent over trees: an order is a tree, seen from its end, in which no two branches meet. Arriving where many
 * branches meet gets dearer, where none does cheaper. Unlike a walk with a short memory a tree never goes in circles.
 *
 * @param goOn is told the nodes of each tree; false ends it
 * @returns no order costs less
 */
export function treeBound(inst: Instance, wanted: number, goOn: (nodes: number) => boolean): number {
  const { size, cost, start, end, follows, earlierCount, laterCount } = inst
  // Arcs turned round: the tree grows from the end of the order, node `size`, to its start, node `size + 1`.
  const nodes = size + 2
  const base = new Float64Array(nodes * nodes).fill(Number.POSITIVE_INFINITY)
  for (let i = 0; i < size; i++) {
    if (laterCount[i] === 0) base[nodes * size + i] = end[i]!
    if (earlierCount[i] === 0) base[nodes * i + size + 1] = start[i]!
    for (let j = 0; j < size; j++) if (follows[size * i + j]) base[nodes * j + i] = cost[size * i + j]!
  }
  const weight = new Float64Array(nodes * nodes)
  const branches = new Int32Array(nodes)
  const direction = new Float64Array(nodes)
  let price = new Float64Array(nodes)
  let bestPrice = price
  let best = 0
  let pace = 1
  let stale = 0
  for (let turn = 0; turn < mostTurns && best < wanted && pace > 0.002; turn++) {
    for (let j = 0; j < nodes; j++)
      for (let i = 0; i < nodes; i++) weight[nodes * j + i] = base[nodes * j + i]! - price[j]!
    const from = cheapestTree(nodes, weight, size)
    branches.fill(0)
    let bound = 0
    for (let i = 0; i < nodes; i++) {
      if (i !== size + 1) bound += price[i]!
      if (from[i]! < 0) continue
      bound += weight[nodes * from[i]! + i]!
      branches[from[i]!]!++
    }
    if (bound > best + 1e-7 * best) {
      best = bound
      bestPrice = price.slice()
      stale = 0
    } else if (++stale > patience) {
      pace /= 2
      stale = 0
      price = bestPrice.slice()
      direction.fill(0)
    }
    let length = 0
    for (let i = 0; i <= size; i++) {
      direction[i] = 1 - branches[i]! + momentum * direction[i]!
      length += direction[i]! ** 2
    }
    if (length === 0 || !goOn(nodes)) break
    const stride = (pace * Math.max(wanted - bound, 0.001 * wanted)) / length
    for (let i = 0; i <= size; i++) price[i]! += stride * direction[i]!
  }
  return best
}
