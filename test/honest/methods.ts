import {
  atHeight,
  camberReading,
  type FloorMap,
  type GaugeContext,
  type GaugeReading,
  type Instrument,
  includedAngle,
  playReading,
  rideHeight,
  sweepReading,
  toeByStrings,
  totalToeByTape,
  widenedByPlay,
} from '../../src/gauge/index.ts'
import { combine, exact, normal } from '../../src/measure/index.ts'
import { deg, metre, mm, rad } from '../../src/quantity/index.ts'
import type { Method } from './judge.ts'
import { type Chance, shown } from './truth-random.ts'
import { camberSeen, steeredSeen, type Tip, type TrueWheel, treadPoint } from './truth-wheel.ts'

// The kit, as a workshop would state it; the truth side draws its errors from the same numbers by itself.
const G = { step: deg(0.05), placing: deg(0.08), scale: deg(0.04), zero: deg(0.06) }
const R = { step: mm(0.5), placing: mm(0.4), zero: mm(0.2) }
const T = { step: mm(1), placing: mm(0.7), scale: 0.001 }
const P = { step: deg(0.5), placing: deg(0.5), scale: 0.01, zero: deg(0.5) }
const D = { step: mm(0.01), placing: mm(0.03), scale: mm(0.02) }
const S = { spacing: mm(2), length: metre(4.2) }
const instruments: readonly Instrument[] = [
  {
    kind: 'inclinometer',
    id: 'level',
    name: 'level',
    resolution: G.step,
    placing: G.placing,
    accuracy: G.scale,
    zeroError: G.zero,
    zeroing: 'none',
  },
  { kind: 'rule', id: 'rule', name: 'rule', resolution: R.step, placing: R.placing, zeroError: R.zero },
  { kind: 'tape', id: 'tape', name: 'tape', resolution: T.step, placing: T.placing, accuracy: T.scale },
  {
    kind: 'strings',
    id: 'strings',
    name: 'strings',
    spacing: S.spacing,
    length: S.length,
    squareness: deg(0.1),
  },
  {
    kind: 'turn plates',
    id: 'plates',
    name: 'plates',
    resolution: P.step,
    placing: P.placing,
    accuracy: P.scale,
    zeroError: P.zero,
  },
  {
    kind: 'dial indicator',
    id: 'dial',
    name: 'dial',
    resolution: D.step,
    placing: D.placing,
    accuracy: D.scale,
  },
]
const TRACK = 1.5
const WHEELBASE = 2.6
const RUN_OUT = deg(0.08)
const PAD = mm(1.5)
const PAD_HEIGHTS = mm(6)
const places = ['front left', 'front right', 'rear left', 'rear right'] as const
type Place = (typeof places)[number]

/** A floor as it is and as the map has it. */
function floor(random: Chance): { tip: { front: Tip; rear: Tip }; map: FloorMap } {
  const record = <T>(f: (place: Place) => T) =>
    Object.fromEntries(places.map((p) => [p, f(p)])) as Record<Place, T>
  const heights = record(() => metre(random.within(PAD_HEIGHTS)))
  const real = record((p) => heights[p] + random.within(PAD))
  const pitch = Math.asin(
    (real['front left'] + real['front right'] - real['rear left'] - real['rear right']) / 2 / WHEELBASE,
  )
  const roll = (end: 'front' | 'rear') => Math.asin((real[`${end} left`] - real[`${end} right`]) / TRACK)
  return {
    tip: { front: { roll: roll('front'), pitch }, rear: { roll: roll('rear'), pitch } },
    map: { id: 'bay', name: 'bay', heights, spread: record(() => PAD), found: 'with a level' },
  }
}

const contextOf = (map: FloorMap, more: Partial<GaugeContext> = {}): GaugeContext => ({
  instruments,
  floor: map,
  track: { front: metre(TRACK), rear: metre(TRACK) },
  wheelbase: metre(WHEELBASE),
  runOut: Object.fromEntries(places.map((p) => [p, { amplitude: RUN_OUT, known: 'measured' }])),
  ...more,
})

/** A gauge in one pair of hands: its zero and scale errors for this vehicle. */
const gaugeOf = (random: Chance) => ({ zero: random.within(G.zero), scale: random.within(G.scale) })
const inclined = (seen: number, { zero, scale }: { zero: number; scale: number }, random: Chance) =>
  rad(shown(seen + zero + scale + random.within(G.placing), G.step))
const ruled = (length: number, zero: number, random: Chance) =>
  metre(shown(length + zero + random.within(R.placing), R.step))

/** Camber of a wheel read at these turns. */
function camber(
  {
    wheel,
    place,
    turns,
    tip,
    gauge,
    context,
  }: {
    wheel: TrueWheel
    place: Place
    turns: readonly number[]
    tip: Tip
    gauge: ReturnType<typeof gaugeOf>
    context: GaugeContext
  },
  random: Chance,
): GaugeReading {
  const phase = random.angle()
  return camberReading(
    {
      method: 'inclinometer',
      id: `camber ${place}`,
      wheel: place,
      gauge: 'level',
      readings: turns.map((turn) => ({
        wheelTurn: rad(turn),
        reading: inclined(camberSeen(wheel, tip) + RUN_OUT * Math.cos(turn - phase), gauge, random),
      })),
    },
    context,
  )
}

const wheelWith = (side: 1 | -1, camberAngle: number): TrueWheel => ({
  side,
  camber: camberAngle,
  caster: deg(4),
  sai: deg(12),
})

const camberMethod = (name: string, place: Place, turns: readonly number[]): Method => ({
  name,
  centre: deg(-0.5),
  limit: deg(0.5),
  range: deg(1.3),
  read: (truth, random) => {
    const { tip, map } = floor(random)
    const end = place.startsWith('front') ? 'front' : 'rear'
    const wheel = wheelWith(place.endsWith('left') ? 1 : -1, truth)
    return camber(
      { wheel, place, turns, tip: tip[end], gauge: gaugeOf(random), context: contextOf(map) },
      random,
    ).measured
  },
})

const crossCamber: Method = {
  name: 'cross camber, two places each',
  centre: 0,
  limit: deg(0.5),
  range: deg(1.4),
  read: (truth, random) => {
    const { tip, map } = floor(random)
    const gauge = gaugeOf(random)
    const context = contextOf(map)
    const left = random.within(deg(1)) - deg(0.5)
    const of = (place: 'front left' | 'front right', angle: number) =>
      camber(
        {
          wheel: wheelWith(place === 'front left' ? 1 : -1, angle),
          place,
          turns: [0, Math.PI],
          tip: tip.front,
          gauge,
          context,
        },
        random,
      ).measured
    return combine([
      { of: of('front left', left), times: 1 },
      { of: of('front right', left - truth), times: -1 },
    ])
  },
}

/** Four wheels between two strings: all seen from above. */
function strings(toes: Record<Place, number>, random: Chance): readonly GaugeReading[] {
  const yaw = random.within(deg(0.3))
  const shift = random.within(0.02)
  const opening = random.within(S.spacing)
  const zero = random.within(R.zero)
  const span = 0.42
  // Distance outward from the vehicle's middle line to the left or right string, at x.
  const string = (side: 1 | -1, x: number) =>
    0.95 + side * (shift + Math.tan(yaw) * x) + (opening / 2) * ((x + WHEELBASE / 2) / S.length)
  const wheels: Partial<
    Record<
      Place,
      { front: ReturnType<typeof metre>[]; rear: ReturnType<typeof metre>[]; span: ReturnType<typeof metre> }
    >
  > = {}
  const hubs = {} as Record<Place, ReturnType<typeof metre>>
  for (const place of places) {
    const side = place.endsWith('left') ? 1 : -1
    const x = place.startsWith('front') ? 0 : -WHEELBASE
    const skewed = toes[place] + RUN_OUT * Math.cos(random.angle())
    const edge = (end: 1 | -1) => {
      const outward = TRACK / 2 - end * (span / 2) * Math.sin(skewed)
      return string(side, x + end * (span / 2) * Math.cos(skewed)) - outward
    }
    wheels[place] = {
      front: [ruled(edge(1), zero, random), ruled(edge(1), zero, random)],
      rear: [ruled(edge(-1), zero, random), ruled(edge(-1), zero, random)],
      span: metre(span),
    }
    hubs[place] = ruled(string(side, x) - TRACK / 2, zero, random)
  }
  return toeByStrings(
    {
      method: 'strings and rule',
      id: 'strings',
      rule: 'rule',
      strings: 'strings',
      wheels,
      hubs,
      wheelbase: metre(WHEELBASE),
    },
    contextOf(floor(random).map),
  )
}

const toeMethod = (
  name: GaugeReading['name'],
  limit: number,
  toesOf: (truth: number, random: Chance) => Record<Place, number>,
): Method => ({
  name: `${name}, strings`,
  centre: name === 'thrust' ? 0 : deg(0.1),
  limit: deg(limit),
  range: deg(2.4 * limit),
  read: (truth, random) =>
    strings(toesOf(truth, random), random).find((reading) => reading.name === name)!.measured,
})
const someToes = (random: Chance): Record<Place, number> => ({
  'front left': random.within(deg(0.5)),
  'front right': random.within(deg(0.5)),
  'rear left': random.within(deg(0.5)),
  'rear right': random.within(deg(0.5)),
})

const byTape: Method = {
  name: 'front total toe, tape',
  centre: deg(0.1),
  limit: deg(0.35),
  range: deg(0.85),
  read: (truth, random) => {
    const left = random.within(deg(0.3))
    const wheel = { camber: [random.normal(deg(1)), random.normal(deg(1))], toe: [left, truth - left] }
    const scale = 1 + random.within(T.scale)
    const apart = (end: 1 | -1) => {
      const below = 0.15 + random.within(mm(5))
      const at = ([0, 1] as const).map((i) =>
        treadPoint(
          { side: i === 0 ? 1 : -1, camber: wheel.camber[i]!, toe: wheel.toe[i]! },
          { radius: 0.34, below, end },
        ),
      )
      return Math.hypot(at[0]![0] - at[1]![0], TRACK + at[0]![1] - at[1]![1], at[0]![2] - at[1]![2])
    }
    const taped = (end: 1 | -1) => {
      const length = apart(end)
      return [0, 1].map(() => metre(shown(length / scale + random.within(T.placing), T.step)))
    }
    return totalToeByTape(
      {
        method: 'tape on a scribed line',
        id: 'tape',
        axle: 'front',
        tape: 'tape',
        front: taped(1),
        rear: taped(-1),
        belowHub: metre(0.15),
        levelled: mm(5),
        radius: metre(0.34),
      },
      contextOf(floor(random).map),
    ).measured
  },
}

/** A steer gauge set up once: zero and scale for both wheels. */
const platesOf = (random: Chance) => ({ zero: random.within(P.zero), scale: random.within(P.scale) })

/** Sweeps of one front wheel; every far angle has a scale error of its own. */
function sweep(
  {
    wheel,
    tip,
    zero,
    plates,
    count,
    withTilt,
    context,
  }: {
    wheel: TrueWheel
    tip: Tip
    zero: number
    plates: ReturnType<typeof platesOf>
    count: number
    withTilt: boolean
    context: GaugeContext
  },
  random: Chance,
): readonly GaugeReading[] {
  const side = wheel.side === 1 ? 'left' : 'right'
  const scales = {
    left: [random.within(G.scale), random.within(G.scale)],
    right: [random.within(G.scale), random.within(G.scale)],
  }
  const place = (end: 'left' | 'right') => {
    const heading = (end === 'left' ? 1 : -1) * deg(20) + random.within(deg(1.5))
    const seen = steeredSeen(wheel, heading, tip)
    const read = (value: number, i: 0 | 1) => inclined(value, { zero, scale: scales[end][i]! }, random)
    return {
      steer: rad(shown((heading - plates.zero) / (1 + plates.scale) + random.within(P.placing), P.step)),
      camber: read(seen.camber, 0),
      ...(withTilt ? { tilt: read(seen.tilt, 1) } : {}),
    }
  }
  return sweepReading(
    {
      method: 'steer sweep',
      id: `sweep ${side}`,
      side,
      gauge: 'level',
      steerGauge: 'plates',
      sweeps: Array.from({ length: count }, () => ({ left: place('left'), right: place('right') })),
    },
    context,
  )
}

const sweepMethod = (
  name: string,
  {
    angle,
    centre,
    limit,
    side = 1,
    count = 2,
    withTilt = true,
  }: {
    angle: 'caster' | 'sai'
    centre: number
    limit: number
    side?: 1 | -1
    count?: number
    withTilt?: boolean
  },
): Method => ({
  name,
  centre: deg(centre),
  limit: deg(limit),
  range: deg(2.4 * limit),
  read: (truth, random) => {
    const { tip, map } = floor(random)
    const wheel: TrueWheel = {
      side,
      camber: random.within(deg(1)) - deg(0.5),
      caster: angle === 'caster' ? truth : deg(5) + random.within(deg(2)),
      // Without its own readings SAI is assumed within 12° ± 5°.
      sai: angle === 'sai' ? truth : 0.21 + random.within(withTilt ? deg(2) : 0.087),
    }
    const readings = sweep(
      {
        wheel,
        tip: tip.front,
        zero: random.within(G.zero),
        plates: platesOf(random),
        count,
        withTilt,
        context: contextOf(map),
      },
      random,
    )
    return readings.find((reading) => reading.name.endsWith(angle))!.measured
  },
})

const crossCaster: Method = {
  name: 'cross caster, two sweeps each',
  centre: 0,
  limit: deg(1.6),
  range: deg(3.8),
  read: (truth, random) => {
    const { tip, map } = floor(random)
    const [zero, plates, context] = [random.within(G.zero), platesOf(random), contextOf(map)]
    const left = deg(5) + random.within(deg(2))
    const of = (side: 1 | -1, caster: number) =>
      sweep(
        {
          wheel: { side, camber: deg(-0.5), caster, sai: deg(12.5) },
          tip: tip.front,
          zero,
          plates,
          count: 2,
          withTilt: true,
          context,
        },
        random,
      )[0]!.measured
    return combine([
      { of: of(1, left), times: 1 },
      { of: of(-1, left - truth), times: -1 },
    ])
  },
}

const included: Method = {
  name: 'included angle, right',
  centre: deg(11.5),
  limit: deg(0.9),
  range: deg(2.2),
  read: (truth, random) => {
    const { tip, map } = floor(random)
    const gauge = gaugeOf(random)
    const context = contextOf(map)
    const own = random.within(deg(1)) - deg(0.5)
    const wheel: TrueWheel = { side: -1, camber: own, caster: deg(5), sai: truth - own }
    const sai = sweep(
      {
        wheel,
        tip: tip.front,
        zero: gauge.zero,
        plates: platesOf(random),
        count: 2,
        withTilt: true,
        context,
      },
      random,
    )[1]!.measured
    const read = camber(
      { wheel, place: 'front right', turns: [0, Math.PI], tip: tip.front, gauge, context },
      random,
    ).measured
    return includedAngle('right', { sai, camber: read }).measured
  },
}

const height: Method = {
  name: 'ride height, rule',
  centre: 0.44,
  limit: mm(1.2),
  range: mm(2.6),
  read: (truth, random) => {
    const zero = random.within(R.zero)
    return rideHeight(
      {
        method: 'ride height by rule',
        id: 'height',
        wheel: 'rear left',
        rule: 'rule',
        readings: [ruled(truth, zero, random), ruled(truth, zero, random)],
      },
      contextOf(floor(random).map),
    ).measured
  },
}

const play: Method = {
  name: 'play, dial',
  centre: deg(0.3),
  limit: deg(0.03),
  range: deg(0.07),
  read: (truth, random) => {
    const scale = random.within(D.scale)
    const swing = () => metre(shown(Math.tan(truth) * 0.2 + scale + random.within(D.placing), D.step))
    return playReading(
      {
        method: 'dial indicator',
        id: 'play',
        wheel: 'front left',
        gauge: 'dial',
        moves: 'camber',
        swings: [swing(), swing()],
        arm: metre(0.2),
      },
      contextOf(floor(random).map),
    ).measured
  },
}

const elsewhere: Method = {
  name: 'camber through a worn joint, at the height of the sheet',
  centre: deg(-0.5),
  limit: deg(0.8),
  range: deg(1.9),
  read: (truth, random) => {
    const { tip, map } = floor(random)
    const swing = deg(0.4)
    const [slope, slopeSpread] = [deg(-30), deg(6)]
    const trueSlope = slope + random.normal(slopeSpread)
    const [readAt, wanted, heightSpread] = [0.43, 0.445, mm(0.5)]
    const trueHeight = readAt + random.normal(heightSpread)
    const now = truth - trueSlope * (wanted - trueHeight) + random.within(swing / 2)
    const read = camber(
      {
        wheel: wheelWith(1, now),
        place: 'front left',
        turns: [0, Math.PI],
        tip: tip.front,
        gauge: gaugeOf(random),
        context: contextOf(map),
      },
      random,
    ).measured
    return atHeight(widenedByPlay(read, { swing: exact(swing), joint: 'lower ball joint' }), {
      readAt: normal(heightSpread, 'height: front left', readAt),
      wanted: exact(wanted),
      response: { slope: normal(slopeSpread, 'response: camber over height', slope) },
    })
  },
}

/** Every method, with limits that its spread can decide and truths that reach well past them. */
export const methods: readonly Method[] = [
  camberMethod('camber, one place', 'front left', [0.3]),
  camberMethod('camber, two places', 'front right', [0, Math.PI]),
  camberMethod('camber, three places', 'rear left', [0, (2 * Math.PI) / 3, (4 * Math.PI) / 3]),
  crossCamber,
  toeMethod('front right toe', 0.3, (truth, random) => ({ ...someToes(random), 'front right': truth })),
  toeMethod('rear total toe', 0.4, (truth, random) => {
    const left = random.within(deg(0.4))
    return { ...someToes(random), 'rear left': left, 'rear right': truth - left }
  }),
  toeMethod('thrust', 0.25, (truth, random) => {
    const right = random.within(deg(0.4))
    return { ...someToes(random), 'rear left': 2 * truth + right, 'rear right': right }
  }),
  byTape,
  sweepMethod('caster, two sweeps with SAI', { angle: 'caster', centre: 5, limit: 1 }),
  sweepMethod('caster, one sweep, SAI not read', {
    angle: 'caster',
    centre: 5,
    limit: 1.3,
    side: -1,
    count: 1,
    withTilt: false,
  }),
  sweepMethod('SAI, two sweeps', { angle: 'sai', centre: 12, limit: 1, side: -1 }),
  crossCaster,
  included,
  height,
  play,
  elsewhere,
]

/** Camber of the right wheel with the floor taken in as it should be, not at all, or with its sign turned round. */
export const flooredCamber = (floorSign: 1 | 0 | -1): Method => ({
  ...camberMethod('camber over a floor', 'front right', [0, Math.PI]),
  read: (truth, random) => {
    const { tip, map } = floor(random)
    const reading = camber(
      {
        wheel: wheelWith(-1, truth),
        place: 'front right',
        turns: [0, Math.PI],
        tip: tip.front,
        gauge: gaugeOf(random),
        context: contextOf(map),
      },
      random,
    )
    const by = reading.corrections.find(({ name }) => name === 'floor roll')!.by
    const value = reading.measured.value + (floorSign - 1) * by
    return { ...reading.measured, value }
  },
})
