/**
 * The columns that some lines need: in the order in which they come up, those of one member beside each other.
 *
 * @source definition
 */
export function columnsOf(lines: readonly ReadonlyMap<string, string>[]): readonly string[] {
  const groups = new Map<string, string[]>()
  for (const name of lines.flatMap((cells) => [...cells.keys()])) {
    const member = name.replace(/ \([^()]+\)$/, '')
    const group = groups.get(member) ?? []
    if (!group.includes(name)) group.push(name)
    groups.set(member, group)
  }
  return [...groups.values()].flat()
}
