import fc from 'fast-check'
import { expect, test } from 'vitest'
import {
  atHeight,
  axisFromSweep,
  bestImprovement,
  camberReading,
  type FloorMap,
  floorByTurning,
  floorCorrection,
  floorTilt,
  includedAngle,
  isAngleName,
  kindOfSource,
  playReading,
  readingOf,
  rideHeight,
  runOutFit,
  runOutReading,
  smallAngleCaster,
  sourceName,
  sweepThroughLinkage,
  toeByStrings,
  totalToeByTape,
  widenedByPlay,
  zeroByReversal,
} from '../../../src/gauge/index.ts'
import { mechanism, type Point } from '../../../src/linkage/index.ts'
import {
  combine,
  correlation,
  exact,
  halfWidth,
  normal,
  rectangular,
  standardUncertainty,
} from '../../../src/measure/index.ts'
import { deg, metre, mm, rad } from '../../../src/quantity/index.ts'
import { steeredSeen } from '../../honest/truth-wheel.ts'
import { law, near } from '../../support/law.ts'
import {
  camberAngle,
  casterAngle,
  height,
  saiAngle,
  side,
  sizes,
  toeAngle,
  turnAngle,
} from './arbitraries.ts'
import { dial, inclinometer, plain, rule, strings, tape } from './kit.ts'

const readings = (values: readonly number[], turns = values.map(() => 0)) =>
  values.map((value, i) => ({ reading: rad(value), wheelTurn: deg(turns[i]!) }))
const camber = (values: readonly number[], turns?: readonly number[], context = plain({})) =>
  camberReading(
    {
      method: 'inclinometer',
      id: 'a',
      wheel: 'front left',
      gauge: 'level',
      readings: readings(values, turns as number[]),
    },
    context,
  )
const flat: FloorMap = {
  id: 'bay',
  name: 'bay',
  found: 'with a level',
  heights: { 'front left': mm(0), 'front right': mm(0), 'rear left': mm(0), 'rear right': mm(0) },
  spread: { 'front left': mm(1), 'front right': mm(1), 'rear left': mm(1), 'rear right': mm(1) },
}

law(
  'GA1 a rim that runs out leaves the mean of three or more places, and of two half a turn apart',
  fc.tuple(camberAngle, sizes, fc.double({ min: 0, max: 360, noNaN: true })),
  ([truth, amplitude, phase]) => {
    const seen = (turns: readonly number[]) =>
      turns.map((turn) => truth + amplitude * Math.cos(deg(turn - phase)))
    return [
      [0, 120, 240],
      [10, 95, 200, 300],
      [30, 210],
    ].every((turns) => near(camber(seen(turns), turns).measured.value, truth, { abs: 1e-12 }))
  },
)

law('GA1 zero and slope come apart by reversal', fc.tuple(camberAngle, camberAngle), ([zero, slope]) => {
  const got = zeroByReversal({ one: [zero + slope], other: [zero - slope] }, inclinometer(), 'a')
  return near(got.zero.value, zero, { abs: 1e-12 }) && near(got.slope.value, slope, { abs: 1e-12 })
})

law(
  'GA1 a zero read by reversal comes off the reading',
  fc.tuple(camberAngle, camberAngle),
  ([truth, zero]) =>
    near(camber([truth + zero], [0], plain({ zeros: { level: exact(zero) } })).measured.value, truth, {
      abs: 1e-12,
    }),
)

law('GA1 more places are never worse, and what stays is not divided', sizes, (a) => {
  const context = plain({
    instruments: [inclinometer({ placing: rad(a), accuracy: rad(a / 2), zeroError: rad(a / 3) })],
  })
  const u = (n: number) =>
    standardUncertainty(
      camber(
        Array.from({ length: n }, () => 0),
        Array.from({ length: n }, (_, i) => (360 * i) / n),
        context,
      ).measured,
    )
  const stays = Math.hypot(a / 2, a / 3) / Math.sqrt(3)
  return near(u(4), Math.hypot(a / Math.sqrt(12), stays), { rel: 1e-9 }) && u(8) < u(4) && u(8) > stays
})

law('GA1 a hand steadier than half a step cannot average the step away', sizes, (step) => {
  const context = plain({ instruments: [inclinometer({ resolution: rad(step) })] })
  return near(
    standardUncertainty(camber([0, 0, 0, 0], [0, 0, 0, 0], context).measured),
    step / Math.sqrt(12),
    { rel: 1e-9 },
  )
})

law('GA1 readings that differ more than the gauge explains widen the spread', sizes, (a) => {
  const context = plain({ instruments: [inclinometer({ placing: rad(a) })] })
  const wild = camber([0, 20 * a, 0], [0, 0, 0], context)
  return (
    wild.notes.some((note) => note.includes('differ more')) &&
    standardUncertainty(wild.measured) >
      5 * standardUncertainty(camber([0, a, 0], [0, 0, 0], context).measured)
  )
})

const strung = (toes: Readonly<Record<string, number>>, { turn = 0, zero = 0 } = {}) => {
  const wheels = Object.fromEntries(
    Object.entries(toes).map(([place, toe]) => {
      // A pair of strings turned by `turn` against the vehicle, to the left.
      const own = 0.2 * Math.sin(toe + (place.endsWith('left') ? 1 : -1) * turn)
      return [
        place,
        { front: [metre(0.15 + own + zero)], rear: [metre(0.15 - own + zero)], span: metre(0.4) },
      ]
    }),
  )
  // Turned about the middle of the wheelbase: in front both strings lie further left, behind further right.
  const sign = (place: string) => (place.endsWith('left') ? 1 : -1) * (place.startsWith('front') ? 1 : -1)
  const hub = (place: string) => metre(0.1 + zero + sign(place) * 1.25 * turn)
  return toeByStrings(
    {
      method: 'strings and rule',
      id: 'a',
      rule: 'rule',
      strings: 'strings',
      wheels,
      wheelbase: metre(2.5),
      hubs: {
        'front left': hub('front left'),
        'front right': hub('front right'),
        'rear left': hub('rear left'),
        'rear right': hub('rear right'),
      },
    },
    plain({ instruments: [rule({ zeroError: mm(0.3), placing: mm(0.2) }), strings({ spacing: mm(1) })] }),
  )
}

law(
  'GA2 strings that lie askew, and a worn rule, leave every toe',
  fc.tuple(
    toeAngle,
    toeAngle,
    fc.double({ min: -0.005, max: 0.005, noNaN: true }),
    fc.double({ min: -0.002, max: 0.002, noNaN: true }),
  ),
  ([left, right, turn, zero]) => {
    const got = strung({ 'front left': left, 'front right': right }, { turn, zero })
    const value = (name: string) => got.find((reading) => reading.name === name)!.measured.value
    return (
      near(value('front left toe'), left, { abs: 1e-9 }) &&
      near(value('front right toe'), right, { abs: 1e-9 }) &&
      near(value('front total toe'), left + right, { abs: 1e-9 })
    )
  },
)

test('GA2 how the strings lie is shared with opposite signs, so total toe does not feel it', () => {
  const got = strung({ 'rear left': 0.002, 'rear right': 0.001 })
  const parts = (name: string) =>
    got.find((reading) => reading.name === name)!.measured.parts.map(({ source }) => source)
  expect(parts('rear left toe').some((source) => source.includes('hub'))).toBe(true)
  expect(parts('rear total toe').some((source) => source.includes('hub'))).toBe(false)
  expect(parts('rear total toe').some((source) => kindOfSource(source) === 'strings')).toBe(true)
  expect(parts('thrust').some((source) => kindOfSource(source) === 'strings')).toBe(false)
  expect(got.map(({ name }) => name)).toEqual(['rear left toe', 'rear right toe', 'rear total toe', 'thrust'])
})

test('GA2 set-back: the right hub behind the left is positive', () => {
  const got = readingOf(
    {
      method: 'strings and rule',
      id: 'a',
      rule: 'rule',
      strings: 'strings',
      wheelbase: metre(2.5),
      wheels: { 'front left': { front: [metre(0.1)], rear: [metre(0.1)], span: metre(0.4) } },
      hubs: {
        'front left': metre(0.1),
        'front right': metre(0.1),
        'rear left': metre(0.1),
        'rear right': metre(0.1),
      },
      along: { 'front left': metre(0.5), 'front right': metre(0.51) },
    },
    plain({}),
  )
  expect(got.find(({ name }) => name === 'front set-back')!.measured.value).toBeCloseTo(0.01, 12)
})

law(
  'GA2 a tape that is too long by a share leaves total toe but for that share',
  fc.tuple(toeAngle, fc.double({ min: -0.001, max: 0.001, noNaN: true })),
  ([toe, share]) => {
    const half = Math.sqrt(0.33 ** 2 - 0.1 ** 2)
    const read = (difference: number, stretch: number) =>
      totalToeByTape(
        {
          method: 'tape on a scribed line',
          id: 'a',
          axle: 'rear',
          tape: 'tape',
          front: [metre(1.5 * stretch)],
          rear: [metre((1.5 + difference) * stretch)],
          belowHub: metre(0.1),
          levelled: metre(0),
          radius: metre(0.33),
        },
        plain({ instruments: [tape({ accuracy: 0.001 })] }),
      ).measured
    const good = read(4 * half * Math.sin(toe / 2), 1)
    return (
      near(good.value, toe, { abs: 1e-12 }) &&
      near(read(4 * half * Math.sin(toe / 2), 1 + share).value, toe, { rel: 1.1e-3, abs: 1e-12 }) &&
      standardUncertainty(good) <= 0.0007 * Math.abs(toe) + 1e-12
    )
  },
)

law(
  'GA3 the pads of an axle count with opposite signs at its two wheels; cross camber twice, total not at all',
  fc.tuple(height, height),
  ([l, r]) => {
    const tilt = floorTilt(
      plain({
        floor: { ...flat, heights: { ...flat.heights, 'front left': metre(l), 'front right': metre(r) } },
      }),
    )
    const of = (s: 'left' | 'right') =>
      floorCorrection(exact(0), { angle: 'camber', axle: 'front', side: s }, tilt).measured
    const cross = combine([
      { of: of('left'), times: 1 },
      { of: of('right'), times: -1 },
    ])
    const sum = combine([
      { of: of('left'), times: 1 },
      { of: of('right'), times: 1 },
    ])
    return (
      near(cross.value, (2 * (l - r)) / 1.5, { abs: 1e-12 }) &&
      near(sum.value, 0, { abs: 1e-12 }) &&
      sum.parts.length === 0 &&
      near(correlation(of('left'), of('right')), -1, { abs: 1e-12 })
    )
  },
)

law(
  'GA3 raising all four pads changes nothing; raising the front ones takes the pitch off caster',
  fc.tuple(height, casterAngle, side),
  ([h, caster, s]) => {
    const all = {
      'front left': metre(h),
      'front right': metre(h),
      'rear left': metre(h),
      'rear right': metre(h),
    }
    const read = (heights: FloorMap['heights']) =>
      floorCorrection(
        exact(caster),
        { angle: 'caster', axle: 'front', side: s },
        floorTilt(plain({ floor: { ...flat, heights } })),
      ).measured.value
    return (
      near(read(all), caster, { abs: 1e-12 }) &&
      near(read({ ...all, 'rear left': mm(0), 'rear right': mm(0) }), caster - h / 2.5, { abs: 1e-12 })
    )
  },
)

law('GA3 included angle does not feel the floor', fc.tuple(height, side), ([h, s]) => {
  const tilt = floorTilt(plain({ floor: { ...flat, heights: { ...flat.heights, 'front left': metre(h) } } }))
  const of = (angle: 'camber' | 'sai') =>
    floorCorrection(exact(0.1), { angle, axle: 'front', side: s }, tilt).measured
  const { measured } = includedAngle(s, { sai: of('sai'), camber: of('camber') })
  return near(measured.value, 0.2, { abs: 1e-12 }) && measured.parts.length === 0
})

law(
  'GA3 turning the vehicle round finds the floor without a level',
  fc.tuple(height, height, height, camberAngle, camberAngle),
  ([front, rear, nose, a, b]) => {
    const [rollFront, rollRear, pitch] = [front / 1.5, rear / 1.5, nose / 2.5]
    const own = { front: { left: a, right: b }, rear: { left: b, right: -a } }
    const stand = (axle: 'front' | 'rear', pads: 'front' | 'rear', turned: boolean) => {
      const roll = (pads === 'front' ? rollFront : rollRear) * (turned ? -1 : 1)
      return { axle, pads, turned, camber: { left: own[axle].left - roll, right: own[axle].right + roll } }
    }
    const map = floorByTurning(
      [
        {
          axles: [stand('front', 'front', false), stand('rear', 'rear', false)],
          rail: { reading: 0.02 + pitch, turned: false },
        },
        {
          axles: [stand('front', 'rear', true), stand('rear', 'front', true)],
          rail: { reading: 0.02 - pitch, turned: true },
        },
        { axles: [stand('front', 'front', true)] },
      ],
      { track: metre(1.5), wheelbase: metre(2.5) },
      { resolution: deg(0.05), placing: deg(0.05) },
      { id: 'bay', name: 'bay' },
    )
    const h = map.heights
    const tilt = floorTilt(plain({ floor: map }))
    return (
      near(h['front left'] - h['front right'], front, { abs: 1e-9 }) &&
      near(h['rear left'] - h['rear right'], rear, { abs: 1e-9 }) &&
      near(tilt.pitch.value, pitch, { abs: 1e-9 }) &&
      map.spread['front left'] > 0
    )
  },
)

// The truth side turns real vectors about the axis; it shares no formula with the inference.
law(
  'GA5 the sweep gives back the axis a wheel was turned about, at any pair of angles',
  fc.tuple(casterAngle, saiAngle, camberAngle, turnAngle, turnAngle, side),
  ([caster, sai, c, p, q, s]) => {
    const wheel = { side: s === 'left' ? 1 : -1, camber: c, caster, sai } as const
    const place = (heading: number) => {
      const seen = steeredSeen(wheel, heading, { roll: 0, pitch: 0 })
      return { steer: rad(heading), camber: rad(seen.camber), tilt: rad(seen.tilt) }
    }
    const got = axisFromSweep([place(p), place(-q)], { side: s })
    return near(got.caster, caster, { abs: 1e-9 }) && near(got.sai, sai, { abs: 1e-9 })
  },
)

law(
  'GA5 the small-angle form stays within 3 % of tan caster plus a twentieth of a degree, at even sweeps',
  fc.tuple(casterAngle, saiAngle, turnAngle, side),
  ([caster, sai, p, s]) => {
    const wheel = { side: s === 'left' ? 1 : -1, camber: 0, caster, sai } as const
    const at = (heading: number) => ({
      steer: rad(heading),
      camber: rad(steeredSeen(wheel, heading, { roll: 0, pitch: 0 }).camber),
    })
    return near(smallAngleCaster(at(p), at(-p), s), Math.tan(caster), { rel: 0.03, abs: deg(0.05) })
  },
)

const corner = {
  layout: 'double wishbone',
  camber: deg(-0.5),
  toe: deg(0.1),
  tyreRadius: mm(330),
  wheelCentre: [0, 0.75, 0.33] as Point,
  upperFrontInner: [0.12, 0.42, 0.56] as Point,
  upperRearInner: [-0.14, 0.42, 0.55] as Point,
  upperOuter: [-0.025, 0.66, 0.55] as Point,
  lowerFrontInner: [0.18, 0.36, 0.22] as Point,
  lowerRearInner: [-0.2, 0.36, 0.225] as Point,
  lowerOuter: [0.012, 0.715, 0.2] as Point,
  tieInner: [-0.14, 0.36, 0.26] as Point,
  tieOuter: [-0.13, 0.69, 0.245] as Point,
} as const

test('GA7 through a corner model the sweep sees another axis than the joints, by tenths of a degree, and the reading is moved by that', () => {
  const m = mechanism(corner)
  const { offset, sweep } = sweepThroughLinkage(m, [deg(20), deg(-20)])
  const joints = Math.atan2(0.012 + 0.025, 0.35)
  expect(sweep.caster + offset!.caster).toBeCloseTo(joints, 9)
  expect(Math.abs(offset!.caster)).toBeGreaterThan(deg(0.01))
  expect(Math.abs(offset!.caster)).toBeLessThan(deg(1))
  const observation = {
    method: 'steer sweep',
    id: 'a',
    side: 'left',
    gauge: 'level',
    steerGauge: 'plates',
    sweeps: [{ left: { steer: deg(20), camber: deg(1.5) }, right: { steer: deg(-20), camber: deg(-1.5) } }],
  } as const
  const [without] = readingOf(observation, plain({}))
  const [through] = readingOf(observation, plain({ linkage: { left: m } }))
  expect(through!.measured.value - without!.measured.value).toBeCloseTo(offset!.caster, 9)
  expect(through!.corrections.find(({ name }) => name === 'linkage')!.by).toBeCloseTo(offset!.caster, 9)
  expect(standardUncertainty(through!.measured)).toBeGreaterThan(standardUncertainty(without!.measured))
})

law(
  'GA5 plates set to zero on a wheel with toe-in read caster by toe · tan SAI too little, SAI by toe · tan caster too much',
  fc.tuple(fc.double({ min: -0.6, max: 0.6, noNaN: true }), fc.constantFrom('left', 'right')),
  ([toe, side]) => {
    const wheel = {
      side: side === 'left' ? 1 : -1,
      camber: deg(-0.5),
      caster: deg(5),
      sai: deg(12),
    } as const
    const still = { roll: 0, pitch: 0 }
    // toed in by `toe`, the wheel heads that much to the other side of where the plate points
    const place = (plate: number, left: 1 | -1) => {
      const seen = steeredSeen(wheel, deg(plate) - left * deg(toe), still)
      return { steer: deg(plate), camber: rad(seen.camber), tilt: rad(seen.tilt) }
    }
    const got = axisFromSweep([place(20, wheel.side), place(-20, wheel.side)], { side })
    return (
      near(Math.tan(got.caster), Math.tan(deg(5)) - deg(toe) * Math.tan(deg(12)), { abs: 2e-5 }) &&
      near(Math.tan(got.sai), Math.tan(deg(12)) + deg(toe) * Math.tan(deg(5)), { abs: 2e-5 })
    )
  },
)

test('GA7 the model turns its wheel as plates do that were set to zero on it, toe and all', () => {
  const at = (toe: number) =>
    sweepThroughLinkage(mechanism({ ...corner, toe: deg(toe) }), [deg(20), deg(-20)])
  const [none, some] = [at(0), at(0.25)]
  // SAI of the joints is 8.9°: 0.25° · tan 8.9° = 0.039°
  near(some.sweep.caster - none.sweep.caster, -deg(0.25) * Math.tan(Math.atan2(0.055, 0.35)), {
    abs: deg(0.003),
  })
  near(some.sweep.caster + some.offset!.caster, none.sweep.caster + none.offset!.caster, { abs: 1e-12 })
})

law(
  'GA4 the sine fit gives back mean, size and place of a run-out',
  fc.tuple(camberAngle, sizes, fc.double({ min: 0, max: 6.28, noNaN: true })),
  ([mean, amplitude, phase]) => {
    const got = runOutFit(
      [0, 1.1, 2.9, 4.4, 5.5].map((t) => ({
        wheelTurn: rad(t),
        reading: mean + amplitude * Math.cos(t - phase),
      })),
    )
    return (
      near(got.mean, mean, { abs: 1e-12 }) &&
      near(got.amplitude, amplitude, { abs: 1e-12 }) &&
      near(Math.cos(got.phase - phase), 1, { abs: 1e-9 }) &&
      near(
        got.weights.reduce((a, b) => a + b, 0),
        1,
        { abs: 1e-12 },
      )
    )
  },
)

test('GA4 run-out as an angle is the total over the diameter', () => {
  const got = runOutReading(
    {
      method: 'run-out',
      id: 'a',
      wheel: 'rear left',
      gauge: 'dial',
      diameter: mm(400),
      readings: [0, 90, 180, 270].map((t) => ({ wheelTurn: deg(t), reading: mm(Math.cos(deg(t))) })),
    },
    plain({ instruments: [dial({ placing: mm(0.02) })] }),
  )
  expect(got.measured.value).toBeCloseTo(2 / 400, 6)
  expect(isAngleName(got.name)).toBe(false)
})

law(
  'GA8 a worn joint widens by half its swing as a box, shared by what is read through it',
  fc.tuple(sizes, camberAngle),
  ([swing, value]) => {
    const of = (v: number) => widenedByPlay(exact(v), { swing: exact(swing), joint: 'lower ball joint' })
    return (
      near(halfWidth(of(value), 0.95), (0.95 * swing) / 2, { rel: 1e-6 }) &&
      near(correlation(of(value), of(0)), 1, { abs: 1e-12 })
    )
  },
)

test('GA8 known play goes into the camber of its wheel and no other', () => {
  const context = (wheel: 'front left' | 'front right') =>
    plain({ plays: [{ wheel, moves: 'camber', swing: exact(deg(0.4)) }] })
  expect(standardUncertainty(camber([0], [0], context('front left')).measured)).toBeCloseTo(
    deg(0.2) / Math.sqrt(3),
    9,
  )
  expect(standardUncertainty(camber([0], [0], context('front right')).measured)).toBe(0)
})

law(
  'GA8 at another height: the slope times the way, with both spreads',
  fc.tuple(camberAngle, height, sizes),
  ([angle, way, u]) => {
    const at = (response: Parameters<typeof atHeight>[1]['response']) =>
      atHeight(exact(angle), { readAt: normal(u, 'height', 0.4), wanted: exact(0.4 + way), response })
    const slope = at({ slope: normal(0.1, 'slope', -0.5) })
    const curve = at({ curve: (h) => -0.5 * h, trust: normal(0.2, 'trust', 1) })
    return (
      near(slope.value, angle - 0.5 * way, { abs: 1e-9 }) &&
      near(standardUncertainty(slope), Math.hypot(0.5 * u, 0.1 * way), { rel: 1e-6 }) &&
      near(curve.value, slope.value, { abs: 1e-9 }) &&
      near(standardUncertainty(curve), standardUncertainty(slope), { rel: 1e-5, abs: 1e-9 })
    )
  },
)

test('GA8 heights and play read as they are', () => {
  expect(
    rideHeight(
      {
        method: 'ride height by rule',
        id: 'a',
        wheel: 'front left',
        rule: 'rule',
        readings: [mm(440), mm(441)],
      },
      plain({}),
    ).measured.value,
  ).toBeCloseTo(0.4405, 12)
  expect(
    playReading(
      {
        method: 'dial indicator',
        id: 'a',
        wheel: 'front left',
        gauge: 'dial',
        moves: 'toe',
        swings: [mm(1)],
        arm: mm(200),
      },
      plain({}),
    ).measured.value,
  ).toBeCloseTo(0.005, 6)
})

test('GA10 advice names what dominates, and what it would leave', () => {
  const of = (kind: Parameters<typeof sourceName>[0], big: number) =>
    combine([
      { of: rectangular(big, sourceName(kind, 'a')), times: 1 },
      { of: rectangular(1, sourceName('reading', 'b')), times: 1 },
    ])
  expect(bestImprovement(of('floor', 5))[0]!.improvement).toBe('map the floor with a level')
  expect(bestImprovement(of('zero', 5))[0]!.improvement).toBe('zero by reversal')
  expect(bestImprovement(of('play', 5))[0]!.improvement).toBe('free the play first')
  expect(bestImprovement(of('steer zero', 5))[0]!.improvement).toBe('a finer steer gauge')
  const [best] = bestImprovement(rectangular(1, sourceName('reading', 'b')), { times: 9 })
  expect(best!.times).toBe(9)
  expect(best!.spreadThen).toBeCloseTo(best!.spreadNow / 3, 9)
  expect(bestImprovement(rectangular(1, 'unnamed'))).toEqual([])
})

test('GA10 every error has a kind', () => {
  const got = readingOf(
    { method: 'inclinometer', id: 'a', wheel: 'rear right', gauge: 'level', readings: readings([0.01]) },
    {
      instruments: [
        inclinometer({
          placing: rad(0.001),
          resolution: rad(0.001),
          accuracy: rad(0.001),
          zeroError: rad(0.001),
        }),
      ],
    },
  )[0]!
  expect(got.measured.parts.map(({ source }) => kindOfSource(source)).sort()).toEqual([
    'floor',
    'floor',
    'reading',
    'run-out',
    'scale',
    'step',
    'zero',
  ])
  expect(got.notes.length).toBe(2)
  expect(kindOfSource('something else')).toBe(null)
  expect(isAngleName(got.name)).toBe(true)
})

law(
  'GA1 what run-out leaves: all of it at one place, nothing at two half a turn apart, the chord between',
  fc.tuple(sizes, fc.double({ min: 0, max: 180, noNaN: true })),
  ([amplitude, apart]) => {
    const known = (how: 'measured' | 'at most') =>
      plain({ runOut: { 'front left': { amplitude: rad(amplitude), known: how } } })
    const u = (turns: readonly number[], how: 'measured' | 'at most') =>
      standardUncertainty(
        camber(
          turns.map(() => 0),
          turns,
          known(how),
        ).measured,
      )
    return (
      near(u([0], 'measured'), amplitude / Math.SQRT2, { rel: 1e-9 }) &&
      near(u([0], 'at most'), amplitude / Math.sqrt(6), { rel: 1e-9 }) &&
      near(u([10, 10 + apart], 'measured'), (amplitude / Math.SQRT2) * Math.abs(Math.cos(deg(apart / 2))), {
        abs: 1e-9,
      }) &&
      u([0, 120, 240], 'measured') === 0
    )
  },
)

law('GA1 two readings a step apart say more than two alike', sizes, (step) => {
  const height = (second: number) =>
    rideHeight(
      {
        method: 'ride height by rule',
        id: 'a',
        wheel: 'front left',
        rule: 'rule',
        readings: [metre(0.44), metre(0.44 + second)],
      },
      plain({ instruments: [rule({ resolution: metre(step), placing: metre(step / 4) })] }),
    ).measured
  const apart = height(step)
  return (
    standardUncertainty(apart) < 0.7 * standardUncertainty(height(0)) &&
    near(apart.value, 0.44 + step / 2, { abs: step * 1e-9 })
  )
})

law('GA1 a steady hand cannot average the step of a rule away either', sizes, (step) => {
  const u = (placing: number) =>
    standardUncertainty(
      rideHeight(
        {
          method: 'ride height by rule',
          id: 'a',
          wheel: 'front left',
          rule: 'rule',
          readings: [mm(440), mm(440), mm(440), mm(440)],
        },
        plain({ instruments: [rule({ resolution: metre(step), placing: metre(placing) })] }),
      ).measured,
    )
  return (
    near(u(0), step / Math.sqrt(12), { rel: 1e-9 }) &&
    // four alike of a hand that wanders by a step: p(x) = 1 up to step/2, then (3/2 − x/step)⁴ up to 3/2 steps
    near(u(step), step * Math.sqrt((1 / 24 + 9 / 20 - 1 / 2 + 1 / 7) / (1 / 2 + 1 / 5)), { rel: 1e-4 })
  )
})
