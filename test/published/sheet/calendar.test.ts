import { expect, test } from 'vitest'
import { type Entry, foldJob } from '../../../src/job/index.ts'
import { calendarText } from '../../../src/sheet/calendar-text.ts'
import { calendarOfJob } from '../../../src/sheet/index.ts'

const opened: Entry = {
  kind: 'opened',
  data: { number: '7-0412', vehicle: 'Port unit 07, crew bus', complaint: 'pulls', corners: { front: 'f' } },
}
const followUp = (data: Record<string, unknown>): Entry => ({ kind: 'follow-up', data })
const calendar = (...entries: readonly Entry[]) =>
  calendarOfJob(foldJob([opened, ...entries]), {
    workshop: 'Harbour yard',
    job: '7-0412',
    stamp: '2026-03-14T17:00:00+01:00',
  })
const unfolded = (text: string) => text.replace(/\r\n[ \t]/g, '')
const octets = (text: string) => new TextEncoder().encode(text).length

test('SH40 text is escaped as the example of RFC 5545, 3.8.1.5 has it', () => {
  const said = 'Meeting to provide technical review for "Phoenix" design.\nHappy Face Conference Room.'
  const line = calendarText([{ name: 'DESCRIPTION', value: said, isText: true }])
  expect(unfolded(line)).toBe(
    'DESCRIPTION:Meeting to provide technical review for "Phoenix" design.\\nHappy Face Conference Room.\r\n',
  )
  const list = calendarText([{ name: 'SUMMARY', value: 'a\\b; c, d', isText: true }])
  expect(list).toBe('SUMMARY:a\\\\b\\; c\\, d\r\n')
})

test('SH40 no line has more than 75 octets, none is cut within a character, and unfolding gives it back (RFC 5545, 3.1)', () => {
  for (const sign of ['a', 'é', '≤', '😀', 'a≤😀é']) {
    const value = sign.repeat(120)
    const text = calendarText([{ name: 'DESCRIPTION', value, isText: true }])
    const lines = text.split('\r\n')
    expect(lines.at(-1)).toBe('')
    expect(Math.max(...lines.map(octets))).toBeLessThanOrEqual(75)
    expect(lines.slice(1, -1).every((line) => line.startsWith(' '))).toBe(true)
    expect(lines.some((line) => /[\ud800-\udbff]$/.test(line))).toBe(false)
    expect(unfolded(text)).toBe(`DESCRIPTION:${value}\r\n`)
  }
})

test('SH40 a day is a whole day, a moment is told in UTC, a distance is a thing to do (RFC 5545, 3.3.4, 3.3.5, 3.6.2)', () => {
  const text = unfolded(
    calendar(
      followUp({ what: 'heights and angles again', on: '2026-04-01' }),
      followUp({ what: 'look again', on: '2026-04-02T09:30:00+02:00' }),
      followUp({ what: 'grease', on: '2026-04-03T09:30:00Z' }),
      followUp({ what: 'wheel nuts again', after: '50 km', wheels: ['front left'], card: true }),
    ),
  )
  expect(text).toContain('DTSTART;VALUE=DATE:20260401\r\n')
  expect(text).toContain('DTSTART:20260402T073000Z\r\n')
  expect(text).toContain('DTSTART:20260403T093000Z\r\n')
  expect(text).toContain('DTSTAMP:20260314T160000Z\r\n')
  expect(text.match(/BEGIN:VEVENT/g)).toHaveLength(3)
  expect(text.match(/BEGIN:VTODO/g)).toHaveLength(1)
  expect(text).toContain(
    'DESCRIPTION:Job 7-0412.\\nAfter 50 km.\\nWheels: front left.\\nThe driver has a card.\r\n',
  )
  expect(text.startsWith('BEGIN:VCALENDAR\r\nVERSION:2.0\r\nPRODID:')).toBe(true)
  expect(text.endsWith('END:VCALENDAR\r\n')).toBe(true)
  const uids = text.match(/UID:.*/g)!
  expect(new Set(uids).size).toBe(4)
})

test('SH40 what is done is left out', () => {
  const done = calendar(
    followUp({ what: 'grease', on: '2026-04-01' }),
    followUp({ what: 'look again', on: '2026-04-02' }),
    { kind: 'cleared', data: { of: 1, how: 'greased', hand: 'KB' } },
  )
  expect(done.match(/SUMMARY:.*/g)).toEqual(['SUMMARY:Look again: Port unit 07\\, crew bus'])
})
