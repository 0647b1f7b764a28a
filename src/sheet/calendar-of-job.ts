import { clearedBy, type JobState } from '../job/index.ts'
import { type CalendarLine, calendarText } from './calendar-text.ts'

type FollowUp = JobState['followUps'][number]

/**
 * The follow-ups of a job as a calendar that any calendar program takes in: those with a day as appointments, those after
 * a distance as things to do, those that are done left out. The same job gives the same calendar.
 *
 * @param stamp when the file is made, "2026-11-25T09:30:00Z"
 * @returns text of an `.ics` file
 * @source RFC 5545, 3.6.1 (event), 3.6.2 (to-do)
 */
export function calendarOfJob(
  state: JobState,
  { workshop, job, stamp }: { readonly workshop: string; readonly job: string; readonly stamp: string },
): string {
  const vehicle = state.opened?.vehicle ?? 'vehicle not named'
  const open = state.followUps.filter(({ entry }) => clearedBy(state, entry) === null)
  const text = (name: string, value: string): CalendarLine => ({ name, value, isText: true })
  const plain = (name: string, value: string): CalendarLine => ({ name, value })
  const component = (one: FollowUp): readonly CalendarLine[] => {
    const kind = one.on === undefined ? 'VTODO' : 'VEVENT'
    return [
      plain('BEGIN', kind),
      text('UID', `${job}-${one.entry}@axlewright`),
      plain('DTSTAMP', utc(stamp)),
      ...(one.on === undefined ? [] : [startOf(one.on)]),
      text('SUMMARY', `${upper(one.what)}: ${vehicle}`),
      text('DESCRIPTION', wordsOf(one, job)),
      text('LOCATION', workshop),
      plain('END', kind),
    ]
  }
  return calendarText([
    plain('BEGIN', 'VCALENDAR'),
    plain('VERSION', '2.0'),
    text('PRODID', '-//Axlewright//Follow-ups//EN'),
    ...open.flatMap(component),
    plain('END', 'VCALENDAR'),
  ])
}

const wordsOf = ({ after, wheels, card, remark }: FollowUp, job: string): string =>
  [
    `Job ${job}.`,
    ...(after ? [`After ${after.text}.`] : []),
    ...(wheels ? [`Wheels: ${wheels.join(', ')}.`] : []),
    ...(card ? ['The driver has a card.'] : []),
    ...(remark ? [remark] : []),
  ].join('\n')

/** A day is a whole day; a moment is told in UTC. */
const startOf = (on: string): CalendarLine =>
  on.length === 10
    ? { name: 'DTSTART;VALUE=DATE', value: on.replaceAll('-', '') }
    : { name: 'DTSTART', value: utc(on) }

/** "20261125T093000Z" */
const utc = (moment: string): string =>
  new Date(moment).toISOString().replace(/[-:]/g, '').replace(/\.\d+/, '')

const upper = (words: string) => `${words.slice(0, 1).toUpperCase()}${words.slice(1)}`
