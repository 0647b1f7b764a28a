import fc from 'fast-check'
import { expect, test } from 'vitest'
import {
  type BoxSteering,
  centringChange,
  idlerAngle,
  mechanism,
  mirrorPoint,
  type Point,
  poseAt,
  rateOf,
  rodsForToes,
  type SteeredAxle,
  steeredPoses,
  steeringRatio,
  steeringShift,
  steeringWheelOff,
  straightAhead,
} from '../../../src/linkage/index.ts'
import { deg, metre, type Radian, type Refusal, rad } from '../../../src/quantity/index.ts'
import { law, near, refuses } from '../../support/law.ts'
import { axle, box, inner, level, m, points, ride } from '../../support/linkage-examples.ts'
import { anyCorner } from './any-corner.ts'
import { trailingArm } from './any-trailing-arm.ts'

const apart = (a: Point, b: Point): number => Math.hypot(a[0] - b[0], a[1] - b[1], a[2] - b[2])
const some = (most: number): fc.Arbitrary<number> => fc.double({ min: -most, max: most, noNaN: true })
const point = (p: Point): fc.Arbitrary<Point> =>
  fc.tuple(some(0.02), some(0.02), some(0.02)).map(([x, y, z]) => [p[0] + x, p[1] + y, p[2] + z] as const)
const anyBox: fc.Arbitrary<BoxSteering> = fc
  .record({
    dropJoint: point(box.dropJoint),
    idlerJoint: point(box.idlerJoint),
    a: point(box.dropAxis[1]),
    b: point(box.idlerAxis[1]),
    against: fc.boolean(),
  })
  .map(({ dropJoint, idlerJoint, a, b, against }) => ({
    ...box,
    dropJoint,
    idlerJoint,
    dropAxis: [box.dropAxis[0], a] as const,
    idlerAxis: [box.idlerAxis[0], b] as const,
    ratio: against ? -18 : 16,
  }))
const mirroredBox = (b: BoxSteering): BoxSteering => ({
  ...b,
  dropAxis: [mirrorPoint(b.dropAxis[0]), mirrorPoint(b.dropAxis[1])],
  dropJoint: mirrorPoint(b.dropJoint),
  idlerAxis: [mirrorPoint(b.idlerAxis[0]), mirrorPoint(b.idlerAxis[1])],
  idlerJoint: mirrorPoint(b.idlerJoint),
})

law(
  'LI18 the centre link keeps its length and what sits on it its places along it',
  fc.record({ b: anyBox, wheel: some(6) }),
  ({ b, wheel }) => {
    const ends = { left: b.dropJoint, right: b.idlerJoint }
    const between: Point = [0, 1, 2].map(
      (i) => 0.7 * b.dropJoint[i]! + 0.3 * b.idlerJoint[i]!,
    ) as unknown as Point
    const shifted = (p: Point, by: Point): Point => [p[0] + by[0], p[1] + by[1], p[2] + by[2]]
    const a = steeringShift(b, { wheel: rad(wheel), inner: ends })
    const c = steeringShift(b, { wheel: rad(wheel), inner: { left: between, right: b.idlerJoint } })
    const [drop, idler] = [shifted(b.dropJoint, a.shift.left), shifted(b.idlerJoint, a.shift.right)]
    near(apart(drop, idler), apart(b.dropJoint, b.idlerJoint), { abs: 1e-14 })
    near(apart(shifted(between, c.shift.left), drop), apart(between, b.dropJoint), { abs: 1e-14 })
    // arms keep their length from any point of their axes
    for (const at of b.dropAxis) near(apart(drop, at), apart(b.dropJoint, at), { abs: 1e-14 })
    for (const at of b.idlerAxis) near(apart(idler, at), apart(b.idlerJoint, at), { abs: 1e-14 })
    return near(a.drop!, wheel / b.ratio, { abs: 1e-15 })
  },
)

law('LI18 at straight ahead nothing is moved', anyBox, (b) => {
  const { shift, idler } = steeringShift(b, { wheel: rad(0), inner })
  for (const side of ['left', 'right'] as const) for (const x of shift[side]) near(x, 0, { abs: 1e-14 })
  return near(idler!, 0, { abs: 1e-13 })
})

law(
  'LI13 a steering in a mirror: sides and the sense of the steering wheel change',
  fc.record({ b: anyBox, wheel: some(6) }),
  ({ b, wheel }) => {
    const here = steeringShift(b, { wheel: rad(wheel), inner })
    const there = steeringShift(mirroredBox(b), { wheel: rad(-wheel), inner })
    for (let i = 0; i < 3; i++) near(here.shift.left[i]!, mirrorPoint(there.shift.right)[i]!, { abs: 1e-14 })
    return near(here.idler!, -there.idler!, { abs: 1e-13 })
  },
)

test('LI18 a parallelogram moves both points alike', () => {
  for (const wheel of [-500, -30, 200]) {
    const { shift, drop, idler } = steeringShift(box, { wheel: deg(wheel), inner })
    near(idler!, drop!, { abs: 1e-14 })
    for (let i = 0; i < 3; i++) near(shift.left[i]!, shift.right[i]!, { abs: 1e-14 })
  }
})

law(
  'LI18 the idler in the box’s place: driven back by its own angle the drop arm stands where it was',
  fc.record({ b: anyBox, drop: some(0.35) }),
  ({ b, drop }) => {
    const idler = idlerAngle(b, rad(drop))
    const back: BoxSteering = {
      ...b,
      dropAxis: b.idlerAxis,
      dropJoint: b.idlerJoint,
      idlerAxis: b.dropAxis,
      idlerJoint: b.dropJoint,
    }
    return near(idlerAngle(back, idler), drop, { abs: 1e-11 })
  },
)

const rack: SteeredAxle = { steering: { kind: 'rack', perTurn: metre(-0.045) }, left: m, right: m }
law(
  'LI18 both sides with a rack: as each corner by itself, and turned the other way sides change places',
  fc.record({
    corner: anyCorner(['double wishbone', 'strut']),
    wheel: some(3),
    a: some(0.04),
    b: some(0.04),
  }),
  ({ corner, wheel, a, b }) => {
    const own = mechanism(corner)
    const both: SteeredAxle = { ...rack, left: own, right: own }
    const travel = { left: metre(a), right: metre(b) }
    const here = steeredPoses(both, { wheel: rad(wheel), travel })
    const by = (-0.045 * wheel) / (2 * Math.PI)
    near(here.left.toe, poseAt(own, { travel: metre(a), rack: metre(by) }).toe, { abs: 1e-15 })
    near(here.right.toe, poseAt(own, { travel: metre(b), rack: metre(-by) }).toe, { abs: 1e-15 })
    const there = steeredPoses(both, { wheel: rad(-wheel), travel: { left: metre(b), right: metre(a) } })
    near(there.left.toe, here.right.toe, { abs: 1e-13 })
    return near(there.right.toe, here.left.toe, { abs: 1e-13 })
  },
  { runs: 60 },
)

law(
  'LI18 the box’s tie rods keep their lengths on both sides',
  fc.record({ b: anyBox, wheel: some(3) }),
  ({ b, wheel }) => {
    const poses = steeredPoses({ ...axle, steering: b }, { wheel: rad(wheel), travel: level })
    const ends = { left: points.tieInner, right: mirrorPoint(points.tieInner) }
    const { shift } = steeringShift(b, { wheel: rad(wheel), inner: ends })
    const long = apart(points.tieInner, points.tieOuter)
    for (const side of ['left', 'right'] as const) {
      const end = ends[side].map((x, i) => x + shift[side][i]!) as unknown as Point
      const outer = poses[side].points['tieOuter']!
      near(apart(side === 'left' ? outer : mirrorPoint(outer), end), long, { abs: 1e-12 })
    }
    return true
  },
  { runs: 60 },
)

const anyHeld = fc
  .tuple(some(0.5), some(0.5), some(0.3))
  .map(([l, r, t]) => ({ toes: { left: deg(l), right: deg(r) }, thrust: deg(t) }))
const add = (a: Radian, b: Radian): Radian => rad(a + b)

law(
  'LI19 after the centring change the steering wheel stands straight, and the total toe is what it was',
  anyHeld,
  (held) => {
    const change = centringChange(held)
    near(change.left, -change.right, { abs: 1e-16 })
    const toes = { left: add(held.toes.left, change.left), right: add(held.toes.right, change.right) }
    near(toes.left + toes.right, held.toes.left + held.toes.right, { abs: 1e-15 })
    near(change.right, steeringWheelOff(held, 16) / 16, { abs: 1e-15 })
    return near(steeringWheelOff({ ...held, toes }, 16), 0, { abs: 1e-13 })
  },
)

law(
  'LI19 with a total wanted, each wheel gets half of it to the thrust line',
  fc.record({ held: anyHeld, total: some(0.4) }),
  ({ held, total }) => {
    const change = centringChange(held, deg(total))
    near(held.toes.left + change.left - held.thrust, deg(total) / 2, { abs: 1e-15 })
    return near(held.toes.right + change.right + held.thrust, deg(total) / 2, { abs: 1e-15 })
  },
)

law(
  'LI19 the linkage runs straight where the small-angle rule says, and there both toes to the thrust line are equal',
  fc.record({ thrust: some(0.2), left: some(0.2), right: some(0.2), rack: fc.boolean() }),
  ({ thrust, left, right, rack: byRack }) => {
    const long = (x: number) => mechanism(points, { length: { tie: deg(x) / 7 } })
    const both: SteeredAxle = { ...(byRack ? rack : axle), left: long(left), right: long(right) }
    const held = steeredPoses(both, { wheel: rad(0), travel: level })
    const toes = { left: held.left.toe, right: held.right.toe }
    const wheel = straightAhead(both, { thrust: deg(thrust), travel: level })
    const there = steeredPoses(both, { wheel, travel: level })
    near(there.left.toe - deg(thrust), there.right.toe + deg(thrust), { abs: 1e-13 })
    const ratio = steeringRatio(both, { wheel: rad(0), travel: level })
    // the ratio changes a little over the turn: one part in a hundred, and 0.02° of the wheel
    return near(wheel, steeringWheelOff({ toes, thrust: deg(thrust) }, ratio), { rel: 0.01, abs: deg(0.02) })
  },
  { runs: 40 },
)

test('LI19 equal changes at both rods centre the steering wheel, checked with the linkage', () => {
  const bent: SteeredAxle = { ...axle, left: mechanism(points, { length: { tie: 0.0008 } }) }
  const held = steeredPoses(bent, { wheel: rad(0), travel: level })
  const change = centringChange({ toes: { left: held.left.toe, right: held.right.toe }, thrust: deg(0.1) })
  const rate = {
    left: rateOf(bent.left, ride, { length: { tie: 1 } }).toe,
    right: rateOf(m, ride, { length: { tie: 1 } }).toe,
  }
  const rods = rodsForToes(change, rate)
  near(rods.left, -rods.right, { rel: 0.01 })
  const set: SteeredAxle = {
    ...axle,
    left: mechanism(points, { length: { tie: 0.0008 + rods.left } }),
    right: mechanism(points, { length: { tie: rods.right } }),
  }
  near(straightAhead(set, { thrust: deg(0.1), travel: level }), 0, { abs: deg(0.01) })
  expect(Math.abs(straightAhead(bent, { thrust: deg(0.1), travel: level }))).toBeGreaterThan(deg(0.5))
})

test('LI4 past the end of the drop arm’s way it is said how much the centre link lacks, and where the way ends', () => {
  const short: BoxSteering = { ...box, idlerJoint: [0.02, -0.3, 0.26] }
  let said: Refusal | undefined
  try {
    idlerAngle(short, deg(80))
  } catch (error) {
    said = error as Refusal
  }
  expect(said?.at).toBe('centreLink')
  const end = Number(/the way ends at \+([\d.]+)°/.exec(said!.sentence)![1])
  idlerAngle(short, deg(end - 0.01))
  expect(() => idlerAngle(short, deg(end + 0.01))).toThrow()
  expect(said!.sentence).toMatch(/too (short|long) by about [\d.]+ mm/)
})

const wrong = (change: object) => idlerAngle({ ...box, ...change } as BoxSteering, deg(5))
refuses('not-finite', () => idlerAngle(box, rad(Number.NaN)), 'drop')
refuses('not-finite', () => wrong({ dropJoint: [0, Number.NaN, 0] }), 'dropJoint.1')
refuses('not-finite', () => steeringShift(box, { wheel: rad(Number.NaN), inner }), 'wheel')
refuses('bad-input', () => wrong({ ratio: 0 }), 'ratio')
refuses('bad-input', () => wrong({ idlerJoint: [0, 1] }), 'idlerJoint')
refuses('bad-input', () => wrong({ dropAxis: [[0, 0, 0]] }), 'dropAxis')
refuses(
  'bad-input',
  () => steeringShift({ kind: 'rack', perTurn: metre(0) }, { wheel: rad(1), inner }),
  'perTurn',
)
refuses('zero-length-link', () => wrong({ idlerJoint: box.dropJoint }), 'centreLink')
refuses('coincident-pivots', () => wrong({ idlerAxis: [box.idlerAxis[0], box.idlerAxis[0]] }), 'idlerAxis')
refuses('degenerate', () => wrong({ dropJoint: [0.02, 0.36, 0.2] }), 'dropJoint')
refuses('singular', () => wrong({ idlerJoint: [0.02, -0.2, 0.3], dropJoint: [0.02, 0.2, 0.3] }), 'centreLink')
refuses('unreachable', () => steeredPoses(axle, { wheel: rad(0), travel: { ...level, left: metre(0.5) } }))
refuses('unreachable', () => idlerAngle({ ...box, idlerJoint: [0.02, -0.3, 0.26] }, deg(80)), 'centreLink')
refuses(
  'not-for-this-layout',
  () => steeredPoses({ ...axle, right: mechanism(trailingArm) }, { wheel: rad(0), travel: level }),
  'right',
)
refuses('bad-input', () => steeringWheelOff({ toes: level as never, thrust: rad(0) }, 0), 'ratio')
refuses('not-finite', () =>
  centringChange({ toes: { left: rad(Number.NaN), right: rad(0) }, thrust: rad(0) }),
)
refuses('not-finite', () => straightAhead(axle, { thrust: rad(Number.NaN), travel: level }))
refuses('singular', () => rodsForToes({ left: rad(0.1), right: rad(0.1) }, { left: 7, right: 0 }), 'right')
refuses('singular', () =>
  steeringRatio({ ...axle, steering: { ...box, ratio: 1e12 } }, { wheel: rad(0), travel: level }),
)
refuses('singular', () =>
  straightAhead({ ...axle, steering: { ...box, ratio: 1e12 } }, { thrust: deg(0.2), travel: level }),
)
