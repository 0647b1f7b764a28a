import type { HeightFact, Trouble } from './job-state.ts'

/**
 * Two entries that give one wheel different heights in the same round and state.
 *
 * @source own derivation: docs/methods/formats.md
 */
export function heightTroubles(heights: readonly HeightFact[]): readonly Trouble[] {
  const groups = new Map<string, HeightFact[]>()
  for (const height of heights) {
    const key = `${height.round}, ${height.when}, ${height.wheel}`
    groups.set(key, [...(groups.get(key) ?? []), height])
  }
  return [...groups.values()].flatMap((group): Trouble[] => {
    const said = new Set(group.map((h) => h.typings.map((t) => t.text).join(', ')))
    if (said.size < 2) return []
    return [
      {
        entries: group.map((h) => h.entry),
        choice: group.map((h) => h.entry),
        sentence: `The ${group[0]!.wheel} wheel has two ride heights (${group[0]!.when}): ${[...said].map((t) => `“${t}”`).join(' and ')}.`,
        remedy: 'Decide which is right and correct the other entry; repeats belong into one entry.',
      },
    ]
  })
}
