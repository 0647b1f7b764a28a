import { describe, expect, test } from 'vitest'
import { onVehicle } from '../../../bench/twelve-measurements.ts'
import {
  adjustersOf,
  angleRead,
  changeByMove,
  distanceBetween,
  otherWheelTurned,
} from '../../../src/corner/index.ts'
import type { Entry } from '../../../src/job/index.ts'
import { deg, mm, usUnits } from '../../../src/quantity/index.ts'
import { fitOfJob, type SheetSources } from '../../../src/sheet/index.ts'
import { demoSources } from '../../support/demo-sources.ts'
import { near } from '../../support/law.ts'
import { cornerOf } from '../corner/starting-corners.ts'

const bus = demoSources('07')
const measured = (data: Record<string, unknown>): Entry => ({
  kind: 'measured',
  data: { wheel: 'front left', ...data },
})
const withLog = (more: readonly Entry[], sources: SheetSources = bus): SheetSources => ({
  ...sources,
  job: { ...sources.job, entries: [...sources.job.entries, ...more] },
})
const on = onVehicle(bus.corners.front)
const millimetres = (length: number) => `${(length * 1000).toFixed(2)} mm`
const degrees = (angle: number) => `${((angle * 180) / Math.PI).toFixed(3)}°`
const tie = on(distanceBetween('tie-inner', 'tie-outer'))

/** One of every kind, as the bus is drawn. */
const everyKind: readonly Entry[] = [
  measured({
    what: 'distance',
    from: 'tie-inner',
    to: 'tie-outer',
    readings: [millimetres(tie), millimetres(tie)],
  }),
  measured({ what: 'height', point: 'lower-outer', readings: ['232 mm'] }),
  measured({ what: 'offset', way: 'across', point: 'wheel-centre', readings: ['772 mm'] }),
  measured({
    what: 'offset',
    way: 'lengthways',
    point: 'upper-outer',
    from: 'lower-outer',
    readings: ['-17 mm'],
  }),
  measured({ what: 'slope', from: 'tie-inner', to: 'tie-outer', readings: ['-4.15°'] }),
  measured({
    what: 'angle',
    angle: 'camber',
    travel: '40 mm',
    readings: [degrees(on(angleRead('camber', { travel: mm(40) })))],
  }),
  measured({
    what: 'angle',
    angle: 'camber',
    outward: '20°',
    readings: [degrees(on(angleRead('camber', { outward: deg(20) })))],
  }),
  measured({ what: 'outer wheel', inner: '20°', readings: [degrees(on(otherWheelTurned(deg(20))))] }),
]

describe('SH26 a fit takes what was measured on a wheel, and says what it learned', () => {
  test('every kind of measurement counts, at its entry, and what is as drawn is found as drawn', () => {
    const { wheels, troubles } = fitOfJob(withLog(everyKind))
    expect(troubles).toEqual([])
    expect(wheels.map(({ wheel }) => wheel)).toEqual(['front left'])
    const [wheel] = wheels
    const first = bus.job.entries.length
    expect(wheel!.measured.filter(({ entry }) => entry !== null).map(({ entry }) => entry)).toEqual(
      everyKind.map((_, i) => first + i),
    )
    expect(wheel!.measured.every(({ used }) => used)).toBe(true)
    expect(wheel!.grossError).toBeNull()
    // what the round's gauges read of this wheel stands beside it, without an entry of its own
    expect(wheel!.measured.filter(({ entry }) => entry === null).map(({ says }) => says)).toContain('camber')
    for (const point of wheel!.points) expect(point.spread.join()).not.toContain('NaN')
    expect(wheel!.open.length).toBeGreaterThan(0)
    // 0.71°: one turn of the tie rod as the corner itself has it, within a spread of a few hundredths
    const rod = wheel!.moves.find(({ adjuster }) => adjuster.includes('tie rod'))!
    const thread = adjustersOf(bus.corners.front).find(({ kind }) => kind === 'thread')!
    const drawn = on(changeByMove('toe', { adjuster: thread, from: 0, to: 1 }))
    expect(rod.angle).toBe('toe')
    near(rod.change.value, drawn, { rel: 0.1 })
    expect(rod.change.low).toBeLessThan(drawn)
    expect(rod.change.high).toBeGreaterThan(drawn)
    for (const { next } of wheel!.moves) {
      expect(next.length).toBeLessThanOrEqual(3)
      for (const { says } of next) expect(wheel!.measured.map((row) => row.says)).not.toContain(says)
    }
  })

  test('a reading that cannot be right is named and left out', () => {
    const wrong = everyKind.map((entry, i) =>
      i === 0
        ? measured({
            what: 'distance',
            from: 'tie-inner',
            to: 'tie-outer',
            readings: [millimetres(tie + 0.05)],
          })
        : entry,
    )
    const [wheel] = fitOfJob(withLog(wrong)).wheels
    expect(wheel!.measured[0]!.used).toBe(false)
    expect(wheel!.grossError).toMatch(/tie inner to tie outer.*too large/)
    near(Number.parseFloat(wheel!.measured[0]!.fitted), 1000 * tie, { abs: 12 })
  })

  test('a spread that was written stands before the usual one, and a better tape tells more', () => {
    const tape = (spread?: string) =>
      fitOfJob(
        withLog([
          measured({
            what: 'distance',
            from: 'tie-inner',
            to: 'tie-outer',
            readings: [millimetres(tie)],
            ...(spread ? { spread } : {}),
          }),
        ]),
      ).wheels[0]!
    const width = (one: ReturnType<typeof tape>) => one.measured[0]!.read.high - one.measured[0]!.read.low
    // 95 % of a normal error: 2 · 1.96 spreads
    near(width(tape()), 2 * 1.96 * 0.0015, { rel: 1e-3 })
    near(width(tape('4 mm')), 2 * 1.96 * 0.004, { rel: 1e-3 })
  })

  test('with nothing measured it says what would be worth it; each wheel that was measured has its own', () => {
    const [none] = fitOfJob(bus).wheels
    expect(none!.wheel).toBe('front left')
    expect(none!.measured.every(({ entry }) => entry === null)).toBe(true)
    expect(none!.moves.some(({ next }) => next.length > 0)).toBe(true)
    const both = fitOfJob(
      withLog([
        measured({ what: 'height', point: 'lower-outer', readings: ['230 mm'] }),
        measured({ wheel: 'front right', what: 'height', point: 'lower-outer', readings: ['236 mm'] }),
      ]),
    ).wheels
    expect(both.map(({ wheel, measured: rows }) => [wheel, rows[0]!.read.text])).toEqual([
      ['front left', '230.0 mm'],
      ['front right', '236.0 mm'],
    ])
  })

  test('a vehicle that stands lower is held against the corner as it stands: the body is lower, the wheel is not', () => {
    const height = bus.job.entries.find(
      ({ kind, data }) => kind === 'ride height' && (data as { wheel?: string }).wheel === 'front left',
    )!
    const stands = (text: string) =>
      fitOfJob(
        withLog([
          { kind: 'ride height', data: { ...(height.data as object), when: 'settled', readings: [text] } },
          measured({ what: 'offset', way: 'across', point: 'wheel-centre', readings: ['772 mm'] }),
        ]),
      ).wheels[0]!
    const drawn = bus.corners.front.rideHeight!.at * 1000
    const up = (wheel: ReturnType<typeof stands>, name: string) =>
      Number.parseFloat(wheel.points.find((point) => point.name === name)!.at[2])
    const [level, low] = [stands(`${drawn} mm`), stands(`${drawn - 25} mm`)]
    near(up(level, 'lower front pivot') - up(low, 'lower front pivot'), 25, { abs: 1.5 })
    near(up(level, 'upper rear pivot') - up(low, 'upper rear pivot'), 25, { abs: 1.5 })
    near(up(level, 'wheel centre'), up(low, 'wheel centre'), { abs: 1.5 })
    // the joints go with the wheel, but for the little that it turns
    near(up(level, 'lower outer'), up(low, 'lower outer'), { abs: 3 })
    expect(low.grossError).toBeNull()
  })

  test('in inches for who reads inches; what cannot be fitted is a trouble and takes nothing else away', () => {
    const inches = fitOfJob(withLog(everyKind), { units: usUnits }).wheels[0]!
    expect(inches.measured[0]!.read.text).toMatch(/ in$/)
    const beam: SheetSources = { ...bus, corners: { ...bus.corners, rear: cornerOf('twist-beam-rear') } }
    const told = fitOfJob(
      withLog(
        [
          measured({ wheel: 'rear left', what: 'angle', angle: 'toe', travel: '30 mm', readings: ['0.3°'] }),
          ...everyKind,
        ],
        beam,
      ),
    )
    expect(told.wheels.map(({ wheel }) => wheel)).toEqual(['front left'])
    expect(told.troubles.join()).toMatch(/twist beam is fitted to lengths, heights/)
  })
})
