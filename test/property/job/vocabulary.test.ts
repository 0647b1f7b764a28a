import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import fc from 'fast-check'
import { expect, test } from 'vitest'
import { readCorner } from '../../../src/corner/index.ts'
import {
  clearedBy,
  type Entry,
  entryKinds,
  foldJob,
  type Job,
  jobAgainst,
  readJob,
  writeJob,
} from '../../../src/job/index.ts'
import { readKit } from '../../../src/kit/index.ts'
import { law } from '../../support/law.ts'
import { demo } from '../corner/demo.ts'

const whole = JSON.parse(
  readFileSync(
    join(import.meta.dirname, '..', '..', 'formats', 'frozen', 'format-1-every-kind.job.json'),
    'utf8',
  ),
)
const read = (json: unknown): Job => {
  const job = readJob(json)
  if (!job.ok) throw new Error(JSON.stringify(job.problems, null, 1))
  return job.value
}
const entry = (kind: string, data: Record<string, unknown>): Entry => ({ kind, data })
const file = (entries: readonly Entry[]) => ({ format: 1, workshop: 'w', job: '1', entries })
const faults = (entries: readonly Entry[]) => {
  const job = readJob(file(entries))
  return job.ok ? [] : job.problems.map((p) => p.field)
}
const tightened = (torque: string, more: Record<string, unknown> = {}) =>
  entry('tightened', { joint: 'j', wheel: 'front left', stage: 'final', torque, hand: 'T', ...more })
const undone = entry('undone', { joint: 'j', wheel: 'front left', to: 'open' })
const decision = (of: number[], keep: number) =>
  entry('decision', { of, keep, why: 'looked at it', hand: 'T' })
const choices = (entries: readonly Entry[]) => foldJob(entries).troubles.map((t) => t.choice ?? t.entries)

test('JO17 one log holds every kind of entry, is read, folded without trouble and written as typed', () => {
  const job = read(whole)
  expect(new Set(job.entries.map((e) => e.kind))).toEqual(new Set(entryKinds))
  const state = foldJob(job.entries)
  expect(state.troubles).toEqual([])
  expect(state.newer).toEqual([])
  expect(writeJob(job)).toEqual(whole)
})

test('JO17 every entry of that log stands somewhere in the state', () => {
  const { entries } = read(whole)
  const state = foldJob(entries)
  const told = new Set<number>()
  for (const value of Object.values(state))
    for (const fact of [value].flat() as unknown[]) {
      const place = (fact as { entry?: unknown } | null)?.entry
      if (typeof place === 'number') told.add(place)
    }
  for (const round of state.rounds) for (const reading of round.readings) told.add(reading.entry)
  expect([...told].sort((a, b) => a - b)).toEqual(entries.map((_, i) => i))
})

test('JO17 what a person typed is kept as typed beside its value', () => {
  const state = foldJob(read(whole).entries)
  expect(state.arrival).toMatchObject({ mileage: { text: '148 200 km', value: 148_200_000 } })
  expect(state.tightenings.at(-1)!.torque).toMatchObject({ text: '140 lbf·ft' })
  expect(state.tightenings.at(-1)!.torque!.value).toBeCloseTo(189.815, 2)
  expect(state.tyres[0]!.typings.map((t) => t.path)).toContain('depths.inner')
})

test('JO17 every kind is strict: one member more is a fault', () => {
  for (const kind of entryKinds) {
    const i = whole.entries.findIndex((e: Entry) => e.kind === kind)
    const spoilt = structuredClone(whole)
    spoilt.entries[i].data.unheardOf = 1
    const job = readJob(spoilt)
    expect(job.ok, kind).toBe(false)
    if (!job.ok) expect(job.problems[0]!.field, kind).toBe(`entries[${i}].data.unheardOf`)
  }
})

test('JO17 a stage has its number, and no other tightening has one', () => {
  expect(faults([tightened('1 N·m', { stage: 'stage' })])).toEqual(['entries[0].data.number'])
  expect(faults([tightened('1 N·m', { number: 1 })])).toEqual(['entries[0].data.number'])
  expect(faults([tightened('1 N·m', { stage: 'stage', number: 1 })])).toEqual([])
  expect(faults([tightened('1 N·m', { stage: 'stage', number: 0 })])).toEqual(['entries[0].data.number'])
})

test('JO18 two different values for one joint are trouble with a choice, and not for another joint or stage', () => {
  expect(choices([tightened('180 N·m'), tightened('190 N·m')])).toEqual([[0, 1]])
  expect(choices([tightened('180 N·m'), tightened('180 N·m')])).toEqual([])
  // 132.8 lbf·ft is 180.05 N·m: the same value read on another scale.
  expect(choices([tightened('180 N·m'), tightened('132.8 lbf·ft')])).toEqual([])
  expect(choices([tightened('180 N·m'), tightened('182 N·m')])).toEqual([[0, 1]])
  expect(choices([tightened('180 N·m'), tightened('190 N·m', { wheel: 'front right' })])).toEqual([])
  expect(choices([tightened('180 N·m'), tightened('190 N·m', { joint: 'k' })])).toEqual([])
  expect(choices([tightened('60 N·m', { stage: 'run up' }), tightened('190 N·m')])).toEqual([])
  const stage = (number: number, torque: string) => tightened(torque, { stage: 'stage', number })
  expect(choices([stage(1, '60 N·m'), stage(2, '160 N·m')])).toEqual([])
  expect(choices([stage(1, '60 N·m'), stage(1, '160 N·m')])).toEqual([[0, 1]])
  expect(choices([tightened('50 N·m', { angle: '90°' }), tightened('50 N·m', { angle: '60°' })])).toEqual([
    [0, 1],
  ])
})

test('JO18 a joint that was opened, or whose wheel had a move, between two values has no conflict', () => {
  const moved = entry('moved', { adjuster: 'a', wheel: 'front left', by: '5°' })
  expect(choices([tightened('180 N·m'), undone, tightened('190 N·m')])).toEqual([])
  expect(choices([tightened('180 N·m'), moved, tightened('190 N·m')])).toEqual([])
  expect(choices([undone, tightened('180 N·m'), tightened('190 N·m'), undone])).toEqual([[1, 2]])
  const neighbour = entry('undone', { joint: 'k', wheel: 'front left', to: 'open' })
  expect(choices([tightened('180 N·m'), neighbour, tightened('190 N·m')])).toEqual([[0, 2]])
  const elsewhere = entry('moved', { adjuster: 'a', wheel: 'front right', by: '5°' })
  expect(choices([tightened('180 N·m'), elsewhere, tightened('190 N·m')])).toEqual([[0, 2]])
})

test('JO18 what was set on a wrench counts where there is no adapter, and only there', () => {
  const set = (setting: string, more = {}) => tightened('0 N·m', { torque: undefined, setting, ...more })
  expect(choices([set('180 N·m'), tightened('190 N·m')])).toEqual([[0, 1]])
  expect(choices([set('180 N·m', { adapter: { adapter: 'x' } }), tightened('190 N·m')])).toEqual([])
})

test('JO18 answers that exclude each other are trouble with a choice', () => {
  const extra = (answer: string, what = 'front dampers') => entry('extra work', { what, answer })
  expect(choices([extra('asked'), extra('yes')])).toEqual([])
  expect(choices([extra('asked'), extra('yes'), extra('no', ' Front dampers')])).toEqual([[1, 2]])
  expect(choices([extra('yes'), extra('no', 'hose')])).toEqual([])
  const camera = (state: string) => entry('electronics', { what: 'forward camera', state })
  expect(choices([camera('to do'), camera('sent out'), camera('done')])).toEqual([])
  expect(choices([camera('done'), camera('not fitted')])).toEqual([[0, 1]])
  // "Other" may be two things.
  const other = (state: string) => entry('electronics', { what: 'other', state })
  expect(choices([other('done'), other('not fitted')])).toEqual([])
})

test('JO19 a decision sets the other entries aside, keeps them in the log and says by what', () => {
  const log = [tightened('180 N·m'), tightened('190 N·m'), decision([0, 1], 1)]
  const state = foldJob(log)
  expect(state.troubles).toEqual([])
  expect(state.setAside).toEqual([{ entry: 0, by: 2 }])
  expect(state.tightenings.map((t) => t.entry)).toEqual([1])
  expect(state.decisions).toHaveLength(1)
  expect(read(file(log)).entries).toHaveLength(3)
})

test('JO19 a third value after a decision is a new conflict', () => {
  const log = [tightened('180 N·m'), tightened('190 N·m'), decision([0, 1], 1), tightened('200 N·m')]
  expect(choices(log)).toEqual([[1, 3]])
  expect(choices([...log, decision([1, 3], 3)])).toEqual([])
  expect(foldJob([...log, decision([1, 3], 3)]).tightenings.map((t) => t.entry)).toEqual([3])
})

test('JO19 a decision settles marks and heights as well', () => {
  const mark = (setting: string) => entry('as found', { adjuster: 'a', wheel: 'front left', setting })
  expect(choices([mark('10°'), mark('12°')])).toEqual([[0, 1]])
  const state = foldJob([mark('10°'), mark('12°'), decision([0, 1], 0)])
  expect(state.troubles).toEqual([])
  expect(state.settings[0]!.asFound!.text).toBe('10°')
  const height = (text: string) =>
    entry('ride height', { wheel: 'front left', when: 'settled', rule: 'rule', readings: [text] })
  expect(choices([height('440 mm'), height('450 mm')])).toEqual([[0, 1]])
  expect(choices([height('440 mm'), height('450 mm'), decision([0, 1], 1)])).toEqual([])
})

test('JO19 two decisions against each other decide nothing until one is decided on', () => {
  const log = [tightened('180 N·m'), tightened('190 N·m'), decision([0, 1], 0), decision([0, 1], 1)]
  const state = foldJob(log)
  expect(state.setAside).toEqual([])
  expect(state.troubles.map((t) => t.choice)).toEqual([
    [2, 3],
    [0, 1],
  ])
  const settled = foldJob([...log, decision([2, 3], 3)])
  expect(settled.troubles).toEqual([])
  expect(settled.tightenings.map((t) => t.entry)).toEqual([1])
  // The same decision made twice is one decision.
  expect(choices([...log.slice(0, 3), decision([0, 1], 0)])).toEqual([])
})

test('JO19 three decisions in a circle decide nothing', () => {
  const log = [
    ...['180 N·m', '190 N·m', '200 N·m'].map((t) => tightened(t)),
    decision([0, 1], 0),
    decision([1, 2], 1),
    decision([2, 0], 2),
  ]
  const state = foldJob(log)
  expect(state.setAside).toEqual([])
  expect(state.troubles.map((t) => t.choice)).toEqual([
    [3, 4, 5],
    [0, 1, 2],
  ])
  // Without the last they lead to the first.
  expect(foldJob(log.slice(0, 5)).tightenings.map((t) => t.entry)).toEqual([0])
})

law(
  'JO19 whatever is decided, of two values one at least is never set aside',
  fc.array(fc.tuple(fc.nat(3), fc.nat(3)), { minLength: 1, maxLength: 6 }),
  (pairs) => {
    const values = ['180 N·m', '190 N·m', '200 N·m', '210 N·m'].map((t) => tightened(t))
    const log = [...values, ...pairs.filter(([a, b]) => a !== b).map(([a, b]) => decision([a, b], a))]
    return foldJob(log).tightenings.length > 0
  },
)

test('JO19 a decision that chooses between nothing is a fault or trouble', () => {
  const two = [tightened('180 N·m'), tightened('190 N·m')]
  expect(faults([...two, decision([0, 1], 5)])).toEqual(['entries[2].data.keep'])
  expect(faults([...two, decision([0, 0], 0)])).toEqual(['entries[2].data.of'])
  expect(faults([...two, decision([0, 7], 0)])).toEqual(['entries[2].data.of[1]'])
  expect(choices([undone, tightened('1 N·m'), decision([0, 1], 0)])).toEqual([[2]])
  const round = (number: number) => entry('round', { number, purpose: 'proving', settled: true })
  expect(choices([round(1), round(2), decision([0, 1], 0)])).toEqual([[2]])
  expect(choices([two[0]!, decision([0, 2], 0), two[1]!])).toEqual([[1], [0, 2]])
  // What is no use to the fold is trouble there too, not only on reading.
  expect(choices([decision([0, 1], 0), ...two])).toEqual([[0], [1, 2]])
})

test('JO20 what is cleared says by what; nothing else can be cleared', () => {
  const deviation = entry('deviation', { what: 'snapped stud', joint: 'j', wheel: 'front left' })
  const cleared = (of: number) => entry('cleared', { of, how: 'new stud pressed in', hand: 'T' })
  const state = foldJob([deviation, cleared(0)])
  expect(clearedBy(state, 0)).toBe(1)
  expect(clearedBy(foldJob([deviation]), 0)).toBeNull()
  expect(faults([cleared(0), deviation])).toEqual(['entries[0].data.of'])
  expect(choices([cleared(1), deviation])).toEqual([[0]])
  expect(choices([undone, cleared(0)])).toEqual([[0, 1]])
  expect(clearedBy(foldJob([undone, cleared(0)]), 0)).toBeNull()
  const ready = entry('not road-ready', { reason: 'no bolt', told: 'owner', hand: 'T' })
  expect(choices([ready, cleared(0)])).toEqual([])
})

test('JO20 an arrival is written down once, or decided', () => {
  const arrival = (asked: string) => entry('arrival', { asked })
  expect(choices([arrival('a'), arrival('b')])).toEqual([[0, 1]])
  const state = foldJob([arrival('a'), arrival('b'), decision([0, 1], 1)])
  expect(state.troubles).toEqual([])
  expect(state.arrival!.asked).toBe('b')
})

test('JO11 what the new entries name must stand in the files beside the job', () => {
  const [front, kit] = [
    readCorner(demo('port-unit-07/front.corner.json')),
    readKit(demo('port-kit.kit.json')),
  ]
  if (!front.ok || !kit.ok) throw new Error('a demo file is not read')
  const beside = { front: front.value, kit: kit.value }
  expect(jobAgainst(read(whole), beside)).toEqual([])
  const point = entry('measured', {
    what: 'slope',
    wheel: 'front right',
    from: 'tie-iner',
    to: 'tie-outer',
    readings: ['-3.1°'],
  })
  expect(jobAgainst(read(file([point])), beside)).toEqual([
    {
      field: 'entries[0].data.from',
      wrong: `The corner model "${front.value.name}" has no point "tie-iner".`,
      right: '"tie-inner", if that is meant',
    },
  ])
  const at = { wheel: 'front left', hand: 'T' }
  const wrong = read(
    file([
      entry('tightened', { ...at, joint: 'lower-front-bolts', stage: 'final', wrench: 'longwrench' }),
      entry('tightened', { ...at, joint: 'rack-bolts', stage: 'final', adapter: { adapter: 'crowfoot-24' } }),
      entry('pinned', { ...at, joint: 'ball', pin: 'new', legsBent: true }),
      entry('undone', { wheel: 'front right', joint: 'nuts', to: 'open' }),
      entry('hand check', {
        check: 'looked at',
        wheel: 'front left',
        part: 'lower-arms',
        found: ['nothing'],
      }),
      entry('deviation', { what: 'other', part: 'nothing', wheel: 'rear left' }),
      entry('mark', { what: 'm', joint: 'elsewhere' }),
    ]),
  )
  expect(
    jobAgainst(wrong, beside)
      .map((p) => p.field)
      .sort(),
  ).toEqual([
    'entries[0].data.joint',
    'entries[0].data.wrench',
    'entries[1].data.adapter.adapter',
    'entries[2].data.joint',
    'entries[3].data.joint',
    'entries[4].data.part',
  ])
})
