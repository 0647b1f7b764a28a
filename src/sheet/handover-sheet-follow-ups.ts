import { type BoltLine, clearedBy, type JobState } from '../job/index.ts'
import type { HandoverProposal } from './handover-sheet.ts'
import type { HandoverTouched } from './handover-sheet-touched.ts'

/** Days and distances to choose from. @source common practice, no source */
const first = { metric: ['50 km', '100 km'], US: ['30 mi', '60 mi'] } as const
const settled = { metric: ['500 km', '1000 km'], US: ['300 mi', '600 mi'] } as const
const soonDays = 3
const settleDays = 14

/**
 * Follow-ups that what was done asks for and nobody agreed to yet, each with its reason.
 *
 * @param today "2026-03-10"; days are counted from it
 * @source common practice, no source
 */
export function handoverProposals(
  state: JobState,
  book: readonly BoltLine[],
  touched: HandoverTouched,
  { today, units }: { readonly today: string | undefined; readonly units: 'metric' | 'US' },
): readonly HandoverProposal[] {
  const agreed = (what: HandoverProposal['what']) =>
    state.followUps.some((one) => one.what === what && clearedBy(state, one.entry) === null)
  const nuts = book.filter(({ toDo }) => toDo.some(({ rule }) => rule === 'I22'))
  const wheels = [...new Set(nuts.flatMap((line) => line.wheels))]
  const settling = [...new Set([...touched.springs, ...touched.rubber])]
  const choices = (distances: readonly string[], days: number): HandoverProposal['choices'] => [
    ...distances.map((after) => ({ words: `after ${after}`, after })),
    ...(today === undefined ? [] : [{ words: `on ${dayAfter(today, days)}`, on: dayAfter(today, days) }]),
  ]
  return [
    ...(wheels.length > 0
      ? [
          {
            what: 'wheel nuts again' as const,
            why: 'A wheel that was off settles on its first distance; the driver gets a card.',
            wheels,
            choices: choices(first[units], soonDays),
          },
        ]
      : []),
    ...(settling.length > 0 && !agreed('heights and angles again')
      ? [
          {
            what: 'heights and angles again' as const,
            why: `New springs and rubber settle: ${settling.join(', ')}.`,
            wheels: [],
            choices: choices(settled[units], settleDays),
          },
        ]
      : []),
    ...(touched.greased.length > 0 && !agreed('grease')
      ? [
          {
            what: 'grease' as const,
            why: `Where it has a nipple, to the maker’s interval: ${touched.greased.join(', ')}.`,
            wheels: [],
            choices: choices(settled[units], settleDays),
          },
        ]
      : []),
  ]
}

/** Days on, by the calendar. */
function dayAfter(day: string, days: number): string {
  const then = new Date(`${day}T00:00:00Z`)
  then.setUTCDate(then.getUTCDate() + days)
  return then.toISOString().slice(0, 10)
}
