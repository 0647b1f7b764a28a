import type { Adjuster, MovesProblem, WheelSetup } from '../src/adjust/index.ts'
import { type AnyCornerPoints, mechanism, poseAt, type ReadingName } from '../src/linkage/index.ts'
import { type Measured, seededRandom } from '../src/measure/index.ts'
import { deg, metre, mm, rad, turn } from '../src/quantity/index.ts'

/** Standard uncertainty of a reading's own error and of the zero that all readings share, degrees. */
const spread = { camber: 0.04, toe: 0.03 }
const zero = 0.02

const front: AnyCornerPoints = {
  layout: 'strut',
  lowerFrontInner: [0.02, 0.35, 0.19],
  lowerRearInner: [-0.31, 0.36, 0.2],
  lowerOuter: [0.01, 0.7, 0.175],
  topMount: [-0.05, 0.56, 0.84],
  strutLower: [-0.002, 0.62, 0.36],
  tieInner: [-0.15, 0.35, 0.25],
  tieOuter: [-0.135, 0.68, 0.24],
  wheelCentre: [0, 0.75, 0.3],
  camber: deg(-0.4),
  toe: deg(0.08),
  tyreRadius: metre(0.303),
}
const rear: AnyCornerPoints = {
  layout: 'five-link',
  links: [
    { inner: [0.04, 0.41, 0.46], outer: [0.05, 0.67, 0.48] },
    { inner: [-0.15, 0.44, 0.45], outer: [-0.06, 0.66, 0.49] },
    { inner: [-0.03, 0.34, 0.24], outer: [-0.01, 0.71, 0.21] },
    { inner: [0.44, 0.55, 0.3], outer: [0.08, 0.7, 0.265] },
    { inner: [-0.21, 0.35, 0.27], outer: [-0.16, 0.7, 0.25] },
  ],
  wheelCentre: [0, 0.76, 0.31],
  camber: deg(-1),
  toe: deg(0.15),
  tyreRadius: metre(0.314),
}

const washer = (id: string, moves: string, sets: 'camber' | 'toe'): Adjuster => ({
  kind: 'eccentric',
  id,
  name: id,
  moves,
  along: [0, 1, 0],
  throw: mm(6),
  range: [deg(-90), deg(90)],
  step: deg(2),
  play: deg(1),
  seenFrom: 'rear',
  positiveLooks: 'clockwise',
  markAt: rad(0),
  sets,
})
const slot: Adjuster = {
  kind: 'slotted bolt',
  id: 'strut bolt',
  name: 'strut bolt',
  turns: 'strut',
  pivot: [0, 0.63, 0.29],
  axis: [-1, 0, 0],
  boltSpacing: mm(60),
  range: [mm(-1.8), mm(1.8)],
  step: mm(0.1),
  play: mm(0.03),
  seenFrom: 'front',
}
const rod: Adjuster = {
  kind: 'thread',
  id: 'tie rod',
  name: 'tie rod',
  length: 'tie',
  pitch: mm(1.5),
  sleeve: false,
  range: [turn(-6), turn(6)],
  step: turn(1 / 12),
  play: turn(0),
  seenFrom: 'outside',
  positiveLooks: 'clockwise',
}

const between = (low: number, high: number) => ({ low: deg(low), high: deg(high) })
const limits: MovesProblem['limits'] = {
  'front left camber': between(-1, 0.2),
  'front right camber': between(-1, 0.2),
  'front cross camber': between(-0.5, 0.5),
  'rear left camber': between(-1.6, -0.4),
  'rear right camber': between(-1.6, -0.4),
  'rear left toe': between(0, 0.3),
  'rear right toe': between(0, 0.3),
  thrust: between(-0.1, 0.1),
  'front left toe to thrust': between(-0.03, 0.19),
  'front right toe to thrust': between(-0.03, 0.19),
  'front total toe': between(0, 0.32),
}

/**
 * Four wheels with two adjusters each, and readings that stand off their limits: strut bolts and tie rods in front,
 * eccentrics of camber and toe behind. Invented; another set for each seed.
 */
export function fourWheels(seed: number): MovesProblem {
  const random = seededRandom(seed)
  const readings: Partial<Record<ReadingName, Measured>> = {}
  const wheel = (points: AnyCornerPoints, adjusters: readonly Adjuster[]): WheelSetup => ({
    points,
    drive: { travel: metre(0.02 * (random.uniform() - 0.5)), rack: metre(0) },
    adjusters,
    settings: Object.fromEntries(
      adjusters.map(({ id, kind }) => [id, kind === 'eccentric' ? deg(40 * (random.uniform() - 0.5)) : 0]),
    ),
  })
  const read = (name: ReadingName, angle: keyof typeof spread, value: number): void => {
    readings[name] = {
      value,
      parts: [
        { source: name, effect: deg(spread[angle]), shape: 'normal', dof: Number.POSITIVE_INFINITY },
        { source: `zero, ${angle}`, effect: deg(zero), shape: 'rectangular', dof: Number.POSITIVE_INFINITY },
      ],
    }
  }
  for (const [end, points] of [
    ['front', front],
    ['rear', rear],
  ] as const) {
    const { camber, toe } = poseAt(mechanism(points), { travel: metre(0), rack: metre(0) })
    for (const side of ['left', 'right'] as const) {
      read(`${end} ${side} camber`, 'camber', camber + deg(1.6 * (random.uniform() - 0.5)))
      read(`${end} ${side} toe`, 'toe', toe + deg(0.9 * (random.uniform() - 0.5)))
    }
  }
  const fronts = () => wheel(front, [slot, rod])
  const rears = () =>
    wheel(rear, [washer('camber bolt', 'inner2', 'camber'), washer('toe bolt', 'inner4', 'toe')])
  return {
    axles: [
      { end: 'front', left: fronts(), right: fronts() },
      { end: 'rear', left: rears(), right: rears() },
    ],
    readings,
    limits,
    steering: { ratio: 16 },
  }
}
