import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { foldJob } from '../../../src/job/index.ts'
import { type FirstMove, firstMoveOf } from '../../../src/sheet/first-move-of.ts'
import { firstMoveSuccess } from '../../../src/sheet/first-move-success.ts'
import { learnedOfJobs, responsesOf, type SheetSources, sheetFrom } from '../../../src/sheet/index.ts'
import { taughtSetup } from '../../../src/sheet/learned.ts'
import { readRounds } from '../../../src/sheet/read-rounds.ts'
import { wilsonInterval } from '../../../src/sheet/wilson-interval.ts'
import { demoSources } from '../../support/demo-sources.ts'
import { law, near } from '../../support/law.ts'
import { movedJob } from '../../support/moved-job.ts'

const degrees = (rad: number) => (rad * 180) / Math.PI
const camberOf = (sources: SheetSources) => {
  const one = responsesOf(sources).find(({ angle }) => angle === 'camber')
  if (!one) throw new Error('no camber')
  return one
}
/** What the turn of the eccentric does to camber by the points, degrees. */
const design = degrees(camberOf(movedJob()).moves[0]!.foreseen)
/** Jobs on vehicles of their own that answered so many times as much as their points say. */
const jobs = (...factors: readonly number[]) =>
  factors.map((factor, k) =>
    movedJob({
      number: `9-${k}`,
      vehicle: `Port unit ${30 + k}, crew bus`,
      camber: factor * design,
      onlyCamber: true,
      at: `2026-0${1 + k}-10T09:00:00+01:00`,
    }),
  )
const learnedFrom = (list: readonly SheetSources[]) => list.flatMap(responsesOf)
const asked = { ...movedJob({ number: '7-2', vehicle: 'Port unit 22, crew bus' }) }
/** The demo as it came, with points that stand for its layout only. */
const next: SheetSources = { ...asked, job: demoSources('07').job }

describe('SH61 without other jobs', () => {
  const plain = sheetFrom(next)
  test('SH61 no past job, none of this layout, or only the job itself: the same sheet', () => {
    expect(sheetFrom({ ...next, learned: [] })).toEqual(plain)
    const other = learnedFrom(jobs(0.5)).map((one) => ({ ...one, layout: 'front strut, typical' }))
    expect(sheetFrom({ ...next, learned: other })).toEqual(plain)
    const own = learnedFrom(jobs(0.5)).map((one) => ({
      ...one,
      job: `${next.job.workshop}, ${next.job.job}`,
    }))
    expect(sheetFrom({ ...next, learned: own })).toEqual(plain)
    expect(sheetFrom({ ...next, learned: learnedFrom(jobs(0.5)) })).not.toEqual(plain)
  })
})

describe('SH60 what is drawn out of a log', () => {
  test('SH60 by the points and by the readings, with the spread of the gauges', () => {
    const { moves, noise, vehicle, layout, when } = camberOf(movedJob({ camber: 0.4 }))
    expect(moves).toHaveLength(1)
    expect([moves[0]!.side, moves[0]!.turned]).toEqual(['right', ['front eccentric']])
    near(degrees(moves[0]!.seen), 0.4, { abs: 0.001 })
    expect(degrees(Math.sqrt(noise[0]!))).toBeGreaterThan(0.03)
    expect(degrees(Math.sqrt(noise[0]!))).toBeLessThan(0.3)
    expect([vehicle, layout]).toEqual(['port unit 21, crew bus', 'front double wishbone, typical'])
    expect(when).toBe('2026-05-04T10:00:00+01:00')
  })
  test('SH60 across a new part, from a place that nobody knows, or where nothing was turned, nothing', () => {
    const renewed = { kind: 'part renewed', data: { part: 'lower-arm', wheels: ['front right'] } }
    expect(responsesOf(movedJob({ between: [renewed] }))).toEqual([])
    const moved = movedJob()
    const unmarked = moved.job.entries.filter(
      ({ kind, data }) =>
        kind !== 'as found' ||
        data['adjuster'] !== 'lower-front-eccentric' ||
        data['wheel'] !== 'front right',
    )
    expect(responsesOf({ ...moved, job: { ...moved.job, entries: unmarked } })).toEqual([])
    expect(responsesOf(demoSources('12'))).toEqual([])
    // the other eccentric was turned too, from a marked place: nobody can tell which of the two did what
    const rear = { adjuster: 'lower-rear-eccentric', wheel: 'front right', by: '15°' }
    const both = movedJob({ between: [{ kind: 'moved', data: rear }] })
    expect(camberOf(both).moves[0]!.turned).toEqual(['front eccentric', 'rear eccentric'])
    const half = both.job.entries.filter((entry) => unmarked.includes(entry) || entry.kind !== 'as found')
    expect(half.length).toBeLessThan(both.job.entries.length)
    expect(responsesOf({ ...both, job: { ...both.job, entries: half } })).toEqual([])
    // beyond the end of its slot
    expect(responsesOf(movedJob({ turned: 80 }))).toEqual([])
  })
  test('SH60 where something that acts on both wheels was moved as well, nothing', () => {
    const moved = movedJob({
      between: [{ kind: 'moved', data: { adjuster: 'cross-member', wheel: 'front left', to: '2 mm' } }],
    })
    const { front } = moved.corners
    const shift = {
      kind: 'sub-frame shift',
      name: 'cross-member',
      along: 'y',
      moves: ['lower-front-pivot', 'lower-rear-pivot'],
      range: [-0.004, 0.004],
      step: 0.001,
      play: 0,
      seenFrom: 'below',
    }
    const adjusters = { ...front.adjusters, 'cross-member': shift } as unknown as typeof front.adjusters
    const corners = { front: { ...front, adjusters }, rear: null }
    expect(responsesOf({ ...moved, corners })).toEqual([])
    expect(responsesOf({ ...movedJob(), corners })).not.toEqual([])
  })
  test('SH60 a wheel that stands higher when it is read again is foreseen there', () => {
    const foreseen = (height?: string) => degrees(camberOf(movedJob({ height })).moves[0]!.foreseen)
    near(foreseen('439 mm'), foreseen(), { abs: 1e-9 })
    expect(Math.abs(foreseen('459 mm') - foreseen())).toBeGreaterThan(0.1)
  })
  test('SH60 a vehicle is one whatever the spaces and capitals; a drawing is one whatever its name', () => {
    const one = camberOf(movedJob())
    expect(camberOf(movedJob({ vehicle: ' PORT unit  21, crew bus' })).vehicle).toBe(one.vehicle)
    const sources = movedJob()
    const renamed = { ...sources.corners.front, id: 'another', name: 'Another', source: 'elsewhere' }
    expect(camberOf({ ...sources, corners: { front: renamed, rear: null } }).model).toBe(one.model)
    const { points } = sources.corners.front
    const shifted = Object.fromEntries(
      Object.entries(points).map(([name, p]) => [name, { ...p, at: [p.at[0] + 0.001, p.at[1], p.at[2]] }]),
    ) as unknown as typeof points
    const drawn = { ...sources.corners.front, points: shifted }
    expect(camberOf({ ...sources, corners: { front: drawn, rear: null } }).model).not.toBe(one.model)
  })
})

describe('SH61 the moves count on past jobs', () => {
  /** Camber foreseen per stroke of the right front eccentric. */
  const perStroke = (sources: SheetSources) => {
    const sheet = sheetFrom(sources)
    const turned = sheet.moves.moves.find(
      ({ side, adjuster }) => side === 'right' && adjuster === 'lower-front-eccentric',
    )!
    const camber = sheet.readings.find(({ name }) => name === 'front right camber')!
    return (camber.predicted!.value - camber.value) / (Math.sin(turned.to) - Math.sin(turned.from))
  }
  test('SH61 a model that answered with less is turned further, and one sentence says on what that rests', () => {
    const learned = learnedFrom(jobs(0.6, 0.62, 0.58, 0.6))
    const sheet = sheetFrom({ ...next, learned })
    expect(sheet.moves.sentence).toMatch(
      /The moves count on what 4 other jobs taught \(4 on others of its model\): the front eccentric changes camber 0\.[67]\d ± 0\.[12]\d times as much as its points say\.$/,
    )
    expect(sheetFrom(next).moves.sentence).not.toMatch(/count on/)
    expect(Math.abs(perStroke({ ...next, learned }))).toBeLessThan(0.9 * Math.abs(perStroke(next)))
  })
  test('SH61 jobs of the vehicle itself and of its model are told apart; a doubted one is not counted', () => {
    const vehicle = String(foldJob(next.job.entries).opened!.vehicle)
    const same = movedJob({ number: '9-9', vehicle, camber: 0.6 * design })
    const wrong = movedJob({ number: '9-8', vehicle: 'Port unit 40', camber: -4 * design })
    const learned = learnedFrom([...jobs(0.6, 0.62), same, wrong])
    expect(sheetFrom({ ...next, learned }).moves.sentence).toMatch(
      /3 other jobs taught \(1 on this vehicle, 2 on others of its model\)/,
    )
  })
})

describe('SH9 both sides of a vehicle answer alike', () => {
  test('SH9 what the right wheel taught holds for the left one, with one error; from an unknown place it teaches nothing', () => {
    const sources = movedJob({ camber: 0.5 * design })
    const setup = (one: typeof sources) => {
      const state = foldJob(one.job.entries)
      const made = taughtSetup(one.corners.front, state, readRounds(one, state), null)
      if ('axle' in made) throw new Error('corners were due')
      return made
    }
    const { left, right } = setup(sources)
    expect(left.response).toBe(right.response)
    expect(left.response!.moves).toBe(1)
    const unmarked = sources.job.entries.filter(({ kind }) => kind !== 'as found')
    expect(setup({ ...sources, job: { ...sources.job, entries: unmarked } }).left.response!.moves).toBe(0)
  })
})

describe('SH62 first-move success', () => {
  const first = (over: Partial<FirstMove> = {}): FirstMove => ({
    job: 'one',
    vehicle: 'v',
    models: ['m'],
    when: '2026-02-01T10:00:00+01:00',
    inside: ['front left camber'],
    outside: [],
    notAgain: [],
    ...over,
  })
  test('SH62 judged by the readings after the first moves, of the axles that were turned at', () => {
    const one = firstMoveOf(movedJob())!
    expect(one.outside).toContain('front right camber')
    expect([...one.inside, ...one.outside, ...one.notAgain].some((name) => name.startsWith('rear'))).toBe(
      false,
    )
    // the limits of camber are −0.75° … 0.25°
    const mended = firstMoveOf(movedJob({ camber: 0.6 }))!
    expect(mended.inside).toContain('front right camber')
    const renewed = { kind: 'part renewed', data: { part: 'lower-arm', wheels: ['front right'] } }
    expect(firstMoveOf(movedJob({ between: [renewed] }))).toBeNull()
    expect(firstMoveOf({ ...movedJob(), spec: null })).toBeNull()
    expect(firstMoveOf(demoSources('07'))).toBeNull()
  })
  test('SH62 what was not read again is not counted as inside', () => {
    const { all, notCounted } = firstMoveSuccess([
      first(),
      first({ job: 'two', notAgain: ['front right toe'] }),
      first({ job: 'three', notAgain: ['front right toe'], outside: ['front left toe'] }),
    ])
    expect([all!.inside, all!.jobs]).toEqual([1, 2])
    expect(notCounted).toEqual(['two'])
  })
  test('SH62 by quarter, earliest first, without a date last; first of its model and later', () => {
    const { quarters, byPast } = firstMoveSuccess([
      first({ job: 'c', when: '2026-04-01T00:10:00+02:00' }),
      first({ job: 'd', when: null }),
      first({ job: 'b', when: '2025-12-31T23:00:00+01:00', outside: ['front left toe'] }),
      first({ job: 'e', when: '2026-06-30T10:00:00+02:00', models: ['other'] }),
    ])
    expect(quarters.map(({ of, inside, jobs: n }) => [of, inside, n])).toEqual([
      ['2025, fourth quarter', 0, 1],
      ['2026, second quarter', 2, 2],
      ['without a date', 1, 1],
    ])
    expect(byPast.map(({ of, inside, jobs: n }) => [of, inside, n])).toEqual([
      ['first job of its model', 1, 2],
      ['later jobs of a model', 1, 1],
    ])
  })
  law(
    'SH62 the interval holds the share, lies within 0 and 1, and of the rest is its mirror',
    fc
      .integer({ min: 0, max: 400 })
      .chain((of) => fc.tuple(fc.integer({ min: 0, max: of }), fc.constant(of))),
    ([count, of]) => {
      const { low, high } = wilsonInterval(count, of)
      const rest = wilsonInterval(of - count, of)
      if (of > 0 && !(low <= count / of && count / of <= high)) return false
      near(rest.low, 1 - high, { abs: 1e-12 })
      return low >= 0 && high <= 1
    },
  )
  test('SH62 none of none: nothing is known', () => {
    expect(wilsonInterval(0, 0)).toEqual({ low: 0, high: 1 })
    expect(firstMoveSuccess([]).all).toBeNull()
  })
})

describe('SH63 what jobs teach together', () => {
  const learned = learnedOfJobs(jobs(0.6, 0.62, 0.58))
  test('SH63 of each drawing: another model, another vehicle, each vehicle again, surer in that order', () => {
    const [model] = learned.models
    expect(learned.models).toHaveLength(1)
    expect([learned.jobs, model!.jobs]).toEqual([3, 3])
    expect(model!.levels.map(({ of, jobs: n }) => [of, n])).toEqual([
      ['another model of this layout', 3],
      ['another vehicle of this model', 3],
      ['port unit 30, crew bus, again', 1],
      ['port unit 31, crew bus, again', 1],
      ['port unit 32, crew bus, again', 1],
    ])
    const camber = model!.levels.map(
      ({ answers }) => answers.find((one) => one.adjuster === 'front eccentric' && one.angle === 'camber')!,
    )
    expect(camber[0]!.spread).toBeLessThan(camber[0]!.before)
    expect(camber[1]!.spread).toBeLessThan(camber[0]!.spread)
    expect(camber[2]!.spread).toBeLessThan(camber[1]!.spread)
    expect(camber[2]!.factor).toBeLessThan(0.75)
    expect(camber[0]!.factor).toBeGreaterThan(camber[1]!.factor)
    expect(learned.split).toMatch(/^common to a layout \d+ %, to a model \d+ %, a vehicle’s own \d+ %/)
    expect(learned.moves.map(({ angle }) => angle)).toEqual(['camber', 'camber', 'camber'])
    expect(learned.moves[0]!.turned).toBe('front right, front eccentric')
  })
  test('SH63 a job that is given twice counts once, and order does not matter', () => {
    const list = jobs(0.6, 0.62, 0.58)
    expect(learnedOfJobs([...list, list[1]!])).toEqual(learned)
    expect(learnedOfJobs([...list].reverse()).models).toEqual(learned.models)
  })
  test('SH63 one that all others contradict is named; one that teaches nothing too', () => {
    const wrong = movedJob({ number: '9-8', vehicle: 'Port unit 40', camber: -4 * design })
    const { doubted, silent } = learnedOfJobs([...jobs(0.6, 0.62), wrong, demoSources('12')])
    expect(doubted).toEqual(['Harbour yard, bay 2, 9-8'])
    expect(silent).toEqual(['Harbour yard, bay 2, 12-0077'])
    const none = learnedOfJobs([demoSources('12')])
    expect([none.jobs, none.split, none.models]).toEqual([0, null, []])
  })
})
