import { expect, test } from 'vitest'
import { type Entry, foldJob, readJob, writeJob } from '../../src/job/index.ts'
import { type SheetSources, sheetFrom } from '../../src/sheet/index.ts'
import { buildJob } from '../../src/web/state/build-job.ts'
import type { Edit } from '../../src/web/state/messages.ts'
import { demoSources } from '../support/demo-sources.ts'

const bus = demoSources('07')
const isRead = ({ kind }: Entry) => ['round', 'reading', 'moved'].includes(kind)
/** The demo bus before anything was read. */
const unread: SheetSources = {
  ...bus,
  job: { ...bus.job, entries: bus.job.entries.slice(0, bus.job.entries.findIndex(isRead)) },
}
const readings = bus.job.entries.filter(({ kind }) => kind === 'reading').map(({ data }) => data)
const at = '2026-03-11T09:00:00+01:00'

/** What the gauges of the demo read, laid into the asks of the first round. */
function filled(sources: SheetSources): readonly Edit[] {
  const asks = sheetFrom(sources).first ?? []
  const typed = asks.flatMap((ask, i): readonly Edit[] => {
    const { method, wheel, side } = ask.data as Record<string, unknown>
    const same = readings.find(
      (one) => one['method'] === method && one['wheel'] === wheel && one['side'] === side,
    )
    return ask.fields.flatMap(({ path }) => {
      const steps = path.match(/[^.[\]]+/g) ?? []
      const text = steps.reduce<unknown>((value, step) => (value as Record<string, unknown>)?.[step], same)
      return typeof text === 'string'
        ? [{ kind: 'again', entry: -1 - i, path, label: path, text } as const]
        : []
    })
  })
  return [
    { kind: 'turned', at, moves: [], asks },
    ...typed,
    { kind: 'taken', at, settled: true, proving: false },
  ]
}

test('WE57 what is read into it is the readings of the vehicle: the same as the demo has, but for its repeats', () => {
  const { job, refused } = buildJob(unread.job, filled(unread))
  expect(refused).toEqual([])
  expect(readJob(writeJob(job)).ok).toBe(true)
  const [round] = foldJob(job.entries).rounds
  expect(round).toMatchObject({ number: 1, purpose: 'as found', settled: true })
  const now = sheetFrom({ ...unread, job })
  const before = sheetFrom({ ...bus, job: { ...bus.job, entries: upToSecondRound() } })
  const value = (sheet: typeof now, name: string) => sheet.readings.find((row) => row.name === name)?.text
  for (const name of ['front left camber', 'front right camber'])
    expect(value(now, name)).toBe(value(before, name))
  const names = now.readings.map(({ name }) => name)
  expect(names).toEqual(expect.arrayContaining(['front total toe', 'rear left toe', 'thrust']))
  expect(names.some((name) => name.endsWith('caster'))).toBe(true)
})

test('WE57 a gauge with an empty field was not read, and a text that is none is told at its field', () => {
  const asks = sheetFrom(unread).first!
  const i = asks.findIndex(({ title }) => title === 'camber, front left')
  const edit = (text: string): Edit => ({
    kind: 'again',
    entry: -1 - i,
    path: 'readings[0].reading',
    label: '',
    text,
  })
  const begun: Edit = { kind: 'turned', at, moves: [], asks }
  const taken: Edit = { kind: 'taken', at, settled: true, proving: false }
  const half = buildJob(unread.job, [begun, edit('-0.5°'), taken])
  expect(foldJob(half.job.entries).rounds[0]!.readings).toEqual([])
  const wrong = buildJob(unread.job, [begun, edit('12 mm')])
  expect(wrong.refused).toMatchObject([{ edit: 1, field: 'readings[0].reading' }])
  expect(wrong.form!.observations[i]!.complete).toBe(false)
})

/** The demo's log up to its second round. */
function upToSecondRound(): readonly Entry[] {
  const rounds = bus.job.entries.flatMap(({ kind }, i) => (kind === 'round' ? [i] : []))
  return bus.job.entries.slice(0, rounds[1] ?? bus.job.entries.length)
}
