import { describe, expect, test } from 'vitest'
import { type Corner, readCorner, startingLayout } from '../../../src/corner/index.ts'
import type { SuspectKind } from '../../../src/findings/index.ts'
import { type Entry, foldJob } from '../../../src/job/index.ts'
import type { Side } from '../../../src/linkage/index.ts'
import { metricUnits } from '../../../src/quantity/index.ts'
import { ghostOnCorner } from '../../../src/sheet/findings-ghost.ts'
import { findingsProblemOfJob } from '../../../src/sheet/findings-problem-of-job.ts'
import { findingsOfJob, type SheetSources } from '../../../src/sheet/index.ts'
import { demoSources } from '../../support/demo-sources.ts'

const bus = demoSources('07')
const van = demoSources('12')
const withEntries = (sources: SheetSources, change: (entries: readonly Entry[]) => readonly Entry[]) => ({
  ...sources,
  job: { ...sources.job, entries: change(sources.job.entries) },
})
const leafFront = await startingLayout('solid-axle-leaf-front')
const first = findingsOfJob(bus)
const ofVan = findingsOfJob(van)

describe('SH28 whose readings are judged', () => {
  test('the first round; the worn joint that the demo was made with comes first in it, and is gone in the second', () => {
    expect(first.round).toBe(1)
    expect(first.groups[0]!.suspects[0]!.id).toBe('worn ball joint | front | right | lower-ball-joint')
    expect(first.cannotTell).toBe(false)
    const second = findingsOfJob(bus, { round: 2 })
    expect(second.round).toBe(2)
    expect(second.orders.filter(({ advice }) => advice === 'order now')).toEqual([])
    expect(second.groups[0]!.suspects.map(({ id }) => id)).not.toContain(first.groups[0]!.suspects[0]!.id)
  })
  test('a part renewed after the readings takes nothing from their evidence', () => {
    const until = bus.job.entries.findIndex(({ kind }) => kind === 'part renewed')
    const before = findingsOfJob(withEntries(bus, (entries) => entries.slice(0, until)))
    expect(before.groups).toEqual(first.groups)
  })
  test('how many turns a thread is from where it was found is no evidence', () => {
    const turned = withEntries(bus, (entries) =>
      entries.map((entry) =>
        entry.kind === 'as found' && entry.data['adjuster'] === 'tie-rod'
          ? { ...entry, data: { ...entry.data, setting: '2 turns' } }
          : entry,
      ),
    )
    const state = foldJob(turned.job.entries)
    const round = state.rounds.find(({ number }) => number === 1)!
    const { problem } = findingsProblemOfJob(turned, state, { round, units: metricUnits })
    const { left, right } = problem.axles[0]!.settings
    expect([left['tie-rod'], right['tie-rod']]).toEqual([null, null])
    expect(right['lower-rear-eccentric']).toEqual(expect.any(Number))
  })
  test('a round that is not there is told, and the first one stands', () => {
    const other = findingsOfJob(bus, { round: 9 })
    expect(other.round).toBe(1)
    expect(other.troubles.join()).toContain('No round 9')
  })
})

describe('SH29 a finding', () => {
  test('has size and spread, belief in steps of five, evidence by reading, value and spread', () => {
    for (const { groups } of [first, ofVan])
      for (const { sentence, beliefText, suspects } of groups) {
        expect(sentence).toMatch(/^[A-Z].*\.$/)
        for (const text of [beliefText, ...suspects.map((one) => one.beliefText)])
          expect(text).toMatch(/^(about \d?[05] %|more than 95 %|less than 5 %)$/)
        if (suspects.length > 1) expect(sentence).toContain('cannot tell')
      }
    expect(first.groups[0]!.sentence).toMatch(/ by 1\.\d+ mm ± 0\.\d+ mm/)
    expect(first.groups[0]!.suspects[0]!.speaksFor[0]).toMatch(
      /^Play of the lower ball joint.* mm ± .*: strongly\.$/,
    )
  })
  test('with nothing read the answer is “I cannot tell”, with what was not read and what to do', () => {
    const none = findingsOfJob(withEntries(bus, (entries) => entries.slice(0, 1)))
    expect(none.cannotTell).toBe(true)
    expect(none.answer).toMatch(/^I cannot tell/)
    expect(none.round).toBeNull()
    expect(none.unread).toContain('hand checks')
    expect(none.checks.length).toBeGreaterThan(0)
    expect(none.orders.filter(({ advice }) => advice === 'order now')).toEqual([])
  })
})

describe('SH30 what would look nearly the same', () => {
  // The demo's van has a bent strut (scripts/examples/unit-12.mjs); a bent knuckle of the usual size is held likelier.
  test('the strut that the demo was made with is told beside the knuckle, and no part is ordered unchecked', () => {
    const [group] = ofVan.groups
    const told = [...group!.suspects.map(({ words }) => words), ...group!.alike]
    expect(told.some((words) => words.includes('strut bent'))).toBe(true)
    expect(ofVan.answer).toContain('strut')
    expect(ofVan.orders.every(({ advice }) => advice === 'check first')).toBe(true)
    expect(first.groups[0]!.alike).toEqual([])
    expect(first.orders[0]).toMatchObject({ part: 'right front lower arm', advice: 'order now' })
  })
})

test('SH31 the ghost is on its own side, near the corner, drawn a told number of times as far', () => {
  const { ghost } = first.groups[0]!.suspects[0]!
  expect(ghost).toMatchObject({ axle: 'front', side: 'right' })
  const corner = first.corners.find(({ side, title }) => side === 'right' && title.includes('front'))!
  const moved = ghost!.figure.strokes.map(({ from }, i) =>
    Math.hypot(...from.map((x, k) => x - corner.ride.strokes[i]!.from[k]!)),
  )
  expect(Math.max(...moved)).toBeGreaterThan(0.004)
  expect(Math.max(...moved)).toBeLessThan(0.06)
  expect(ghost!.times).toBeGreaterThan(1)
  expect(ghost!.figure.wheel.centre[1]).toBeLessThan(0)
})

test('SH32 of play two answers: passes by whose rule, and holds an alignment', () => {
  const [wear] = first.wear
  // 1.9 mm of play against the demo's invented 1.50 mm.
  expect(wear!.passes).toMatch(/^Passes: no\..*1\.50 mm.*invented/)
  expect(wear!.holds).toMatch(/^Holds an alignment: (yes|no); camber swings by/)
})

test('SH33 each check says how the vehicle is held; none loosens what holds a spring', () => {
  for (const { checks, groups } of [first, ofVan]) {
    for (const { hold } of checks) expect(hold).toMatch(/stands|on its wheels/i)
    for (const { proof } of groups.flatMap(({ suspects }) => suspects))
      expect(proof).not.toMatch(/(?<!never )loosen the (top|rod)/i)
  }
  const rock = first.checks.find(({ what }) => what === 'Rock at 12 and 6')!
  // The coil sits on the lower arm: its joint is unloaded by a jack under that arm (common practice, no source).
  expect(rock.hold).toContain('under the lower arm')
})

describe('SH31 springs and whole axles have a ghost too', () => {
  const state = foldJob(van.job.entries)
  const round = state.rounds.find(({ readings }) => readings.length > 0)!
  const read = readCorner(leafFront)
  if (!read.ok) throw new Error('no leaf axle')
  const leaf = read.value
  const strut = van.corners.front!
  const ghost = (corner: Corner, kind: SuspectKind, side: Side | null, value: number) =>
    ghostOnCorner(
      {
        suspect: { kind, axle: 'front', side, at: null },
        size: { value, spread: 0, unit: 'm' },
        ghost: { left: null, right: null },
      },
      corner,
      state,
      round,
    ).drawn!
  test('SH31 a sagged spring lets its wheel up by three quarters, a bush clamped hanging holds it down', () => {
    for (const corner of [strut, leaf]) {
      const at = (kind: SuspectKind, value: number) => {
        const { figure, times } = ghost(corner, kind, 'right', value)
        return { z: figure.wheel.centre[2], times }
      }
      const none = at('sagged spring', 0.002)
      const much = at('sagged spring', 0.03)
      const rest = none.z - none.times * 0.75 * 0.002
      expect(much.z - rest).toBeCloseTo(much.times * 0.75 * 0.03, 3)
      expect(at('bush clamped hanging', 0.03).z).toBeLessThan(rest)
    }
  })
  test('SH31 camber of a solid axle leans the wheel’s top out on either side, a turned axle goes to the left', () => {
    for (const side of ['left', 'right'] as const) {
      const { figure, times } = ghost(leaf, 'bent knuckle', side, 0.02)
      const out = side === 'left' ? 1 : -1
      const [, y, z] = figure.wheel.spinAxis
      // the top goes where the axis' outer end goes down
      expect((z / y) * out).toBeLessThan(0)
      expect(times).toBeGreaterThanOrEqual(1)
      const worn = ghost(leaf, 'worn kingpin', side, 0.02).figure.wheel.spinAxis
      expect((worn[2] / worn[1]) * out).toBeGreaterThan(0)
      const turned = ghost(leaf, 'axle turned', side, 0.01).figure.wheel.centre
      const still = ghost(leaf, 'axle shifted', side, 0.01).figure.wheel.centre
      // the left end back, the right end forward
      expect((turned[0] - still[0]) * out).toBeLessThan(0)
    }
  })
})
