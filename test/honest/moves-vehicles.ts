import {
  type Adjuster,
  type AxleSetup,
  type Moves,
  type MovesProblem,
  moves,
  type WheelSetup,
} from '../../src/adjust/index.ts'
import type { DoubleWishbone, FiveLink, SolidAxlePoints } from '../../src/linkage/index.ts'
import type { Measured, Part } from '../../src/measure/index.ts'
import { deg, metre, mm, rad, turn } from '../../src/quantity/index.ts'
import {
  type FiveRods,
  onFiveRods,
  onKingpins,
  type PinnedAxle,
  type TrueAngles,
  type Vector,
} from './truth-linkage.ts'
import type { Chance } from './truth-random.ts'

// Invented vehicles whose true angles, and what moves truly do to them, come from `truth-linkage` and `truth-random`;
// only the problem and its answer come from src.

/** One chance that was stated, and what was so in truth. */
export interface Case {
  readonly kind: string
  readonly stated: number
  readonly inside: boolean
}

/** A vehicle: what is asked of src, and the truth of it. */
export interface Vehicle {
  readonly name: string
  /** True angles by name, rad; evenly spread over middle ± range. */
  readonly angles: Readonly<Record<string, { readonly middle: number; readonly range: number }>>
  readonly axles: readonly AxleSetup[]
  readonly limits: MovesProblem['limits']
  readonly steering: { readonly ratio: number; readonly half: number; readonly held: number }
  /** What moves truly change of each angle. */
  readonly changed: (found: Moves, random: Chance) => Readonly<Record<string, number>>
}

/** Errors of a reading: its own, normal, and one that all readings of a kind share, rectangular; rad. */
const errors = {
  camber: { own: deg(0.06), shared: deg(0.05) },
  caster: { own: deg(0.12), shared: deg(0.1) },
  toe: { own: deg(0.04), shared: deg(0.03) },
} as const
type Angle = keyof typeof errors
const angleOf = (name: string) => name.split(' ').at(-1) as Angle

const sums: Readonly<Record<string, readonly (readonly [string, number])[]>> = {
  'front total toe': [
    ['front left toe', 1],
    ['front right toe', 1],
  ],
  'rear total toe': [
    ['rear left toe', 1],
    ['rear right toe', 1],
  ],
  'front cross camber': [
    ['front left camber', 1],
    ['front right camber', -1],
  ],
  'rear cross camber': [
    ['rear left camber', 1],
    ['rear right camber', -1],
  ],
  thrust: [
    ['rear left toe', 0.5],
    ['rear right toe', -0.5],
  ],
  'front left toe to thrust': [
    ['front left toe', 1],
    ['rear left toe', -0.5],
    ['rear right toe', 0.5],
  ],
  'front right toe to thrust': [
    ['front right toe', 1],
    ['rear left toe', 0.5],
    ['rear right toe', -0.5],
  ],
}
const sumOf = (angles: Readonly<Record<string, number>>, name: string): number =>
  (sums[name] ?? [[name, 1] as const]).reduce((sum, [of, by]) => sum + by * angles[of]!, 0)

/**
 * Draws one vehicle, reads it, asks for moves, makes them, and says what was stated and what was so. A vehicle that
 * was read close to the ends of where truths lie is drawn again: there a flat prior would not be true.
 */
export function asked(vehicle: Vehicle, random: Chance, { halved }: { halved: boolean }): readonly Case[] {
  const names = Object.keys(vehicle.angles)
  for (;;) {
    const truth: Record<string, number> = {}
    const read: Record<string, number> = {}
    const shared = Object.fromEntries(
      Object.entries(errors).map(([angle, { shared: half }]) => [angle, random.within(half)]),
    ) as Record<Angle, number>
    let edge = false
    for (const name of names) {
      const { middle, range } = vehicle.angles[name]!
      truth[name] = middle + random.within(range)
      const { own, shared: half } = errors[angleOf(name)]
      read[name] = truth[name] - random.normal(own) - shared[angleOf(name)]
      edge ||= Math.abs(read[name] - middle) > range - 4 * own - half
    }
    if (edge) continue
    const heldTruth = random.within(vehicle.steering.held)
    return judged(vehicle, { truth, read, held: heldTruth, halved }, random)
  }
}

function judged(
  vehicle: Vehicle,
  {
    truth,
    read,
    held,
    halved,
  }: {
    readonly truth: Readonly<Record<string, number>>
    readonly read: Readonly<Record<string, number>>
    readonly held: number
    readonly halved: boolean
  },
  random: Chance,
): readonly Case[] {
  const { limits, steering, axles } = vehicle
  const share = halved ? 0.5 : 1
  const part = (source: string, effect: number, shape: Part['shape']): Part => ({
    source,
    effect: share * effect,
    shape,
    dof: Number.POSITIVE_INFINITY,
  })
  const measured = (name: string): Measured => {
    const { own, shared } = errors[angleOf(name)]
    return {
      value: read[name]!,
      parts: [
        part(name, own, 'normal'),
        // standard deviation of a rectangle
        part(`zero of ${angleOf(name)}`, shared / Math.sqrt(3), 'rectangular'),
      ],
    }
  }
  const found = moves(
    {
      axles,
      readings: Object.fromEntries(Object.keys(read).map((name) => [name, measured(name)])),
      limits,
      steering: {
        ratio: steering.ratio,
        held: { value: 0, parts: [part('held', steering.held / Math.sqrt(3), 'rectangular')] },
        limit: { low: -steering.half, high: steering.half },
      },
    },
    { draws: 1500, seed: 1 + Math.floor(1e6 * (0.5 + random.within(0.5))) },
  )
  const change = vehicle.changed(found, random)
  const after = Object.fromEntries(
    Object.entries(truth).map(([name, value]) => [name, value + (change[name] ?? 0)]),
  )
  const wheelOf = (angles: Readonly<Record<string, number>>) =>
    held +
    steering.ratio * ((angles['front left toe']! - angles['front right toe']!) / 2 - sumOf(angles, 'thrust'))
  const isInside = (angles: Readonly<Record<string, number>>, name: string) => {
    const limit = limits[name as 'thrust']!
    const value = sumOf(angles, name)
    return value >= limit.low && value <= limit.high
  }
  const centred = (angles: Readonly<Record<string, number>>) => Math.abs(wheelOf(angles)) <= steering.half
  const all = (angles: Readonly<Record<string, number>>) =>
    Object.keys(limits).every((name) => isInside(angles, name)) && centred(angles)
  const cases: Case[] = []
  // chances after moves that were not made are those of now
  const add = (kind: string, now: number | null, then: number | null, so: (a: typeof truth) => boolean) => {
    cases.push({ kind: `${kind}, now`, stated: now!, inside: so(truth) })
    if (found.moves.length > 0) cases.push({ kind: `${kind}, after`, stated: then!, inside: so(after) })
  }
  for (const { name, insideNow, insideAfter } of found.foreseen)
    if (insideNow !== null) add(name, insideNow, insideAfter, (a) => isInside(a, name))
  const { steeringWheel } = found
  add('steering wheel', steeringWheel!.insideNow, steeringWheel!.insideAfter, centred)
  add('all at once', found.insideNow, found.insideAfter, all)
  return cases
}

const v = (p: readonly [number, number, number]): Vector => p

const frontPoints: DoubleWishbone = {
  layout: 'double wishbone',
  upperFrontInner: [0.13, 0.44, 0.54],
  upperRearInner: [-0.15, 0.45, 0.525],
  upperOuter: [-0.018, 0.7, 0.57],
  lowerFrontInner: [0.2, 0.36, 0.29],
  lowerRearInner: [-0.22, 0.365, 0.285],
  lowerOuter: [0.012, 0.75, 0.255],
  tieInner: [-0.17, 0.375, 0.315],
  tieOuter: [-0.15, 0.74, 0.3],
  wheelCentre: [0, 0.82, 0.37],
  camber: deg(-0.3),
  toe: deg(0.08),
  tyreRadius: metre(0.37),
}
const rearPoints: FiveLink = {
  layout: 'five-link',
  links: [
    { inner: [0.035, 0.42, 0.455], outer: [0.045, 0.68, 0.475] },
    { inner: [-0.155, 0.45, 0.445], outer: [-0.065, 0.67, 0.485] },
    { inner: [-0.025, 0.35, 0.235], outer: [-0.005, 0.72, 0.205] },
    { inner: [0.45, 0.56, 0.295], outer: [0.09, 0.71, 0.26] },
    { inner: [-0.205, 0.36, 0.265], outer: [-0.155, 0.71, 0.245] },
  ],
  wheelCentre: [0, 0.77, 0.31],
  camber: deg(-1),
  toe: deg(0.15),
  tyreRadius: metre(0.314),
}
const frontRods: FiveRods = {
  rods: [
    [v(frontPoints.upperFrontInner), v(frontPoints.upperOuter)],
    [v(frontPoints.upperRearInner), v(frontPoints.upperOuter)],
    [v(frontPoints.lowerFrontInner), v(frontPoints.lowerOuter)],
    [v(frontPoints.lowerRearInner), v(frontPoints.lowerOuter)],
    [v(frontPoints.tieInner), v(frontPoints.tieOuter)],
  ],
  centre: v(frontPoints.wheelCentre),
  camber: frontPoints.camber,
  toe: frontPoints.toe,
}
const rearRods: FiveRods = {
  rods: rearPoints.links.map(({ inner, outer }) => [v(inner), v(outer)] as const),
  centre: v(rearPoints.wheelCentre),
  camber: rearPoints.camber,
  toe: rearPoints.toe,
}

const shims: Adjuster = {
  kind: 'shims',
  id: 'shims',
  name: 'upper shims',
  moves: ['upperFrontInner', 'upperRearInner'],
  along: [0, 1, 0],
  sizes: [mm(0.5), mm(1), mm(3)],
  range: [mm(-10), mm(10)],
  step: mm(0.5),
  play: mm(0.1),
}
const rod = (id: string, more: Partial<Extract<Adjuster, { kind: 'thread' }>>): Adjuster => ({
  kind: 'thread',
  id,
  name: id,
  length: 'tie',
  pitch: mm(1.5),
  sleeve: false,
  range: [turn(-8), turn(8)],
  step: turn(1 / 6),
  play: turn(0.02),
  seenFrom: 'outside',
  positiveLooks: 'clockwise',
  ...more,
})
const bolt = (id: string, moves: string, sets: 'camber' | 'toe'): Adjuster => ({
  kind: 'eccentric',
  id,
  name: id,
  moves,
  along: [0, 1, 0],
  throw: mm(7),
  range: [deg(-90), deg(90)],
  step: deg(4),
  play: deg(2),
  seenFrom: 'rear',
  positiveLooks: 'clockwise',
  markAt: rad(0),
  sets,
})

const none: Vector = [0, 0, 0]
const travel = 0.008
/** What a front wheel's shims and rod truly do, from nothing. */
const frontAt = (thick: number, turns: number): TrueAngles =>
  onFiveRods(frontRods, {
    shift: [[0, thick, 0], [0, thick, 0], none, none, none],
    longer: [0, 0, 0, 0, 0.0015 * turns],
    travel,
  })
const rearAt = (camber: number, toe: number): TrueAngles =>
  onFiveRods(rearRods, {
    shift: [none, none, [0, 0.007 * Math.sin(camber), 0], none, [0, 0.007 * Math.sin(toe), 0]],
    longer: [0, 0, 0, 0, 0],
    travel,
  })

/** Where an adjuster truly ends that was set by hand: play when it is tightened, half a step where it is set by eye. */
const ends = (to: number, { play, step }: Adjuster, byEye: boolean, random: Chance) =>
  to + random.within(play) + (byEye ? random.within(step / 2) : 0)

const movedTo = (found: Moves, end: string, side: string, id: string) =>
  found.moves.find((move) => move.end === end && move.side === side && move.adjuster.id === id)

const between = (low: number, high: number) => ({ low: deg(low), high: deg(high) })
const wheel = (points: WheelSetup['points'], adjusters: readonly Adjuster[]): WheelSetup => ({
  points,
  drive: { travel: metre(travel), rack: metre(0) },
  adjusters,
  settings: Object.fromEntries(adjusters.map(({ id }) => [id, 0])),
})
const fronts = [shims, rod('tie rod', {})]
const rears = [bolt('camber bolt', 'inner2', 'camber'), bolt('toe bolt', 'inner4', 'toe')]

/** Four wheels of their own, two adjusters each. */
export const fourWheels: Vehicle = {
  name: 'four wheels',
  angles: {
    'front left camber': { middle: deg(-0.4), range: deg(1) },
    'front left toe': { middle: deg(0.08), range: deg(0.6) },
    'front right camber': { middle: deg(-0.4), range: deg(1) },
    'front right toe': { middle: deg(0.08), range: deg(0.6) },
    'rear left camber': { middle: deg(-1), range: deg(1) },
    'rear left toe': { middle: deg(0.15), range: deg(0.6) },
    'rear right camber': { middle: deg(-1), range: deg(1) },
    'rear right toe': { middle: deg(0.15), range: deg(0.6) },
  },
  axles: [
    { end: 'front', left: wheel(frontPoints, fronts), right: wheel(frontPoints, fronts) },
    { end: 'rear', left: wheel(rearPoints, rears), right: wheel(rearPoints, rears) },
  ],
  limits: {
    'front left camber': between(-0.9, 0.1),
    'front right camber': between(-0.9, 0.1),
    'front cross camber': between(-0.4, 0.4),
    'rear left camber': between(-1.5, -0.5),
    'rear right camber': between(-1.5, -0.5),
    'rear cross camber': between(-0.4, 0.4),
    'rear left toe': between(-0.05, 0.35),
    'rear right toe': between(-0.05, 0.35),
    'rear total toe': between(0, 0.6),
    thrust: between(-0.12, 0.12),
    'front left toe to thrust': between(-0.1, 0.25),
    'front right toe to thrust': between(-0.1, 0.25),
    'front total toe': between(-0.1, 0.4),
  },
  steering: { ratio: 16, half: deg(3), held: deg(1) },
  changed: (found, random) => {
    const change: Record<string, number> = {}
    for (const side of ['left', 'right']) {
      const to = (end: string, of: Adjuster, byEye: boolean) => {
        const move = movedTo(found, end, side, of.id)
        return move ? ends(move.to, of, byEye, random) : 0
      }
      const [was, will] = [frontAt(0, 0), frontAt(to('front', shims, false), to('front', fronts[1]!, true))]
      const [rearWas, rearWill] = [
        rearAt(0, 0),
        rearAt(to('rear', rears[0]!, true), to('rear', rears[1]!, true)),
      ]
      for (const angle of ['camber', 'toe'] as const) {
        change[`front ${side} ${angle}`] = will[angle] - was[angle]
        change[`rear ${side} ${angle}`] = rearWill[angle] - rearWas[angle]
      }
    }
    return change
  },
}

const hub = (y: 1 | -1) => ({
  wheelCentre: [0, y * 0.8, 0.38] as const,
  camber: deg(0.8),
  toe: deg(0.08),
  tyreRadius: metre(0.38),
  kingpin: { lower: [0.006, y * 0.7, 0.28] as const, upper: [-0.01, y * 0.672, 0.49] as const },
})
const axlePoints: SolidAxlePoints = {
  location: {
    kind: 'leaf',
    rollAxis: [
      [-0.6, 0, 0.41],
      [0.6, 0, 0.43],
    ],
  },
  left: hub(1),
  right: hub(-1),
  steering: {
    dropAxis: [
      [0.72, 0.41, 0.74],
      [0.72, 0.53, 0.74],
    ],
    dragInner: [0.71, 0.51, 0.51],
    dragOuter: [0.02, 0.51, 0.49],
    drags: 'left',
    tieLeft: [-0.18, 0.64, 0.29],
    tieRight: [-0.18, -0.64, 0.29],
  },
}
const pinned = (side: 1 | -1) => {
  const { kingpin, camber, toe } = hub(side)
  return { side, camber, toe, lower: v(kingpin.lower), upper: v(kingpin.upper) }
}
const trueAxle: PinnedAxle = {
  left: pinned(1),
  right: pinned(-1),
  dragInner: [0.71, 0.51, 0.51],
  dragOuter: [0.02, 0.51, 0.49],
  tieLeft: [-0.18, 0.64, 0.29],
  tieRight: [-0.18, -0.64, 0.29],
}
const sleeve: Adjuster = {
  kind: 'offset sleeve',
  id: 'sleeve',
  name: 'kingpin sleeve',
  tilt: deg(0.75),
  range: [deg(-180), deg(180)],
  step: deg(15),
  play: deg(5),
  seenFrom: 'above',
  positiveLooks: 'clockwise',
  markAt: rad(0),
}
const tie = rod('tie rod', { length: 'tie-rod', sleeve: true })
const drag = rod('drag link', { length: 'drag-link', sleeve: true })
const stands = { left: deg(30), right: deg(-60) }
const lean = (turn: number) => ({ camber: deg(0.75) * Math.cos(turn), caster: deg(0.75) * Math.sin(turn) })

/** A steered solid axle with a sleeve at each kingpin, tie rod and drag link; the rear axle is only read. */
export const solidAxle: Vehicle = {
  name: 'solid axle',
  angles: {
    'front left camber': { middle: deg(0.8), range: deg(1) },
    'front left toe': { middle: deg(0.08), range: deg(0.6) },
    'front right camber': { middle: deg(0.8), range: deg(1) },
    'front right toe': { middle: deg(0.08), range: deg(0.6) },
    'rear left toe': { middle: deg(0), range: deg(0.5) },
    'rear right toe': { middle: deg(0), range: deg(0.5) },
  },
  axles: [
    {
      end: 'front',
      axle: axlePoints,
      drive: { heave: metre(0), roll: rad(0), drop: rad(0) },
      left: { adjusters: [sleeve], settings: { sleeve: stands.left } },
      right: { adjusters: [sleeve], settings: { sleeve: stands.right } },
      both: { adjusters: [tie, drag], settings: { 'tie rod': 0, 'drag link': 0 } },
    },
  ],
  limits: {
    'front left camber': between(0.3, 1.3),
    'front right camber': between(0.3, 1.3),
    'front cross camber': between(-0.4, 0.4),
    'front total toe': between(-0.05, 0.4),
    thrust: between(-0.15, 0.15),
  },
  steering: { ratio: 18, half: deg(3), held: deg(1) },
  changed: (found, random) => {
    const turned = (side: 'left' | 'right') => {
      const move = movedTo(found, 'front', side, 'sleeve')
      return lean(move ? ends(move.to, sleeve, false, random) : stands[side])
    }
    const longer = (of: Adjuster) => {
      const move = movedTo(found, 'front', 'both', of.id)
      return move ? 0.003 * ends(move.to, of, true, random) : 0
    }
    const was = onKingpins(trueAxle, { left: lean(stands.left), right: lean(stands.right), drag: 0, tie: 0 })
    const will = onKingpins(trueAxle, {
      left: turned('left'),
      right: turned('right'),
      drag: longer(drag),
      tie: longer(tie),
    })
    const change: Record<string, number> = {}
    for (const side of ['left', 'right'] as const)
      for (const angle of ['camber', 'toe'] as const)
        change[`front ${side} ${angle}`] = will[side][angle] - was[side][angle]
    return change
  },
}
