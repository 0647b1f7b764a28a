import { readFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import { readCorner } from '../../../src/corner/index.ts'
import {
  checkTogether,
  foldJob,
  type Job,
  jobAgainst,
  readAny,
  readJob,
  sniffFormat,
  withCorrection,
  writeJob,
} from '../../../src/job/index.ts'
import { readKit } from '../../../src/kit/index.ts'
import { demo, demoCorner, spoil } from '../corner/demo.ts'

const file = (unit = '07') => demo(`port-unit-${unit}/port-unit-${unit}.job.json`)
const jobOf = (json: unknown): Job => {
  const read = readJob(json)
  if (!read.ok) throw new Error(JSON.stringify(read.problems))
  return read.value
}
const fields = (json: unknown) => {
  const read = readJob(json)
  return read.ok ? [] : read.problems.map((p) => p.field)
}
const entryOf = (job: Job, kind: string, n = 0) =>
  job.entries.flatMap((e, i) => (e.kind === kind ? [i] : []))[n]!

test.each(['07', '12'])('JO1 the demo job %s is read without a fault and without trouble', (unit) => {
  const job = jobOf(file(unit))
  const state = foldJob(job.entries)
  expect(state.troubles).toEqual([])
  expect(state.newer).toEqual([])
  expect(state.opened?.invented).toBe(true)
  const kit = readKit(demo('port-kit.kit.json'))
  if (!kit.ok) throw new Error()
  const corner = readCorner(demo(`port-unit-${unit}/front.corner.json`))
  if (!corner.ok) throw new Error()
  expect(jobAgainst(job, { front: corner.value, kit: kit.value })).toEqual([])
  expect(corner.value.id).toBe(state.opened?.corners.front)
  expect(kit.value.id).toBe(state.opened?.kit)
})

test('JO2 a job with many faults tells them all at once', () => {
  const json = file()
  spoil(json, ['workshp'], 'x')
  spoil(json, ['entries', 0, 'data', 'vehicle'], undefined)
  spoil(json, ['entries', 2, 'data', 'readings', 0], '441')
  spoil(json, ['entries', 3, 'data', 'wheel'], 'right front')
  spoil(json, ['entries', 4, 'at'], 'yesterday')
  spoil(json, ['entries', 7, 'kind'], 'flor')
  spoil(json, ['entries', 8, 'extra'], true)
  spoil(json, ['entries', 9, 'data', 'purpose'], 'last')
  expect(fields(json).sort()).toEqual(
    [
      'workshp',
      'entries[0].data.vehicle',
      'entries[2].data.readings[0]',
      'entries[3].data.wheel',
      'entries[4].at',
      'entries[7].kind',
      'entries[8].extra',
      'entries[9].data.purpose',
    ].sort(),
  )
})

test.each<[string, unknown, string]>([
  ['neither to nor by', { adjuster: 'tie-rod', wheel: 'front left' }, 'entries[0].data'],
  [
    'both to and by',
    { adjuster: 'tie-rod', wheel: 'front left', to: '1 turn', by: '1 turn' },
    'entries[0].data',
  ],
  ['a setting without unit', { adjuster: 'tie-rod', wheel: 'front left', by: '1' }, 'entries[0].data.by'],
  ['a setting in newtons', { adjuster: 'tie-rod', wheel: 'front left', by: '1 N' }, 'entries[0].data.by'],
  ['a setting of nothing', { adjuster: 'tie-rod', wheel: 'front left', by: '' }, 'entries[0].data.by'],
])('JO2 a move with %s is told', (_, data, field) => {
  expect(fields({ format: 1, workshop: 'w', job: '1', entries: [{ kind: 'moved', data }] })).toEqual([field])
})

test('JO3 entries keep what was typed, and are written as they were read', () => {
  const json = file()
  const { $schema: _, ...rest } = json
  expect(writeJob(jobOf(json))).toEqual(rest)
})

test('JO4 an unknown kind is kept for the version that knows it; a slip of the pen is a fault', () => {
  const json = file()
  const entries = json.entries as unknown[]
  entries.push({ kind: 'magnetic survey', data: { anything: [1, 2] } })
  const job = jobOf(json)
  expect(foldJob(job.entries).newer).toEqual([{ entry: entries.length - 1, kind: 'magnetic survey' }])
  expect(foldJob(job.entries).troubles).toEqual([])
  expect((writeJob(job).entries as unknown[]).at(-1)).toEqual({
    kind: 'magnetic survey',
    data: { anything: [1, 2] },
  })
  entries.push({ kind: 'raeding', data: {} })
  expect(fields(json)).toEqual([`entries[${entries.length - 1}].kind`])
})

test('JO5 a field typed over becomes an entry of its own; nothing before it changes', () => {
  const job = jobOf(file())
  const entry = entryOf(job, 'reading')
  const before = JSON.stringify(job)
  const changed = withCorrection(job, {
    entry,
    path: 'readings[1].reading',
    text: '−0,4°',
    at: '2026-03-10T12:00:00+01:00',
  })
  if (!changed.ok) throw new Error(JSON.stringify(changed.problems))
  expect(JSON.stringify(job)).toBe(before)
  expect(changed.value.entries.slice(0, -1)).toEqual(job.entries)
  expect(changed.value.entries.at(-1)).toMatchObject({ kind: 'correction', at: '2026-03-10T12:00:00+01:00' })
  const fact = foldJob(changed.value.entries).rounds[0]!.readings[0]!
  expect(fact.typings[3]).toEqual({ entry, path: 'readings[1].reading', text: '−0,4°' })
  expect(fact.correctedBy).toEqual([job.entries.length])
  if (fact.observation.method !== 'inclinometer') throw new Error()
  expect(fact.observation.readings[1]!.reading).toBeCloseTo((-0.4 * Math.PI) / 180, 15)
  const was = foldJob(job.entries).rounds[0]!.readings[0]!.observation
  if (was.method !== 'inclinometer') throw new Error()
  expect(fact.observation.readings[0]).toEqual(was.readings[0])
})

test.each([
  ['readings[1].reading', '-0.4', 'has no unit'],
  ['readings[1].reading', '-0.4 mm', 'a length'],
  ['readings[1]', '-0.4°', 'no such field'],
  ['readings[9].reading', '-0.4°', 'no such field'],
  ['nothing', '-0.4°', 'no such field'],
  ['__proto__.x', '-0.4°', 'no such field'],
  ['', '-0.4°', 'no such field'],
])('JO5 %s typed over with %j is refused and the job stays', (path, text, wrong) => {
  const job = jobOf(file())
  const entry = entryOf(job, 'reading')
  const changed = withCorrection(job, { entry, path, text })
  if (changed.ok) throw new Error('it was taken')
  expect(changed.problems[0]!.wrong.toLowerCase()).toContain(wrong)
  expect(changed.problems[0]!.field).toBe(`entries[${entry}].data.${path}`)
})

test('JO5 an entry that is not there cannot be corrected', () => {
  expect(withCorrection(jobOf(file()), { entry: 999, path: 'text', text: 'x' }).ok).toBe(false)
  expect(
    fields({
      format: 1,
      workshop: 'w',
      job: '1',
      entries: [{ kind: 'correction', data: { of: 0, data: {} } }],
    }),
  ).toEqual(['entries[0].data.of'])
})

test('JO11 what the files beside a job do not have is told, each at its entry', () => {
  const json = file()
  const job = jobOf(json)
  const first = (kind: string) => entryOf(job, kind)
  spoil(json, ['entries', first('ride height'), 'data', 'rule'], 'ruel')
  spoil(json, ['entries', first('play'), 'data', 'gauge'], 'inclinometer')
  spoil(json, ['entries', first('play'), 'data', 'joint'], 'lower-ball-jiont')
  spoil(json, ['entries', first('floor'), 'data', 'bay'], 'bay-9')
  spoil(json, ['entries', first('as found'), 'data', 'adjuster'], 'upper-shims')
  spoil(json, ['entries', first('part renewed'), 'data', 'part'], 'gearbox')
  spoil(json, ['entries', entryOf(job, 'as found', 4), 'data', 'setting'], '3 mm')
  spoil(json, ['entries', entryOf(job, 'as found', 5), 'data', 'setting'], '7 turns')
  const kit = readKit(demo('port-kit.kit.json'))
  if (!kit.ok) throw new Error()
  const told = jobAgainst(jobOf(json), { front: demoCorner('07'), kit: kit.value })
  expect(told.map((p) => p.field).sort()).toEqual(
    [
      `entries[${first('ride height')}].data.rule`,
      `entries[${first('play')}].data.gauge`,
      `entries[${first('play')}].data.joint`,
      `entries[${first('floor')}].data.bay`,
      `entries[${first('as found')}].data.adjuster`,
      `entries[${first('part renewed')}].data.part`,
      `entries[${entryOf(job, 'as found', 4)}].data`,
      `entries[${entryOf(job, 'as found', 5)}].data`,
    ].sort(),
  )
  expect(told.find((p) => p.field.endsWith('.rule'))?.right).toBe('"rule", if that is meant')
})

test('JO11 files given together are held against each other by what the job names', () => {
  const folder = 'port-unit-07'
  const names = ['front.corner.json', 'port-unit-07.spec.json', 'port-unit-07.job.json'].map(
    (n) => `${folder}/${n}`,
  )
  const given = (changed: Record<string, Record<string, unknown>>) =>
    [...names, 'port-kit.kit.json', 'port-unit-12/front.corner.json'].map((name) => {
      const read = readAny({ name, text: JSON.stringify(changed[name] ?? demo(name)) })
      if (!read.ok) throw new Error(JSON.stringify(read.problems))
      return { name, file: read.value }
    })
  expect(checkTogether(given({}))).toEqual([])
  const spec = spoil(demo(names[1]!), ['tightening', 'front', 'strut-top-nuts'], { procedure: 'hand snug' })
  const job = spoil(demo(names[2]!), ['entries', 7, 'data', 'bay'], 'bay-9')
  const told = checkTogether(given({ [names[1]!]: spec, [names[2]!]: job }))
  expect(told.map((t) => [t.name, t.problems.map((p) => p.field)])).toEqual([
    [names[1], ['tightening.front.strut-top-nuts']],
    [names[2], ['entries[7].data.bay']],
  ])
  // Without a job, a sheet is held against every corner given.
  const alone = given({}).filter(({ file }) => file.format === 'spec' || file.format === 'corner')
  expect(checkTogether(alone).map((t) => t.name)).toEqual([names[1]])
})

test('JO12 any of the four formats is known by its kind, its name or its members', () => {
  expect(sniffFormat({ name: 'x.json', json: { kind: 'spec' } })).toBe('spec')
  expect(sniffFormat({ name: 'a/b.CORNER.json', json: {} })).toBe('corner')
  expect(sniffFormat({ name: 'x.json', json: { entries: [] } })).toBe('job')
  expect(sniffFormat({ name: 'x.json', json: { kind: 'poem' } })).toBeNull()
  expect(sniffFormat({ name: 'x.json', json: null })).toBeNull()
})

test.each([
  ['port-kit.kit.json', 'kit'],
  ['port-unit-07/front.corner.json', 'corner'],
  ['port-unit-07/port-unit-07.spec.json', 'spec'],
  ['port-unit-07/port-unit-07.job.json', 'job'],
  ['port-unit-12/front.corner.json', 'corner'],
  ['port-unit-12/port-unit-12.spec.json', 'spec'],
  ['port-unit-12/port-unit-12.job.json', 'job'],
])('JO12 examples/%s is a sound %s and says that it is invented', (name, format) => {
  const text = readFileSync(new URL(`../../../examples/${name}`, import.meta.url), 'utf8')
  const read = readAny({ name, text })
  expect(read.ok && read.value.format).toBe(format)
  expect(text).toMatch(/"source": "invented for the demo"|"invented": true/)
})

test('JO12 a file that tells nothing, and broken JSON, are told', () => {
  expect(readAny({ name: 'x.json', text: '{}' }).ok).toBe(false)
  const broken = readAny({ name: 'x.job.json', text: '{"format": 1,\n "format": 1}' })
  expect(!broken.ok && broken.problems[0]!.field).toBe('line 2, column 2')
})
