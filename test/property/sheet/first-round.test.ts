import { expect, test } from 'vitest'
import type { Entry } from '../../../src/job/index.ts'
import { type SheetSources, sheetFrom } from '../../../src/sheet/index.ts'
import { demoSources } from '../../support/demo-sources.ts'

const bus = demoSources('07')
const isRead = ({ kind }: Entry) => ['round', 'reading', 'moved'].includes(kind)
/** The demo bus before anything was read. */
const unread: SheetSources = {
  ...bus,
  job: { ...bus.job, entries: bus.job.entries.slice(0, bus.job.entries.findIndex(isRead)) },
}

test('SH47 the first round asks for what the kit can read, and for nothing once something was read', () => {
  const titles = sheetFrom(unread).first!.map(({ title }) => title)
  expect(titles).toContain('camber, front right')
  expect(titles).toContain('steer sweep, front left')
  expect(titles).toContain('strings and rule')
  expect(titles).not.toContain('camber, rear left')
  expect(sheetFrom(bus).first).toBeNull()
  expect(sheetFrom({ ...unread, kit: null }).first).toEqual([])
})

test('SH47 without strings the tape reads the toe, without an angle finder nothing reads camber', () => {
  const { inclinometer: _, strings: __, ...gauges } = bus.kit!.gauges
  const titles = sheetFrom({ ...unread, kit: { ...bus.kit!, gauges } }).first!.map(({ title }) => title)
  expect(titles).toContain('tape on a scribed line, front')
  expect(titles.some((title) => /camber|sweep|strings/.test(title))).toBe(false)
})
