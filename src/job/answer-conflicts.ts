import type { JobState, Trouble } from './job-state.ts'

/**
 * Answers that cannot both be true: extra work allowed and refused, something done that is not fitted.
 *
 * @source own derivation: docs/methods/formats.md
 */
export function answerConflicts({
  extraWork,
  electronics,
}: Pick<JobState, 'extraWork' | 'electronics'>): readonly Trouble[] {
  const told = [
    ...extraWork
      .filter(({ answer }) => answer !== 'asked')
      .map(({ entry, what, answer }) => ({ entry, about: what, says: answer })),
    // Where it is fitted, to do, sent out and done follow each other; only "not fitted" contradicts.
    ...electronics
      .filter(({ what }) => what !== 'other')
      .map(({ entry, what, state }) => ({
        entry,
        about: what,
        says: state === 'not fitted' ? 'not fitted' : 'fitted',
      })),
  ]
  const about = new Map<string, (typeof told)[number][]>()
  for (const fact of told) {
    const key = fact.about.trim().toLowerCase()
    about.set(key, [...(about.get(key) ?? []), fact])
  }
  return [...about.values()].flatMap((facts): Trouble[] => {
    const says = [...new Set(facts.map((fact) => fact.says))]
    if (says.length < 2) return []
    const entries = facts.map(({ entry }) => entry)
    return [
      {
        entries,
        choice: entries,
        sentence: `“${facts[0]!.about}” has two answers: ${says.map((s) => `“${s}”`).join(' and ')}.`,
        remedy: 'Ask again and decide which entry holds.',
      },
    ]
  })
}
