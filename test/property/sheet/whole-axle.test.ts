import { readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { type Corner, readCorner, wholeAxlePoints } from '../../../src/corner/index.ts'
import { type Entry, readJob } from '../../../src/job/index.ts'
import { readKit } from '../../../src/kit/index.ts'
import { type TwistBeam, twistBeamReadings } from '../../../src/linkage/index.ts'
import { metre } from '../../../src/quantity/index.ts'
import { boltSheetFrom, type Sheet, type SheetSources, sheetFrom } from '../../../src/sheet/index.ts'
import { readSpec } from '../../../src/spec/index.ts'
import { demoSources } from '../../support/demo-sources.ts'
import { demo } from '../corner/demo.ts'

function whole<T>(reading: { ok: true; value: T } | { ok: false; problems: unknown }): T {
  if (reading.ok) return reading.value
  throw new Error(JSON.stringify(reading.problems))
}
const cornerOf = (path: string): Corner => whole(readCorner(demo(path)))
const beam = cornerOf('port-unit-12/rear.corner.json')
const leaf = cornerOf('port-unit-07/rear.corner.json')
const tipper = cornerOf('port-unit-03/front.corner.json')
const withRear = (unit: '07' | '12', rear: Corner): SheetSources => {
  const sources = demoSources(unit)
  return { ...sources, corners: { ...sources.corners, rear } }
}
const at = '2026-03-10T13:00:00+01:00'
const entry = (kind: string, data: Record<string, unknown>): Entry => ({ kind, data, at })

describe('SH17 a whole axle is read, drawn and moved as one', () => {
  test('SH17 a rear axle takes nothing away from the front, and brings its own drawing and clamp pose', () => {
    for (const [unit, rear] of [
      ['07', leaf],
      ['12', beam],
    ] as const) {
      const before = sheetFrom(demoSources(unit))
      const after = sheetFrom(withRear(unit, rear))
      expect(after.troubles).toEqual(before.troubles)
      expect(after.corners.map(({ title }) => title)).toEqual([
        'Left front, from its points',
        'Right front, from its points',
        'Left rear, from its points',
        'Right rear, from its points',
      ])
      expect(after.clamp).toHaveLength(4)
      expect(after.readings.map(({ text }) => text)).toEqual(before.readings.map(({ text }) => text))
      // a rear wedge that nobody has looked at keeps no front adjuster from its work, and bends no front wheel
      const said = ({ moves }: Sheet) => [
        moves.moves.map(({ name, wheel, amount }) => [name, wheel, amount]),
        moves.outOfReach.map(({ sentence }) => sentence),
        moves.sentence,
      ]
      expect(said(after)).toEqual(said(before))
    }
  })

  test('SH17 every layout that a rear axle may have gives its drawing, its clamp pose and its joints', () => {
    for (const layout of [
      'semi-trailing-rear',
      'five-link-rear',
      'solid-axle-coil-rear',
      'twist-beam-rear',
    ]) {
      const path = new URL(`../../../src/corner/layouts/${layout}.corner.json`, import.meta.url)
      const file = JSON.parse(readFileSync(path, 'utf8'))
      const rideHeight = { measured: 'hub centre to arch edge', at: '447 mm' }
      const rear = whole(readCorner({ ...file, rideHeight }))
      const sources = withRear('07', rear)
      const sheet = sheetFrom(sources)
      const drawn = sheet.corners.filter(({ title }) => title.includes('rear'))
      expect(
        drawn.map(({ side }) => side),
        layout,
      ).toEqual(['left', 'right'])
      for (const { ride, present } of drawn) {
        expect(ride.strokes.length, layout).toBeGreaterThan(1)
        expect(present!.strokes.length, layout).toBe(ride.strokes.length)
      }
      expect(sheet.troubles, layout).toEqual([])
      const poses = sheet.clamp.filter(({ title }) => title.includes('rear'))
      expect(
        poses.map(({ raise }) => raise !== null),
        layout,
      ).toEqual([true, true])
      // What turns is told; of a solid axle nothing is made up.
      expect(
        poses[0]!.bushes.every(({ twistHanging }) => twistHanging.value > 0.01),
        layout,
      ).toBe(true)
      expect(poses[0]!.bushes.length > 0, layout).toBe(!layout.startsWith('solid'))
      expect(
        boltSheetFrom(sources).bolts.some(({ wheel }) => wheel.startsWith('rear')),
        layout,
      ).toBe(true)
    }
  })

  test('SH17 both halves of the drawing are mirror images, and the wheel of the present pose stands where it was read', () => {
    const { corners } = sheetFrom(withRear('12', beam))
    const [left, right] = ['left', 'right'].map((side) =>
      corners.find((c) => c.side === side && c.title.includes('rear')),
    )
    expect(left!.ride.strokes.length).toBeGreaterThan(2)
    left!.ride.strokes.forEach(({ from, to }, i) => {
      const other = right!.ride.strokes[i]!
      expect([other.from[0], -other.from[1], other.from[2]].map((x) => x.toFixed(6))).toEqual(
        from.map((x) => x.toFixed(6)),
      )
      expect([other.to[0], -other.to[1], other.to[2]].map((x) => x.toFixed(6))).toEqual(
        to.map((x) => x.toFixed(6)),
      )
    })
    // 382 mm by design, 382 and 383 mm settled in the round: 0 and 1 mm of droop.
    const rise = (c: typeof left) => c!.present!.wheel.centre[2] - c!.ride.wheel.centre[2]
    expect(rise(left)).toBeCloseTo(0, 6)
    expect(rise(right)).toBeCloseTo(-0.001, 6)
  })

  test('SH17 the arm of a beam turns by what its pivot and wheel centre say, and its bush with it', () => {
    const clamp = sheetFrom(withRear('12', beam)).clamp.find(({ title }) => title.includes('left rear'))!
    const [pivot, hub] = ['beam-pivot', 'wheel-centre'].map((name) => beam.points[name]!.at)
    const [dx, dz] = [hub![0] - pivot![0], hub![2] - pivot![2]]
    const arm = Math.hypot(dx, dz)
    // Hanging at 85 mm of droop by the model, raised by that: asin of the heights over the arm's length.
    const turn = Math.asin(dz / arm) - Math.asin((dz - 0.085) / arm)
    expect(clamp.raise!.value).toBeCloseTo(0.085, 6)
    expect(clamp.armTurn!.value).toBeCloseTo(turn, 3)
    expect(clamp.bushes.map(({ twistHanging }) => twistHanging.value)).toEqual([clamp.armTurn!.value])
  })

  test('SH17 a solid axle has its height told and its bushes named, and no twist is made up', () => {
    const clamp = sheetFrom(withRear('07', leaf)).clamp.find(({ title }) => title.includes('left rear'))!
    expect(clamp).toMatchObject({ armTurn: null, bushes: [] })
    expect(clamp.cautions[0]).toContain('front eye bolt of the spring')
    expect(clamp.raise!.value).toBeGreaterThan(0.05)
  })

  test('SH17 what is read at another height than the sheet’s is told for a beam too', () => {
    const sources = withRear('12', beam)
    const entries = sources.job.entries.map((e) =>
      e.kind === 'ride height' && e.data['wheel'] === 'rear left' && e.data['when'] === 'settled'
        ? { ...e, data: { ...e.data, readings: ['362 mm'] } }
        : e,
    )
    const spec = sources.spec!
    const rear = spec.rideHeight!.rear
    if (!rear?.preferred) throw new Error('the demo should have a rear height')
    const made = sheetFrom({ ...sources, job: { ...sources.job, entries } })
    const camber = made.readings.find(({ name }) => name === 'rear left camber')!
    expect(camber.atSheetHeight).not.toBeNull()
    // The linkage's own change of camber from 20 mm of bump, where it was read, to the design height.
    const points = wholeAxlePoints(beam) as TwistBeam
    const at = (bump: number) =>
      twistBeamReadings(points, { left: metre(bump), right: metre(bump) }).left.camber
    const wanted = rear.preferred.value
    const change = at(beam.rideHeight!.at - wanted) - at(beam.rideHeight!.at - 0.362)
    expect(Math.abs(change)).toBeGreaterThan(1e-5)
    expect(camber.atSheetHeight!.value - camber.value).toBeCloseTo(change, 5)
    // The damper's lower end goes up with the wheel.
    const drawn = made.corners.find(({ title }) => title === 'Left rear, from its points')!
    const foot = (figure: typeof drawn.ride) => figure.strokes.find(({ part }) => part === 'damper')!.to[2]
    expect(foot(drawn.present!)).toBeGreaterThan(foot(drawn.ride) + 0.005)
  })
})

test('SH17 a wedge turns the wheel the way it says', () => {
  const sources = withRear('12', beam)
  const wedge = entry('as found', { adjuster: 'toe-wedge', wheel: 'rear left', setting: '0.25°' })
  const toe = (log: readonly Entry[]) => {
    const { corners } = sheetFrom({ ...sources, job: { ...sources.job, entries: log } })
    const [x, y] = corners.find(({ title }) => title === 'Left rear, from its points')!.present!.wheel
      .spinAxis
    return Math.atan2(x, y)
  }
  const log = sources.job.entries
  const first = log.findIndex(({ kind }) => kind === 'round')
  // Front of the wheel inward is positive: its axis turns forward on the left.
  const change = toe([...log.slice(0, first), wedge, ...log.slice(first)]) - toe(log)
  expect((change * 180) / Math.PI).toBeCloseTo(0.25, 3)
})

describe('SH18 a solid front axle has its moves', () => {
  const sources: SheetSources = (() => {
    const bus = demoSources('07')
    const kept = ['opened', 'set pressures', 'ride height', 'floor', 'round', 'reading']
    const log = bus.job.entries
      .filter((e) => kept.includes(e.kind) && e.data['when'] !== 'hanging')
      .map((e) => {
        const { wheel, wheels } = e.data as {
          wheel?: string
          wheels?: Record<string, Record<string, unknown>>
        }
        if (e.kind === 'ride height')
          return { ...e, data: { ...e.data, readings: [wheel!.startsWith('front') ? '455 mm' : '447 mm'] } }
        // Toe-in of the left front wheel, so that there is something for the rods to do.
        if (!wheels) return e
        const left = { ...wheels['front left'], front: ['112.5 mm', '113.0 mm'] }
        return { ...e, data: { ...e.data, wheels: { ...wheels, 'front left': left } } }
      })
    const found = ['front left', 'front right'].map((wheel) =>
      entry('as found', { adjuster: 'kingpin-sleeve', wheel, clock: "12 o'clock" }),
    )
    const second = log.findIndex((e) => e.kind === 'round' && e.data['number'] === 2)
    const entries = [...log.slice(0, second), ...found, ...log.slice(second)]
    return { ...bus, corners: { front: tipper, rear: null }, job: { ...bus.job, entries } }
  })()
  const sheet: Sheet = sheetFrom(sources)

  test('SH18 sleeves, tie rod and drag link are turned; those of the axle are told of the axle', () => {
    expect(sheet.troubles).toEqual([])
    const moved = sheet.moves.moves.map(({ adjuster, wheel }) => [adjuster, wheel])
    expect(moved.length).toBeGreaterThan(0)
    for (const [adjuster, wheel] of moved)
      expect(wheel).toMatch(adjuster === 'kingpin-sleeve' ? /(left|right) front/ : /front axle/)
    expect(moved.some(([adjuster]) => adjuster !== 'kingpin-sleeve')).toBe(true)
    // Toe is set with the steering wheel centred and held; camber and caster are not.
    for (const { adjuster, how } of sheet.moves.moves)
      expect(how.includes('centre the steering wheel')).toBe(adjuster !== 'kingpin-sleeve')
  })

  test('SH18 the reach of a sleeve is a circle of its tilt about the middle, and the reading lies on it', () => {
    const map = sheet.reach.find(({ side }) => side === 'left')!
    const [camber, caster] = map.path[0]!.at
    // At 12 o'clock the sleeve gives +0.5° of camber: the middle of its circle is 0.5° below the reading.
    const tilt = (0.5 * Math.PI) / 180
    for (const [x, y] of map.outline) expect(Math.hypot(x - (camber - tilt), y - caster)).toBeCloseTo(tilt, 6)
  })

  test('SH18 where the steering wheel stands is told at the road wheels', () => {
    const { steeringWheel } = sheet.moves
    const toe = (name: string) => sheet.readings.find((r) => r.name === name)!.value
    // Both wheels share their toe about the thrust line: half of left minus right, as told to that line.
    const off = (toe('front left toe to thrust') - toe('front right toe to thrust')) / 2
    expect(steeringWheel!.now.value).toBeCloseTo(off, 6)
    expect(steeringWheel!.sentence).toContain('left is plus')
  })

  test('SH18 a thread that the axle has once counts under either wheel', () => {
    const moved = (wheel: string, by: string) => entry('moved', { adjuster: 'tie-rod', wheel, by })
    const last = sources.job.entries.findIndex((e) => e.kind === 'round' && e.data['number'] === 2)
    const froms = (log: readonly Entry[]) => {
      const entries = [...sources.job.entries.slice(0, last), ...log, ...sources.job.entries.slice(last)]
      const made = sheetFrom({ ...sources, job: { ...sources.job, entries } })
      return made.moves.moves.find(({ adjuster }) => adjuster === 'tie-rod')?.from
    }
    if (sheet.moves.moves.every(({ adjuster }) => adjuster !== 'tie-rod')) throw new Error('no tie rod move')
    expect(froms([moved('front left', '1/4 turn')])).toBeCloseTo(0.25, 9)
    expect(froms([moved('front right', '1/4 turn')])).toBeCloseTo(0.25, 9)
    expect(froms([moved('front left', '1/4 turn'), moved('front right', '1/4 turn')])).toBeCloseTo(0.5, 9)
  })

  test('SH18 the drawing shows beam, kingpin, tie rod and, on its side, the drag link', () => {
    const parts = (side: 'left' | 'right') =>
      new Set(sheet.corners.find((c) => c.side === side)!.ride.strokes.map(({ part }) => part))
    for (const part of ['axle beam', 'kingpin', 'knuckle', 'tie rod', 'leaf spring']) {
      expect(parts('left')).toContain(part)
      expect(parts('right')).toContain(part)
    }
    expect(parts('left')).toContain('drag link')
    expect(parts('right')).not.toContain('drag link')
  })
})

describe('SH18 the demo tipper', () => {
  const folder = 'port-unit-03/port-unit-03'
  const sheet = sheetFrom({
    job: whole(readJob(demo(`${folder}.job.json`))),
    corners: { front: tipper, rear: null },
    spec: whole(readSpec(demo(`${folder}.spec.json`))),
    kit: whole(readKit(demo('port-kit.kit.json'))),
  })
  test('SH18 has a full sheet: moves of sleeve, tie rod and drag link, maps, drawing, heights, and no trouble', () => {
    expect(sheet.troubles).toEqual([])
    expect(sheet.unread).toEqual([])
    expect(sheet.moves.moves.map(({ adjuster, wheel }) => `${adjuster}, ${wheel}`)).toEqual([
      'kingpin-sleeve, right front',
      'tie-rod, front axle',
      'drag-link, front axle',
    ])
    expect(sheet.moves.insideAfter).toBeGreaterThan(sheet.moves.insideNow!)
    expect(sheet.reach.map(({ side }) => side)).toEqual(['left', 'right'])
    expect(sheet.clamp.every(({ raise }) => raise !== null)).toBe(true)
    // The steering wheel comes nearer to its middle by them.
    const { now, after } = sheet.moves.steeringWheel!
    expect(Math.abs(after.value)).toBeLessThan(Math.abs(now.value) / 2)
    expect(sheet.wear.map(({ verdict, since }) => [verdict, since])).toEqual([
      ['outside', 'renewed'],
      ['inside', null],
    ])
  })
})
