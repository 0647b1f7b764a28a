/**
 * Groups by complete linkage: two groups become one while no two of their members are further apart than the limit,
 * nearest first.
 *
 * @param distance between two of `count`
 * @returns members of each group, by number
 * @source complete-linkage clustering: textbooks; own choice of the limit
 */
export function linkedGroups(
  count: number,
  distance: (a: number, b: number) => number,
  limit: number,
): readonly (readonly number[])[] {
  const far = Array.from({ length: count }, (_, a) =>
    Float64Array.from({ length: count }, (_, b) => (a === b ? 0 : distance(a, b))),
  )
  const groups = Array.from({ length: count }, (_, i) => [i])
  const alive = new Set(groups.keys())
  for (;;) {
    let [least, first, second] = [Number.POSITIVE_INFINITY, -1, -1]
    for (const a of alive)
      for (const b of alive)
        if (a < b && far[a]![b]! < least) [least, first, second] = [far[a]![b]!, a, b]
    if (!(least <= limit)) break
    groups[first]!.push(...groups[second]!)
    alive.delete(second)
    for (const c of alive) {
      if (c === first) continue
      const farther = Math.max(far[first]![c]!, far[second]![c]!)
      far[first]![c] = farther
      far[c]![first] = farther
    }
  }
  return [...alive].map((i) => groups[i]!)
}
