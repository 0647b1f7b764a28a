import { expect, test } from 'vitest'
import { type Entry, readJob, writeJob } from '../../../src/job/index.ts'
import { findingsOfJob, type SheetSources } from '../../../src/sheet/index.ts'
import { demoSources } from '../../support/demo-sources.ts'

const bus = demoSources('07')
/** The demo bus before anything was read or felt. */
const untouched: SheetSources = {
  ...bus,
  job: {
    ...bus.job,
    entries: bus.job.entries.slice(
      0,
      bus.job.entries.findIndex(({ kind }) => kind === 'play'),
    ),
  },
}
const withNote = (sources: SheetSources, data: Readonly<Record<string, unknown>>): SheetSources => {
  const entry: Entry = { kind: 'hand check', data }
  const job = readJob(writeJob({ ...sources.job, entries: [...sources.job.entries, entry] }))
  if (!job.ok) throw new Error(JSON.stringify(job.problems))
  return { ...sources, job: job.value }
}
const before = findingsOfJob(untouched)
const byHand = before.checks.filter(({ notes }) => notes !== null)

test('SH49 what hands can find is offered in the log’s own words, and a check that was made is not asked again', () => {
  expect(byHand.length).toBeGreaterThan(1)
  for (const { id, notes } of byHand)
    for (const found of notes!.finds) {
      const after = findingsOfJob(withNote(untouched, { ...notes!.data, found: [found], hand: 'KB' }))
      expect(after.checks.map((one) => one.id)).not.toContain(id)
    }
})

test('SH49 play that was felt speaks for what has it, and nothing found speaks against', () => {
  const rock = byHand.find(({ notes }) => notes!.data['check'] === 'rock at 12 and 6')!
  const belief = (found: string) =>
    findingsOfJob(withNote(untouched, { ...rock.notes!.data, found: [found] }))
      .groups.flatMap(({ suspects }) => suspects)
      .filter(
        ({ words }) =>
          /ball joint|bearing/.test(words) && words.includes(rock.notes!.data['wheel']!.split(' ')[1]!),
      )
      .reduce((sum, { belief: share }) => sum + share, 0)
  expect(belief('play')).toBeGreaterThan(belief('nothing'))
})
