import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, test } from 'vitest'
import { foldJob, type Job, readAny } from '../../src/job/index.ts'
import { deg, mm } from '../../src/quantity/index.ts'
import { buildJob } from '../../src/web/state/build-job.ts'
import type { Edit } from '../../src/web/state/messages.ts'
import { withTyped } from '../../src/web/state/with-typed.ts'

const name = 'port-unit-07.job.json'
const file = readAny({
  name,
  text: readFileSync(join(import.meta.dirname, '..', '..', 'examples', 'port-unit-07', name), 'utf8'),
})
if (!file.ok || file.value.format !== 'job') throw new Error('The demo job cannot be read.')
const job: Job = file.value.value
const before = foldJob(job.entries)
const lastRound = before.rounds[before.rounds.length - 1]!
const inclinometer = lastRound.readings.find(({ observation }) => observation.method === 'inclinometer')!
const field = inclinometer.typings.find(({ path }) => path.endsWith('.reading'))!
const label = 'gauge shows'
const at = '2026-03-11T08:00:00+01:00'

const turned: Edit = {
  kind: 'turned',
  at,
  moves: [
    { adjuster: 'a', kind: 'eccentric', wheel: 'right front', side: 'right', from: deg(-10), to: deg(24) },
    { adjuster: 'b', kind: 'thread', wheel: 'left front', side: 'left', from: 0, to: -5 / 12 },
    { adjuster: 'c', kind: 'thread', wheel: 'left rear', side: 'left', from: 0, to: 0.3 },
    { adjuster: 'd', kind: 'shims', wheel: 'left front', side: 'left', from: mm(3), to: mm(1.5) },
  ],
}

describe('typing', () => {
  test('WE4 typing on in one field is one edit, another field is another', () => {
    const place = { entry: 3, path: 'reading', label }
    const one = withTyped(withTyped([], 'typed', place, '-'), 'typed', place, '-0.5°')
    expect(one).toEqual([{ kind: 'typed', ...place, text: '-0.5°' }])
    const two = withTyped(one, 'typed', { ...place, path: 'other' }, '1°')
    expect(two).toHaveLength(2)
    expect(withTyped(two, 'typed', place, '-0.6°')).toHaveLength(3)
    expect(withTyped(one, 'again', place, '-0.6°')).toHaveLength(2)
  })

  test('WE5 a correction counts, and the entry it corrects stays as it was written', () => {
    const built = buildJob(job, [{ kind: 'typed', ...field, label, text: '-0.75°' }])
    expect(built.refused).toEqual([])
    expect(built.job.entries).toHaveLength(job.entries.length + 1)
    expect(built.job.entries.slice(0, -1)).toEqual(job.entries)
    const now = foldJob(built.job.entries)
      .rounds.at(-1)!
      .readings.find(({ entry }) => entry === field.entry)!
    expect(now.typings.find(({ path }) => path === field.path)?.text).toBe('-0.75°')
  })

  test.each(['12', '', 'abc', '3 N·m', '--1°'])(
    'WE5 "%s" for an angle is told, and the rest counts',
    (text) => {
      const good: Edit = { kind: 'typed', ...field, label, text: '-0.75°' }
      const other = inclinometer.typings.filter(({ path }) => path.endsWith('.reading'))[1]!
      const built = buildJob(job, [{ kind: 'typed', ...other, label, text }, good])
      expect(built.refused.map(({ edit }) => edit)).toEqual([0])
      expect(built.refused[0]!.sentence.length).toBeGreaterThan(10)
      expect(built.refused[0]!.remedy).toContain('angle')
      expect(built.job.entries).toHaveLength(job.entries.length + 1)
    },
  )
})

describe('moves and the round after them', () => {
  test('WE6 each move stands in the log with its sense and amount', () => {
    const moves = foldJob(buildJob(job, [turned]).job.entries).moves.slice(before.moves.length)
    expect(moves.map(({ adjuster, wheel }) => `${adjuster} ${wheel}`)).toEqual([
      'a front right',
      'b front left',
      'c rear left',
      'd front left',
    ])
    const by = moves.map((move) => ('by' in move && move.by ? move.by.value : Number.NaN))
    // Texts carry a thousandth of a degree, a hundred-thousandth of a turn, a tenth of a micrometre.
    expect(by[0]).toBeCloseTo(deg(34), 5)
    expect(by[1]).toBeCloseTo(-5 / 12, 12)
    expect(by[2]).toBeCloseTo(0.3, 12)
    expect(by[3]).toBeCloseTo(-0.0015, 12)
  })

  test('WE7 the next round asks the same gauges and keeps only how they were set up', () => {
    const { form } = buildJob(job, [turned])
    const asked = form!.observations.map(({ entry }) => entry)
    expect(asked).toEqual(expect.arrayContaining(lastRound.readings.map(({ entry }) => entry)))
    expect(form!.number).toBe(lastRound.number + 1)
    for (const { fields } of form!.observations)
      for (const { path, text, before: was } of fields)
        expect(text, path).toBe(
          /wheelTurn|span|wheelbase|along|belowHub|levelled|radius|diameter/.test(path) ? was : '',
        )
  })

  test('WE19 moves count as made from when they are noted until a gauge is read again', () => {
    expect(buildJob(job, []).made).toBe(false)
    expect(buildJob(job, [turned]).made).toBe(true)
    const taken: Edit = { kind: 'taken', at, settled: true, proving: false }
    // A round in which nothing was read says nothing about the moves before it.
    expect(buildJob(job, [turned, taken]).made).toBe(true)
    expect(buildJob(job, [turned, ...again(() => '-0.4°'), taken]).made).toBe(false)
    expect(buildJob(job, [{ ...turned, moves: [] }]).made).toBe(false)
  })

  const again = (text: (was: string, i: number) => string): Edit[] =>
    buildJob(job, [turned])
      .form!.observations.find(({ entry }) => entry === inclinometer.entry)!
      .fields.filter(({ text: there }) => there === '')
      .map((asked, i) => ({
        kind: 'again',
        entry: asked.entry,
        path: asked.path,
        label,
        text: text(asked.before, i),
      }))

  test('WE7 WE8 a taken round holds the gauge that was read, as typed, and no other', () => {
    const typed = again((_, i) => `-0.${4 + i}°`)
    const edits: Edit[] = [turned, ...typed, { kind: 'taken', at, settled: true, proving: false }]
    const built = buildJob(job, edits)
    expect(built.refused).toEqual([])
    expect(built.form).toBeNull()
    const state = foldJob(built.job.entries)
    const round = state.rounds.at(-1)!
    expect([round.number, round.settled, round.purpose]).toEqual([lastRound.number + 1, true, 'provisional'])
    expect(round.readings).toHaveLength(1)
    const texts = round.readings[0]!.typings.filter(({ path }) => path.endsWith('.reading'))
    expect(texts.map(({ text }) => text)).toEqual(typed.map((_, i) => `-0.${4 + i}°`))
    const kept = (fact: typeof inclinometer) =>
      fact.typings.filter(({ path }) => path.endsWith('.wheelTurn')).map(({ text }) => text)
    expect(kept(round.readings[0]!)).toEqual(kept(inclinometer))
    expect(state.troubles).toEqual(before.troubles)
  })

  test('WE5 WE8 a gauge with a text that is not understood is not complete, and is not taken', () => {
    const edits: Edit[] = [turned, ...again(() => '12')]
    const open = buildJob(job, edits)
    expect(open.refused.map(({ edit }) => edit)).toEqual(edits.map((_, i) => i).slice(1))
    expect(open.form!.observations.some(({ complete }) => complete)).toBe(false)
    const taken = buildJob(job, [...edits, { kind: 'taken', at, settled: false, proving: true }])
    expect(foldJob(taken.job.entries).rounds.at(-1)!.readings).toEqual([])
  })

  test('WE7 a round can follow a round', () => {
    const first: Edit[] = [
      turned,
      ...again(() => '-0.4°'),
      { kind: 'taken', at, settled: true, proving: false },
    ]
    const { form, job: now } = buildJob(job, [...first, { ...turned, moves: [] }])
    expect(form!.number).toBe(lastRound.number + 2)
    expect(form!.observations).toHaveLength(1)
    expect(form!.observations[0]!.entry).toBe(now.entries.length - 1)
  })
})
