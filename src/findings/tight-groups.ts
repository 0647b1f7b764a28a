/**
 * Groups whose members are all within a limit of each other, made from the most likely down: the first not yet placed
 * leads a group, and takes in, most likely first, whoever is near enough to all that are in it and not far less likely
 * than it is.
 *
 * @param beliefs share of belief of each
 * @param distance between two of them, by number
 * @param least share of its leader's belief that a member has at least
 * @returns members of each group by number, most likely first
 * @source complete linkage (no two members further apart than the limit): textbooks; the order is own choice
 */
export function tightGroups(
  beliefs: readonly number[],
  distance: (a: number, b: number) => number,
  { limit, least }: { readonly limit: number; readonly least: number },
): readonly (readonly number[])[] {
  const order = beliefs.map((_, i) => i).sort((a, b) => beliefs[b]! - beliefs[a]! || a - b)
  const placed = new Set<number>()
  const groups: number[][] = []
  for (const leader of order) {
    if (placed.has(leader)) continue
    const group = [leader]
    placed.add(leader)
    for (const other of order) {
      if (placed.has(other) || beliefs[other]! < least * beliefs[leader]!) continue
      if (!group.every((member) => distance(member, other) <= limit)) continue
      group.push(other)
      placed.add(other)
    }
    groups.push(group)
  }
  return groups
}
