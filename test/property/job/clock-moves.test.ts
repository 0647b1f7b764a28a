import { describe, expect, test } from 'vitest'
import { adjustersOf, axleAdjustersOf, type Corner, readCorner } from '../../../src/corner/index.ts'
import {
  boltBook,
  type Entry,
  foldJob,
  type Job,
  jobAgainst,
  readJob,
  standOf,
  standOfAxle,
  writeJob,
} from '../../../src/job/index.ts'
import { demo } from '../corner/demo.ts'

function cornerOf(path: string): Corner {
  const read = readCorner(demo(path))
  if (!read.ok) throw new Error(JSON.stringify(read.problems))
  return read.value
}
const corner = cornerOf('port-unit-07/front.corner.json')
const tipper = cornerOf('port-unit-03/front.corner.json')
const washer = { adjuster: 'lower-front-eccentric', wheel: 'front left' } as const
const found = (more: Record<string, unknown>): Entry => ({ kind: 'as found', data: { ...washer, ...more } })
const moved = (more: Record<string, unknown>): Entry => ({ kind: 'moved', data: { ...washer, ...more } })
const jobOf = (entries: readonly Entry[]): Job =>
  ({ format: 1, workshop: 'w', job: '1', entries }) as unknown as Job

/** Where the washer stands, in degrees of its setting; on a left corner its mark stands at 12 at setting 0. */
function standing(log: readonly Entry[]): number | null {
  const { settings } = foldJob(log)
  const stands = standOf({ settings, adjusters: adjustersOf(corner), wheel: 'front left' })
  const { setting } = stands.find(({ adjuster }) => adjuster.id === washer.adjuster)!
  return setting === null ? null : (setting * 180) / Math.PI
}

describe('JO35 a move is told by the clock as well', () => {
  test('JO35 turned to a clock position it stands there, whatever was found; moves after it add up', () => {
    const log = [found({ clock: "12 o'clock" }), moved({ fromClock: '12:00', toClock: "1 o'clock" })]
    expect(foldJob(log).troubles).toEqual([])
    // An hour of the face is 30°.
    expect(standing(log)).toBeCloseTo(30, 9)
    expect(standing([...log, moved({ by: '-10°' })])).toBeCloseTo(20, 9)
    expect(standing([...log, moved({ to: '5°' })])).toBeCloseTo(5, 9)
    expect(standing([...log, moved({ to: '5°' }), moved({ toClock: '11:00' })])).toBeCloseTo(-30, 9)
    expect(standing([moved({ fromClock: '11:30', by: '10°' })])).toBeCloseTo(-5, 9)
  })

  test('JO35 it is written as it was read, and one end is given in one way', () => {
    const read = (data: Record<string, unknown>) =>
      readJob({
        format: 1,
        workshop: 'w',
        job: '1',
        entries: [{ kind: 'moved', data: { ...washer, ...data } }],
      })
    const good = read({ fromClock: '11:30', toClock: "1 o'clock" })
    if (!good.ok) throw new Error(JSON.stringify(good.problems))
    expect((writeJob(good.value) as { entries: { data: unknown }[] }).entries[0]!.data).toMatchObject({
      toClock: "1 o'clock",
    })
    for (const bad of [
      { to: '5°', toClock: '1:00' },
      { toClock: '1:00', by: '5°' },
      { fromClock: '12:00' },
      { from: '0°', fromClock: '12:00', by: '5°' },
    ])
      expect(read(bad).ok, JSON.stringify(bad)).toBe(false)
  })

  test('JO35 a start that is not where the log has it is told at its entry, with the corner model at hand', () => {
    const told = (...log: readonly Entry[]) =>
      jobAgainst(jobOf(log), { front: corner }).map(({ field }) => field)
    const at12 = found({ clock: "12 o'clock" })
    expect(told(at12, moved({ fromClock: '12:00', by: '5°' }))).toEqual([])
    expect(told(at12, moved({ from: '0°', by: '5°' }))).toEqual([])
    expect(told(at12, moved({ from: '20°', by: '5°' }))).toEqual(['entries[1].data.from'])
    expect(told(at12, moved({ fromClock: '1:00', by: '5°' }))).toEqual(['entries[1].data.fromClock'])
    // A mark is read to a quarter of an hour: half of that, 3.75°, is no contradiction.
    expect(told(at12, moved({ from: '3.5°', by: '5°' }))).toEqual([])
    expect(told(at12, moved({ from: '4.5°', by: '5°' }))).toEqual(['entries[1].data.from'])
    expect(told(at12, moved({ toClock: '1:00' }), moved({ fromClock: '1:00', by: '5°' }))).toEqual([])
    expect(told(at12, moved({ toClock: '1:00' }), moved({ fromClock: '12:00', by: '5°' }))).toHaveLength(1)
    // What nobody found contradicts nothing.
    expect(told(moved({ fromClock: '1:00', by: '5°' }))).toEqual([])
    const thread = { kind: 'moved', data: { adjuster: 'tie-rod', wheel: 'front left', toClock: '1:00' } }
    expect(told(thread)).toEqual(expect.arrayContaining(['entries[0].data']))
  })
})

describe('JO34 an adjuster of the axle is named under either wheel', () => {
  const entry = (kind: string, wheel: string, more: Record<string, unknown>): Entry => ({
    kind,
    data: { adjuster: 'tie-rod', wheel, ...more },
  })
  const stand = (...log: readonly Entry[]) =>
    standOfAxle({ settings: foldJob(log).settings, adjusters: axleAdjustersOf(tipper), axle: 'front' }).find(
      ({ adjuster }) => adjuster.id === 'tie-rod',
    )!
  test('JO34 what was found and what was moved are taken together', () => {
    const left = entry('as found', 'front left', { setting: '1 turn' })
    expect(stand(left).setting).toBe(1)
    expect(stand(left, entry('moved', 'front right', { by: '1/2 turn' })).setting).toBe(1.5)
    expect(
      stand(
        left,
        entry('moved', 'front right', { by: '1/2 turn' }),
        entry('moved', 'front left', { by: '1 turn' }),
      ).setting,
    ).toBe(2.5)
    expect(stand().setting).toBe(0)
  })
  test('JO34 two things under two names are not known', () => {
    const left = entry('as found', 'front left', { setting: '1 turn' })
    expect(stand(left, entry('as found', 'front right', { setting: '2 turns' }))).toMatchObject({
      setting: null,
    })
    const to = entry('moved', 'front left', { to: '2 turns' })
    expect(stand(to, entry('moved', 'front right', { by: '1 turn' }))).toMatchObject({ setting: null })
    expect(stand(to, entry('moved', 'front right', { by: '1 turn' })).unknown).toContain('both wheels')
  })
  test('JO34 a move of it opens every joint that carries it', () => {
    const clamp = (wheel: string): Entry => ({
      kind: 'tightened',
      data: { joint: 'tie-rod-clamp', wheel, stage: 'final', torque: '30 N·m', hand: 'T' },
    })
    const book = (log: readonly Entry[]) =>
      boltBook({ state: foldJob(log), corners: { front: tipper, rear: null }, spec: null, kit: null })
        .filter(({ joint }) => joint === 'tie-rod-clamp')
        .map(({ place, record }) => [place, record.fell?.by ?? null])
    const both = [clamp('front left'), clamp('front right')]
    expect(book(both)).toEqual([
      ['front left', null],
      ['front right', null],
    ])
    expect(book([...both, entry('moved', 'front right', { by: '1 turn' })])).toEqual([
      ['front left', 2],
      ['front right', 2],
    ])
    // What is at one wheel opens nothing at the other.
    const sleeve = { kind: 'moved', data: { adjuster: 'kingpin-sleeve', wheel: 'front right', by: '30°' } }
    expect(book([...both, sleeve]).map(([, by]) => by)).toEqual([null, null])
  })
})
