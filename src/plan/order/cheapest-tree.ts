/**
 * The cheapest way to reach every node from a root, each by one arc: for each node the one it is reached from.
 *
 * @param weight `[nodes · i + j]` of the arc i → j; ∞ where there is none
 * @returns the node before each; −1 at the root. Every node must be reachable.
 */
export function cheapestTree(nodes: number, weight: Float64Array, root: number): Int32Array {
  const from = new Int32Array(nodes).fill(-1)
  for (let j = 0; j < nodes; j++) {
    if (j === root) continue
    let least = Number.POSITIVE_INFINITY
    for (let i = 0; i < nodes; i++)
      if (i !== j && weight[nodes * i + j]! < least) {
        least = weight[nodes * i + j]!
        from[j] = i
      }
  }
  const { group, groups, isCircle } = circles(nodes, from, root)
  if (groups === nodes) return from

  // Each circle becomes one node; to break into it at j saves the arc by which it reaches j itself.
  const smaller = new Float64Array(groups * groups).fill(Number.POSITIVE_INFINITY)
  const arcFrom = new Int32Array(groups * groups)
  const arcTo = new Int32Array(groups * groups)
  for (let i = 0; i < nodes; i++)
    for (let j = 0; j < nodes; j++) {
      if (group[i] === group[j] || j === root) continue
      const saved = isCircle[group[j]!] ? weight[nodes * from[j]! + j]! : 0
      const at = groups * group[i]! + group[j]!
      const w = weight[nodes * i + j]! - saved
      if (w < smaller[at]!) {
        smaller[at] = w
        arcFrom[at] = i
        arcTo[at] = j
      }
    }
  const reached = cheapestTree(groups, smaller, group[root]!)
  for (let g = 0; g < groups; g++) {
    if (reached[g]! < 0) continue
    const at = groups * reached[g]! + g
    from[arcTo[at]!] = arcFrom[at]!
  }
  return from
}

/** Which nodes lie on one circle of the arcs chosen; every other node is a group by itself. */
function circles(nodes: number, from: Int32Array, root: number) {
  const group = new Int32Array(nodes).fill(-1)
  const seenIn = new Int32Array(nodes).fill(-1)
  const isCircle: boolean[] = []
  let groups = 0
  for (let begin = 0; begin < nodes; begin++) {
    let at = begin
    while (at !== root && seenIn[at]! < 0) {
      seenIn[at] = begin
      at = from[at]!
    }
    if (at === root || seenIn[at] !== begin || group[at]! >= 0) continue
    do {
      group[at] = groups
      at = from[at]!
    } while (group[at]! < 0)
    isCircle[groups++] = true
  }
  for (let i = 0; i < nodes; i++)
    if (group[i]! < 0) {
      group[i] = groups
      isCircle[groups++] = false
    }
  return { group, groups, isCircle }
}
