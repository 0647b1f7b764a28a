import { expect, test } from 'vitest'
import {
  type CornerPoints,
  checkFinite,
  closedPose,
  type DoubleWishbone,
  displaced,
  type FiveLink,
  instantCentre,
  mechanism,
  motionCurve,
  newtonPose,
  outerWheelAngle,
  type Point,
  poseAt,
  rackRange,
  rateOf,
  rigidBodyFromDistances,
  rollCentre,
  type Setting,
  type Strut,
  sensitivities,
  settingsFor,
  steerCurve,
  steeringScrew,
  travelRange,
  turnRadius,
} from '../../../src/linkage/index.ts'
import { deg, metre, Refusal, rad } from '../../../src/quantity/index.ts'
import { law, near, refuses } from '../../support/law.ts'
import { anyCorner, fiveLink, strut, wishbone } from './any-corner.ts'

const w = wishbone as DoubleWishbone
const s = strut as Strut
const f = fiveLink as FiveLink
const wrong = (change: Record<string, unknown>, base: CornerPoints = w) =>
  mechanism({ ...base, ...change } as unknown as CornerPoints)
const drive = (travel: number, rack = 0) => ({ travel: metre(travel), rack: metre(rack) })
const zero = drive(0)
const m = mechanism(w)
const links = (i: number, change: object) =>
  f.links.map((link, j) => (i === j ? { ...link, ...change } : link))

// LI3, in the order in which faults count
refuses('not-finite', () => wrong({ camber: Number.NaN }), 'camber')
refuses('not-finite', () => wrong({ tieInner: [0, Number.POSITIVE_INFINITY, 0] }), 'tieInner.1')
refuses('not-finite', () => wrong({ links: links(2, { outer: [0, 0, Number.NaN] }) }, f), 'links.2.outer.2')
refuses('not-finite', () => mechanism(w, { body: { tieInner: [0, Number.NaN, 0] } }))
refuses('not-finite', () => wrong({ tieOuter: undefined, lowerOuter: [Number.NaN, 0, 0] }))
refuses('not-finite', () => checkFinite({ a: [Number.NEGATIVE_INFINITY] }, 'x'), 'x.a.0')
refuses('not-finite', () => poseAt(m, drive(Number.NaN)), 'travel')
refuses('not-finite', () => poseAt(m, drive(0, Number.POSITIVE_INFINITY)), 'rack')
refuses('not-finite', () => travelRange(m, { rack: metre(Number.NaN) }))
refuses('not-finite', () => rackRange(m, { travel: metre(Number.NaN) }))

refuses('bad-input', () => wrong({ lowerOuter: undefined }), 'lowerOuter')
refuses('bad-input', () => wrong({ lowerOuter: [0, 1] }), 'lowerOuter')
refuses('bad-input', () => wrong({ lowerOuter: ['0', 0, 1] }), 'lowerOuter')
refuses('bad-input', () => wrong({ lowerOuter: [0, 1e9, 1] }), 'lowerOuter')
refuses('bad-input', () => wrong({ tyreRadius: '0.3' }), 'tyreRadius')
refuses('bad-input', () => wrong({ tyreRadius: 0 }), 'tyreRadius')
refuses('bad-input', () => wrong({ tyreRadius: -0.3 }), 'tyreRadius')
refuses('bad-input', () => wrong({ camber: undefined }), 'camber')
refuses('bad-input', () => wrong({ toe: 2 }), 'toe')
refuses('bad-input', () => wrong({ layout: 'swing axle' }), 'layout')
refuses('bad-input', () => wrong({ layout: 'constructor' }), 'layout')
refuses('bad-input', () => mechanism(null as unknown as CornerPoints), 'points')
refuses('bad-input', () => wrong({ links: f.links.slice(1) }, f), 'links')
refuses('bad-input', () => wrong({ links: undefined }, f), 'links')
refuses('bad-input', () => wrong({ links: links(1, { rack: 'yes' }) }, f), 'links.1.rack')
refuses('bad-input', () => wrong({ links: f.links.map((l) => ({ ...l, rack: true })) }, f), 'links')
refuses('bad-input', () => mechanism(w, { body: { inner0: [0, 0, 0] } }), 'body.inner0')
refuses('bad-input', () => mechanism(w, { length: { link0: 0.001 } }), 'length.link0')
refuses('bad-input', () => displaced(m, { knuckle: { strutTop: [0, 0, 0] } }), 'knuckle.strutTop')
refuses('bad-input', () => mechanism(w, { spin: [0, 0] as unknown as Point }), 'spin')

refuses('zero-length-link', () => wrong({ tieInner: w.tieOuter }), 'tie')
refuses('zero-length-link', () => wrong({ upperOuter: w.upperRearInner }), 'upperRear')
refuses('zero-length-link', () => wrong({ strutLower: s.topMount }, s), 'strutLower')
refuses('zero-length-link', () => wrong({ links: links(3, { inner: f.links[3].outer }) }, f), 'link3')
refuses('zero-length-link', () => mechanism(w, { length: { tie: -1 } }), 'tie')
// two faults meet: the link without length comes before the pivots that coincide
refuses('zero-length-link', () => wrong({ tieInner: w.tieOuter, lowerFrontInner: w.lowerRearInner }))

refuses('coincident-pivots', () => wrong({ lowerFrontInner: w.lowerRearInner }), 'lowerFrontInner')
refuses('coincident-pivots', () => wrong({ upperOuter: w.lowerOuter }), 'lowerOuter')
refuses('coincident-pivots', () => wrong({ topMount: s.lowerOuter }, s), 'lowerOuter')

const between = (a: Point, b: Point, share: number): Point => [
  a[0] + share * (b[0] - a[0]),
  a[1] + share * (b[1] - a[1]),
  a[2] + share * (b[2] - a[2]),
]
refuses(
  'degenerate',
  () => wrong({ upperOuter: between(w.upperFrontInner, w.upperRearInner, 0.4) }),
  'upperOuter',
)
refuses(
  'degenerate',
  () => wrong({ lowerOuter: between(s.lowerFrontInner, s.lowerRearInner, 1.4) }, s),
  'lowerOuter',
)

// the tie rod's outer point on the steering axis: the Jacobian alone would not notice
refuses('singular', () => wrong({ tieOuter: between(w.lowerOuter, w.upperOuter, 0.3) }), 'tieOuter')
refuses('singular', () => wrong({ tieOuter: between(s.lowerOuter, s.topMount, 0.2) }, s), 'tieOuter')
// the rod's line meets the axis: dead centre
refuses('singular', () => {
  const onAxis = between(w.lowerOuter, w.upperOuter, 0.2)
  return wrong({ tieInner: between(onAxis, w.tieOuter, 3) })
})
refuses('singular', () => wrong({ links: links(4, f.links[0]) }, f), 'points')

refuses('unreachable', () => poseAt(m, drive(0.5)))
refuses('unreachable', () => poseAt(m, drive(0, 0.3)), 'tie')
refuses('unreachable', () => closedPose(m, drive(-0.5)))
refuses('unreachable', () => newtonPose(m, drive(0.5), poseAt(m, zero)))
refuses('unreachable', () => motionCurve(m, { travels: [metre(0), metre(0.5)], rack: metre(0) }))
refuses('unreachable', () => steerCurve(m, { racks: [metre(-0.5)], travel: metre(0) }))
refuses('unreachable', () => travelRange(m, { rack: metre(0.3) }))
refuses('unreachable', () => rackRange(m, { travel: metre(0.5) }))
refuses('unreachable', () => rateOf(m, drive(0.5), { travel: 1 }))
refuses('unreachable', () => sensitivities(mechanism(s), drive(0.5)))

refuses('not-for-this-layout', () => rackRange(mechanism(f), { travel: metre(0) }), 'links')
refuses('not-for-this-layout', () => steeringScrew(mechanism(f), zero), 'links')
refuses('not-for-this-layout', () => instantCentre(mechanism(f), zero, 'drawing board'), 'layout')
refuses('not-for-this-layout', () => rollCentre(mechanism(f), zero, 'drawing board'), 'layout')

const push = (name: string, point: string): Setting => ({
  name,
  range: [-0.01, 0.01],
  displacement: (x) => ({ body: { [point]: [0, x, 0] } }),
})
const two = [push('front', 'upperFrontInner'), push('rear', 'upperRearInner')]
refuses('bad-input', () => settingsFor(m, zero, { settings: two, changes: { camber: 0.01 } }), 'changes')
refuses('bad-input', () => settingsFor(m, zero, { settings: [], changes: {} }), 'changes')
refuses('not-finite', () =>
  settingsFor(m, zero, { settings: two, changes: { camber: Number.NaN, caster: 0 } }),
)
refuses(
  'unreachable',
  () => settingsFor(m, zero, { settings: two, changes: { camber: 0.3, caster: 0 } }),
  'changes',
)
refuses('singular', () =>
  settingsFor(m, zero, { settings: [two[0]!, two[0]!], changes: { camber: 0.001, caster: 0.001 } }),
)
refuses('not-for-this-layout', () =>
  settingsFor(mechanism(f), zero, { settings: [push('a', 'inner0')], changes: { caster: 0.001 } }),
)

const turn = { wheelbase: metre(2.7), pivotTrack: metre(1.5), inner: deg(30) }
refuses('bad-input', () => outerWheelAngle({ ...turn, inner: rad(0) }), 'inner')
refuses('bad-input', () => outerWheelAngle({ ...turn, inner: deg(90) }), 'inner')
refuses('bad-input', () => turnRadius({ ...turn, wheelbase: metre(-1) }), 'wheelbase')
refuses('not-finite', () => turnRadius({ ...turn, pivotTrack: metre(Number.NaN) }), 'pivotTrack')

const legs = { base: [0, 1, 2, 3, 4, 5].map((i): Point => [i, i * i, 0]), lengths: [1, 1, 1, 1, 1, 1] }
const start = { origin: [0, 0, 1], turn: [1, 0, 0, 0] } as const
const same = legs.base.map((): Point => [0, 0, 0])
refuses('bad-input', () => rigidBodyFromDistances({ ...legs, body: same, lengths: [1] }, start))
refuses('not-finite', () =>
  rigidBodyFromDistances({ ...legs, body: same, lengths: [1, 1, 1, 1, 1, Number.NaN] }, start),
)
refuses('singular', () => rigidBodyFromDistances({ ...legs, body: same }, start))
// six legs of a body of 1 m: five ask it to be 20 m away, the sixth to be at home
const body: Point[] = [
  [0, 0, 0],
  [1, 0, 0],
  [0, 1, 0],
  [1, 1, 1],
  [0.3, 0.1, 0.5],
  [0.1, 0.4, 0.2],
]
const base: Point[] = [
  [0, 0, 0.1],
  [1.2, 0, 0],
  [0.1, 1.3, 0],
  [1, 1, -1],
  [2, 0.1, 0.5],
  [0.1, 2, 0.2],
]
refuses('unreachable', () =>
  rigidBodyFromDistances(
    { base, body, lengths: [20, 20, 20, 20, 20, 0.01] },
    { origin: [0.1, 0.2, 0.3], turn: [1, 0.1, 0.2, 0.3] },
  ),
)

law(
  'LI4 the link that is named, made longer by a little more than it lacks, gets there',
  anyCorner(),
  (corner) => {
    const { up, down } = travelRange(mechanism(corner), { rack: metre(0) })
    for (const past of [up + 0.001, down - 0.001]) {
      let said: Refusal | undefined
      try {
        poseAt(mechanism(corner), drive(past))
      } catch (error) {
        said = error as Refusal
      }
      expect(said).toBeInstanceOf(Refusal)
      const by = / too (short|long) by about ([\d.]+) mm/.exec(said!.sentence)
      expect(said!.sentence).toContain('the way ends at travel')
      if (!by) {
        expect(said!.at).toBe('strut')
        continue
      }
      const missing = ((by[1] === 'short' ? 1 : -1) * Number(by[2])) / 1000
      // printed to 0.1 mm
      const longer = mechanism(corner, { length: { [said!.at]: 1.1 * missing + Math.sign(missing) * 1e-4 } })
      const { up: top, down: bottom } = travelRange(longer, { rack: metre(0) })
      expect(past > 0 ? top - past : past - bottom).toBeGreaterThan(0)
    }
    return true
  },
  { runs: 40 },
)

test('LI3 a corner that fits in a thousandth of its size or a thousand times it is answered alike', () => {
  const scaled = (by: number): CornerPoints =>
    Object.fromEntries(
      Object.entries(w).map(([name, value]) =>
        Array.isArray(value)
          ? [name, value.map((x) => x * by)]
          : [name, name === 'tyreRadius' ? (value as number) * by : value],
      ),
    ) as unknown as CornerPoints
  const plain = poseAt(m, drive(0.05, 0.01))
  for (const by of [0.01, 1000]) {
    const pose = poseAt(mechanism(scaled(by)), drive(0.05 * by, 0.01 * by))
    near(pose.camber, plain.camber, { abs: 1e-11 })
    near(pose.toe, plain.toe, { abs: 1e-11 })
  }
})
