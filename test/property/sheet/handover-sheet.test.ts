import { expect, test } from 'vitest'
import type { Entry } from '../../../src/job/index.ts'
import { usUnits } from '../../../src/quantity/index.ts'
import { handoverSheetFrom, proofSheetFrom } from '../../../src/sheet/index.ts'
import { demoSources } from '../../support/demo-sources.ts'
import { entryOf, finishedJob } from '../../support/finished-job.ts'

const bus = demoSources('07')
const sheetOf = (more: readonly Entry[] = [], options = {}) =>
  handoverSheetFrom(finishedJob(more), { today: '2026-03-11', ...options })
const last = finishedJob().job.entries.length
const wheel = 'front right'
const nuts = (kind: 'undone' | 'tightened', more = {}) =>
  entryOf(kind, { joint: 'wheel-nuts', wheel, hand: 'T', ...more })
const loose = nuts('undone', { to: 'open' })
const final = nuts('tightened', { stage: 'final', torque: '190 N·m', position: ['on the ground'] })
const drivenWell = (sheet: ReturnType<typeof sheetOf>, no?: string) =>
  entryOf('road test', {
    when: 'after the work',
    driven: true,
    answers: [...sheet.standing, ...sheet.road].map(({ question }) => ({
      question,
      answer: question === no ? 'no' : 'yes',
    })),
  })

test('SH53 what holds it from its first drive stands first, by joint and stage, until it is put right', () => {
  const held = sheetOf([loose])
  expect(held.holds[0]).toMatchObject({ stage: 'refit' })
  expect(held.holds[0]!.sentence).toMatch(/wheel nuts/i)
  expect(held.next).toMatchObject({ stage: 'refit', button: 'To the bolt book' })
  expect(sheetOf().holds).toEqual([])
  expect(sheetOf().next.place).toBe('road')
  const looked = entryOf('road test', { when: 'after the work', driven: false })
  expect(sheetOf([looked]).next.place).toBe('road')
  expect(sheetOf([looked, drivenWell(sheetOf())]).next.place).toBe('sign')
})

test('SH53 toe that is not proven after a move holds it at the angles; a pedal that is not firm holds it too', () => {
  const move = entryOf('moved', { adjuster: Object.keys(bus.corners.front.adjusters)[0], wheel, by: '10°' })
  const moved = sheetOf([move])
  expect(moved.holds.map(({ stage }) => stage)).toContain('angles')
  const { entries } = finishedJob().job
  const proving = entries.findIndex(({ kind, data }) => kind === 'round' && data['number'] === 2)
  const readAs = (purpose: string) => {
    const round = { ...entries[proving]!, data: { ...entries[proving]!.data, purpose } }
    const log = [...entries.slice(0, proving), move, round, ...entries.slice(proving + 1)]
    const { job, ...models } = finishedJob()
    return handoverSheetFrom({ ...models, job: { ...job, entries: log } }).holds.map(({ stage }) => stage)
  }
  expect(readAs('proving')).not.toContain('angles')
  expect(readAs('provisional')).toContain('angles')
  const pedal = (firm: boolean) => entryOf('pedal', { firm })
  expect(sheetOf([pedal(false)]).holds.at(-1)!.sentence).toContain('not firm')
  expect(sheetOf([pedal(false), pedal(true)]).holds).toEqual([])
  expect(sheetOf().standing.flatMap(({ question, tells }) => (tells === 'pedal' ? [question] : []))).toEqual([
    'Brake pedal firm?',
  ])
})

test('SH53 the complaint is a question of the road test; an answer that is not well is open until a later one is', () => {
  const before = sheetOf()
  const [gone] = before.road
  expect(gone!.question).toContain('drifts')
  const bad = drivenWell(before, gone!.question)
  expect(sheetOf([bad]).doubts).toEqual([`${gone!.question} no.`])
  expect(sheetOf([bad]).covers).toContain('one answer is not well')
  const again = sheetOf([bad, drivenWell(before)])
  expect(again.doubts).toEqual([])
  expect(again.road.every(({ answer }) => answer === 'yes')).toBe(true)
})

test('SH54 nothing open is hidden: all that the proof sheet has open is open here, in the same words', () => {
  for (const sources of [bus, demoSources('12'), finishedJob([loose])]) {
    const proof = proofSheetFrom(sources)
    const sheet = handoverSheetFrom(sources)
    expect(sheet.open).toEqual(proof.open)
    expect(sheet.sentence).toBe(proof.sentence)
    expect(sheet.covers).toContain(proof.sentence)
  }
})

test('SH54 what counts from the geometry is due once that was touched, and is not where nothing was', () => {
  expect(sheetOf().electronics.filter(({ why }) => why !== null)).toEqual([])
  const tie = Object.entries(bus.corners.front.joints).find(([, { joins }]) => joins.includes('tie-rod'))![0]
  const touched = sheetOf([entryOf('undone', { joint: tie, wheel, to: 'open', hand: 'T' })])
  expect(touched.electronics.filter(({ why }) => why !== null).map(({ what }) => what)).toEqual([
    'steering angle zero',
    'forward camera',
    'forward radar',
    'headlamps',
  ])
  const done = entryOf('electronics', { what: 'headlamps', state: 'sent out', to: 'the lamp bench' })
  const lamps = sheetOf([done]).electronics.find(({ what }) => what === 'headlamps')!
  expect(lamps).toMatchObject({ state: 'sent out', why: null })
  expect(lamps.noted!.texts['to']).toBe('the lamp bench')
})

test('SH55 wheels that were off propose their second tightening, in the units of whoever reads, once', () => {
  const [proposal] = sheetOf([loose, final]).proposals
  expect(proposal).toMatchObject({ what: 'wheel nuts again', wheels: [wheel] })
  expect(proposal!.choices.map(({ words }) => words)).toEqual([
    'after 50 km',
    'after 100 km',
    'on 2026-03-14',
  ])
  const us = sheetOf([loose, final], { units: usUnits }).proposals[0]!
  expect(us.choices[0]!.after).toBe('30 mi')
  const agreed = entryOf('follow-up', { what: 'wheel nuts again', after: '50 km', wheels: [wheel] })
  const after = sheetOf([loose, final, agreed])
  expect(after.proposals).toEqual([])
  expect(after.followUps[0]).toMatchObject({ what: 'wheel nuts again', when: 'after 50 km', done: false })
  expect(sheetOf().proposals).toEqual([])
})

test('SH55 a new spring proposes heights and angles again', () => {
  const spring = Object.entries(bus.corners.front.parts).find(([, part]) => part.kind === 'spring')![0]
  const sheet = sheetOf([entryOf('part renewed', { part: spring, wheels: [wheel], lot: 'S-2291' })])
  expect(sheet.proposals.map(({ what }) => what)).toContain('heights and angles again')
  expect(sheet.parts[0]!.words).toContain('lot S-2291')
})

test('SH54 two values stand as they differ, each with its entry, and a decision settles them', () => {
  const other = nuts('tightened', { stage: 'final', torque: '160 N·m', position: ['on the ground'] })
  const log = [loose, final, other]
  const [conflict] = sheetOf(log).conflicts
  expect(conflict!.values.map(({ says }) => says)).toEqual(['torque 190 N·m', 'torque 160 N·m'])
  expect(conflict!.values.map(({ of }) => of)).toEqual([last + 1, last + 2])
  expect(sheetOf(log).next.place).toBe('decide')
  const decided = entryOf('decision', {
    of: [last + 1, last + 2],
    keep: last + 1,
    why: 'the sheet says so',
    hand: 'T',
  })
  expect(sheetOf([...log, decided]).conflicts).toEqual([])
})

test('SH54 not road-ready comes before everything but a decision, until it is cleared', () => {
  const held = entryOf('not road-ready', {
    reason: 'no arm to be had',
    told: 'fleet office',
    keys: 'board, hook 4',
    made: 'safe to stand',
    hand: 'T',
  })
  const sheet = sheetOf([loose, held])
  expect(sheet.notReady[0]).toMatchObject({ what: 'no arm to be had', done: false })
  expect(sheet.notReady[0]!.words).toBe('told: fleet office, keys: board, hook 4, made safe to stand, T')
  expect(sheet.next.place).toBe('not-ready')
  const cleared = entryOf('cleared', { of: last + 1, how: 'arm came', hand: 'T' })
  expect(sheetOf([loose, held, cleared]).next.place).not.toBe('not-ready')
})

test('SH54 a signature says what it covers; what came after it is named, with when and by whom', () => {
  const sha = 'a'.repeat(64)
  const seal = (kind: string, data: Entry['data'], seq: number, after: string[]) => ({
    ...{ format: 1, workshop: 'w', job: 'j', device: 'd'.repeat(64), signature: 'e'.repeat(128) },
    ...{ kind, data, seq, after, at: '2026-03-11T15:40:00Z', offset: '+01:00', person: 'KB' },
    id: String(seq).repeat(64),
  })
  const first = seal('opened', bus.job.entries[0]!.data, 1, [])
  const corners = { front: sha }
  const signed = seal(
    'signed off',
    { heads: [first.id], fold: 1, engine: '1', state: sha, corners, hand: 'KB' },
    2,
    [first.id],
  )
  const late = seal('note', { text: 'the owner rang' }, 3, [signed.id])
  const sheet = handoverSheetFrom(
    { ...bus, job: { ...bus.job, entries: [first, signed, late] } },
    { today: '2026-03-11' },
  )
  expect(sheet.signed).toEqual({
    words: 'Signed off, 16:40 by KB: 1 entry covered.',
    late: ['Note, the owner rang, 16:40 by KB'],
  })
  expect(sheet.covers).toContain('all 3 entries of this job, by KB')
})
