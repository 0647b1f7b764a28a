/**
 * Groups whose members are all within a limit of each other. One leads the first group; then the most likely that is
 * not yet placed leads the next, and takes in, most likely first, whoever is near enough to all that are in it and not
 * far less likely than it is. Who is near the first leader, yet too unlikely to stand with it, joins others of that sort
 * only where `faint` says so.
 *
 * @param beliefs share of belief of each
 * @param distance between two of them, by number
 * @param least share of its leader's belief that a member has at least
 * @returns members of each group by number, leader first
 * @source complete linkage (no two members further apart than the limit): textbooks; the order is own choice
 */
export function tightGroups(
  beliefs: readonly number[],
  distance: (a: number, b: number) => number,
  {
    limit,
    least,
    first,
    faint,
  }: {
    readonly limit: number
    readonly least: number
    readonly first: number
    /** Distance of two that are both near the first leader. */
    readonly faint: (a: number, b: number) => number
  },
): readonly (readonly number[])[] {
  const order = beliefs.map((_, i) => i).sort((a, b) => beliefs[b]! - beliefs[a]! || a - b)
  const placed = new Set<number>()
  const groups: number[][] = []
  const isNear = (i: number): boolean => distance(first, i) <= limit
  const lead = (leader: number): void => {
    const group = [leader]
    placed.add(leader)
    groups.push(group)
    const far = leader !== first && isNear(leader) ? faint : distance
    for (const other of order) {
      if (placed.has(other) || beliefs[other]! < least * beliefs[leader]!) continue
      if (leader !== first && isNear(other) !== (far === faint)) continue
      if (!group.every((member) => far(member, other) <= limit)) continue
      group.push(other)
      placed.add(other)
    }
  }
  lead(first)
  for (const leader of order) if (!placed.has(leader)) lead(leader)
  return groups
}
