import fc from 'fast-check'
import { expect } from 'vitest'
import {
  batchFlag,
  batchPoints,
  batchPoses,
  batchStride,
  bushTwist,
  closedPose,
  type Displacement,
  displaced,
  type FiveLink,
  instantCentre,
  mechanism,
  mirrorPoint,
  motionCurve,
  newtonPose,
  type Point,
  type Pose,
  parameters,
  poseAt,
  rackRange,
  rateOf,
  rollCentre,
  type SemiTrailingArm,
  sensitivities,
  settingsFor,
  steeringScrew,
  sumOfDisplacements,
  travelRange,
  wheelShift,
} from '../../../src/linkage/index.ts'
import { metre, type Refusal, rad } from '../../../src/quantity/index.ts'
import { law, near, refuses } from '../../support/law.ts'
import { anyArmDisplacement, anyTrailingArm, trailingArm } from './any-trailing-arm.ts'

const drive = (travel: number) => ({ travel: metre(travel), rack: metre(0) })
const travels = fc.double({ min: -0.1, max: 0.1, noNaN: true })
const minus = (a: Point, b: Point): Point => [a[0] - b[0], a[1] - b[1], a[2] - b[2]]
const dot = (a: Point, b: Point): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2]
const size = (a: Point): number => Math.hypot(...a)
const cross = (a: Point, b: Point): Point => [
  a[1] * b[2] - a[2] * b[1],
  a[2] * b[0] - a[0] * b[2],
  a[0] * b[1] - a[1] * b[0],
]
const m = mechanism(trailingArm)

/** The same hinge as five links: three hold the front bush, two square to the axis the rear one. */
function asFiveLink(p: SemiTrailingArm): FiveLink {
  const axis = minus(p.innerRear, p.innerFront)
  const u = cross(axis, [0, 0.3, 1])
  const v = cross(axis, u)
  const from = (outer: Point, way: Point, length: number) => ({
    inner: [0, 1, 2].map((i) => outer[i]! + (length * way[i]!) / size(way)) as unknown as Point,
    outer,
  })
  const { innerFront: a, innerRear: b } = p
  const links = [from(a, axis, 0.5), from(a, u, 0.4), from(a, v, 0.6), from(b, u, 0.45), from(b, v, 0.55)]
  return { ...p, layout: 'five-link', links: links as unknown as FiveLink['links'] }
}

law(
  'LI16 a hinge is five links: its closed form agrees with following them',
  fc.record({ corner: anyTrailingArm, travel: travels }),
  ({ corner, travel }) => {
    const got = poseAt(mechanism(corner), drive(travel))
    const want = poseAt(mechanism(asFiveLink(corner)), drive(travel))
    near(got.camber, want.camber, { abs: 1e-12 })
    near(got.toe, want.toe, { abs: 1e-12 })
    for (let i = 0; i < 3; i++) near(got.contact[i]!, want.contact[i]!, { abs: 1e-12 })
    return near(got.residual, 0, { abs: 1e-14 })
  },
)

law(
  'LI16 the ends of a hinge’s travel are the top and bottom of the circle, as five links find them',
  anyTrailingArm,
  (corner) => {
    const got = travelRange(mechanism(corner), { rack: metre(0) })
    const want = travelRange(mechanism(asFiveLink(corner)), { rack: metre(0) })
    near(got.up, want.up, { abs: 1e-9 })
    return near(got.down, want.down, { abs: 1e-9 })
  },
  { runs: 40 },
)

law('LI4 a hair before a hinge’s end is answered, a hair past it refused', anyTrailingArm, (corner) => {
  const arm = mechanism(corner)
  const { up, down } = travelRange(arm, { rack: metre(0) })
  expect(up).toBeGreaterThan(0)
  expect(down).toBeLessThan(0)
  for (const [end, sign] of [
    [up, 1],
    [down, -1],
  ] as const) {
    near(poseAt(arm, drive(end - sign * 1e-9)).residual, 0, { abs: 1e-13 })
    let said: Refusal | undefined
    try {
      poseAt(arm, drive(end + sign * 1e-9))
    } catch (error) {
      said = error as Refusal
    }
    expect(said?.code).toBe('unreachable')
    expect(said?.at).toBe('arm')
    expect(said?.sentence).toContain(`the ${sign > 0 ? 'top' : 'bottom'} of its circle`)
    expect(said?.sentence).toContain('the way ends at travel')
  }
  return true
})

law('LI2 the design pose gives back camber and toe exactly', anyTrailingArm, (corner) => {
  const pose = poseAt(mechanism(corner), drive(0))
  near(pose.camber, corner.camber, { abs: 1e-16 })
  near(pose.toe, corner.toe, { abs: 1e-16 })
  expect(pose.wheelCentre).toEqual(corner.wheelCentre)
  expect([pose.caster, pose.sai, pose.scrub, pose.trail, pose.armUpper, pose.strutLength]).toEqual(
    new Array(6).fill(null),
  )
  return Math.abs(pose.armLower!) < 1e-15
})

law(
  'LI1 displaced: both eyes on the line of the bushes, the front one in its bush, the arm rigid',
  fc.record({ corner: anyTrailingArm, by: anyArmDisplacement, travel: travels }),
  ({ corner, by, travel }) => {
    const pose = poseAt(mechanism(corner, by), drive(travel))
    near(pose.wheelCentre[2], corner.wheelCentre[2] + travel, { abs: 1e-15 })
    const [w, x, y, z] = pose.turn!
    near(w * w + x * x + y * y + z * z, 1, { abs: 1e-14 })
    const plus = (a: Point, b: Point): Point => [a[0] + b[0], a[1] + b[1], a[2] + b[2]]
    const turned = (a: Point): Point => {
      const t = cross([x, y, z], a).map((e) => 2 * e) as unknown as Point
      return plus(plus(a, t.map((e) => w * e) as unknown as Point), cross([x, y, z], t))
    }
    const hub = plus(corner.wheelCentre, by.knuckle!['wheelCentre']!)
    const front = plus(corner.innerFront, by.body!['innerFront']!)
    const rear = plus(corner.innerRear, by.body!['innerRear']!)
    const eye = (name: string, p: Point): Point =>
      plus(pose.wheelCentre, turned(minus(plus(p, by.knuckle![name]!), hub)))
    near(size(minus(eye('eyeFront', corner.innerFront), front)), 0, { abs: 1e-14 })
    const off = cross(minus(eye('eyeRear', corner.innerRear), front), minus(rear, front))
    return near(size(off) / size(minus(rear, front)), 0, { abs: 1e-14 })
  },
)

law(
  'LI13 a right rear arm is the mirror image: turned in vehicle axes it stands where the left one’s mirror stands',
  fc.record({ corner: anyTrailingArm, travel: travels }),
  ({ corner, travel }) => {
    const pose = poseAt(mechanism(corner), drive(travel))
    // the right arm in vehicle axes: its wheel centre stays at its distances from both bushes
    const centre = mirrorPoint(pose.wheelCentre)
    for (const bush of [corner.innerFront, corner.innerRear])
      near(size(minus(centre, mirrorPoint(bush))), size(minus(corner.wheelCentre, bush)), { abs: 1e-14 })
    // camber and toe read from the mirrored spin axis, outward −y
    const s = mirrorPoint(pose.spinAxis)
    near(-Math.asin(s[2]), pose.camber, { abs: 1e-15 })
    return near(Math.atan2(s[0], -s[1]), pose.toe, { abs: 1e-15 })
  },
)

const slope = (f: (x: number) => number, h: number): number =>
  (8 * (f(h) - f(-h)) - (f(2 * h) - f(-2 * h))) / (12 * h)
const scaled = (d: Displacement, by: number): Displacement => {
  const each = (g: Displacement['body'] = {}) =>
    Object.fromEntries(Object.entries(g).map(([k, v]) => [k, v.map((x) => x * by) as unknown as typeof v]))
  return {
    body: each(d.body),
    knuckle: each(d.knuckle),
    ...(d.spin && { spin: d.spin.map((x) => x * by) as unknown as typeof d.spin }),
  }
}

law(
  'LI7 rates of a hinged wheel equal central differences, for every number',
  fc.record({ corner: anyTrailingArm, by: anyArmDisplacement, travel: travels, place: fc.nat() }),
  ({ corner, by, travel, place }) => {
    const arm = mechanism(corner, by)
    const rates = sensitivities(arm, drive(travel))
    const all = Object.entries(parameters(arm))
    const [name, way] = all[place % all.length]!
    const pose = (x: number): Pose =>
      poseAt(displaced(arm, sumOfDisplacements([by, scaled(way, x)])), drive(travel + x * (way.travel ?? 0)))
    for (const angle of ['camber', 'toe'] as const)
      near(
        rates[name]![angle],
        slope((x) => pose(x)[angle], 1e-4),
        { abs: 1e-8, rel: 1e-7 },
      )
    for (const i of [0, 1, 2] as const)
      near(
        rates[name]!.wheelCentre[i],
        slope((x) => pose(x).wheelCentre[i], 1e-4),
        { abs: 1e-8, rel: 1e-7 },
      )
    expect(rates[name]!.caster).toBeNull()
    return true
  },
)

law(
  'LI14 a hinge’s bush twist is its arm angle, bump positive, and adds up',
  fc.record({ corner: anyTrailingArm, a: travels, b: travels }),
  ({ corner, a, b }) => {
    const arm = mechanism(corner)
    const [design, one, two] = motionCurve(arm, {
      travels: [metre(0), metre(a), metre(b)],
      rack: metre(0),
    }) as [Pose, Pose, Pose]
    const twist = (from: Pose, to: Pose): number => bushTwist(arm, { from, to })['innerRear']!
    expect(bushTwist(arm, { from: design, to: one })['innerFront']).toBe(twist(design, one))
    near(twist(design, one), one.armLower!, { abs: 1e-14 })
    near(twist(design, one) + twist(one, two), twist(design, two), { abs: 1e-12 })
    return Math.sign(one.armLower!) === Math.sign(a) || Math.abs(a) < 1e-14
  },
)

law(
  'LI5 all doors give one pose of a hinge; the rack does nothing to it',
  fc.record({ corner: anyTrailingArm, by: anyArmDisplacement, travel: travels }),
  ({ corner, by, travel }) => {
    const arm = mechanism(corner, by)
    const pose = poseAt(arm, drive(travel))
    for (const other of [
      closedPose(arm, drive(travel)),
      newtonPose(arm, drive(travel), poseAt(arm, drive(0))),
      poseAt(arm, { travel: metre(travel), rack: metre(0.01) }),
    ]) {
      near(other.camber, pose.camber, { abs: 1e-15 })
      near(other.toe, pose.toe, { abs: 1e-15 })
    }
    return true
  },
)

law(
  'LI15 a batch of a hinge equals one by one',
  fc.record({ corner: anyTrailingArm, a: travels, b: travels }),
  ({ corner, a, b }) => {
    const arm = mechanism(corner)
    const out = new Float64Array(3 * batchStride)
    expect(batchPoses(arm, Float64Array.of(a, 0, 5, 0, b, 0), out)).toBe(2)
    for (const [i, travel] of [
      [0, a],
      [2, b],
    ] as const) {
      const pose = poseAt(arm, drive(travel))
      near(out[batchStride * i]!, pose.camber, { abs: 1e-12 })
      near(out[batchStride * i + 1]!, pose.toe, { abs: 1e-12 })
      near(out[batchStride * i + 4]!, pose.wheelCentre[0], { abs: 1e-12 })
    }
    return out[batchStride + 7] === batchFlag.unreachable
  },
)

law(
  'LI10 a hinge’s instant centre lies on its axis',
  fc.record({ corner: anyTrailingArm, travel: travels }),
  ({ corner, travel }) => {
    const arm = mechanism(corner)
    const { centre, pose } = instantCentre(arm, drive(travel), 'instantaneous')
    const axis = minus(corner.innerFront, corner.innerRear)
    if (!centre || Math.abs(axis[0]) < 0.02) return true
    // where the axis pierces the transverse plane through the contact point
    const share = (pose.contact[0] - corner.innerRear[0]) / axis[0]
    near(centre.y, corner.innerRear[1] + share * axis[1], { rel: 1e-9, abs: 1e-10 })
    return near(centre.z, corner.innerRear[2] + share * axis[2], { rel: 1e-9, abs: 1e-10 })
  },
)

law(
  'LI6 a hinge displaced by nothing is the hinge; both bushes shifted alike carry the wheel along',
  fc.record({ corner: anyTrailingArm, travel: travels, x: travels, y: travels }),
  ({ corner, travel, x, y }) => {
    const plain = poseAt(mechanism(corner), drive(travel))
    const same = poseAt(
      mechanism(corner, { body: { innerFront: [0, 0, 0] }, spin: [0, 0, 0] }),
      drive(travel),
    )
    expect(same.camber).toBe(plain.camber)
    const shift: Point = [x, y, 0]
    const moved = poseAt(mechanism(corner, { body: { innerFront: shift, innerRear: shift } }), drive(travel))
    near(moved.wheelCentre[0] - plain.wheelCentre[0], x, { abs: 1e-14 })
    near(moved.wheelCentre[1] - plain.wheelCentre[1], y, { abs: 1e-14 })
    return near(moved.toe, plain.toe, { abs: 1e-14 })
  },
)

law(
  'LI15 draws of a hinge’s points spread as the rates say',
  fc.constantFrom(trailingArm, { ...trailingArm, innerRear: [0.43, 0.21, 0.29] as const }),
  (corner) => {
    const arm = mechanism(corner)
    const drives = drive(0.05)
    const spread = 0.001
    const count = 4000
    const out = new Float64Array(count * batchStride)
    expect(batchPoints(arm, { drive: drives, spread: metre(spread), draws: count, seed: 7 }, out)).toBe(count)
    const mean = (f: (i: number) => number): number =>
      Array.from({ length: count }, (_, i) => f(i)).reduce((a, b) => a + b, 0) / count
    const rates = sensitivities(arm, drives)
    const still = sensitivities(arm, drive(0))
    // a point error moves bush and eye alike; the design pose stays, so what it does there does not count
    let variance = 0
    for (const [bush, eye] of [
      ['innerFront', 'eyeFront'],
      ['innerRear', 'eyeRear'],
    ])
      for (const axis of ['x', 'y', 'z']) {
        const both = [`body.${bush}.${axis}`, `knuckle.${eye}.${axis}`].map(
          (name) => rates[name]!.toe - still[name]!.toe,
        )
        variance += (both[0]! + both[1]!) ** 2
      }
    for (const axis of ['x', 'y', 'z'])
      variance += (rates[`knuckle.wheelCentre.${axis}`]!.toe - still[`knuckle.wheelCentre.${axis}`]!.toe) ** 2
    const centre = mean((i) => out[batchStride * i + 1]!)
    const sd = Math.sqrt(mean((i) => (out[batchStride * i + 1]! - centre) ** 2))
    // 4000 draws know their spread to 1.1 % (one standard deviation)
    return near(sd, spread * Math.sqrt(variance), { rel: 0.05 })
  },
  { runs: 4 },
)

law(
  'LI16 a hinge straight across keeps toe and camber as a wheel without them goes up and down',
  travels,
  (t) => {
    const across = mechanism({ ...trailingArm, innerRear: [0.43, 0.21, 0.29], camber: rad(0), toe: rad(0) })
    const pose = poseAt(across, drive(t))
    near(pose.camber, 0, { abs: 1e-15 })
    near(pose.toe, 0, { abs: 1e-15 })
    return near(wheelShift(across, pose).halfTrack, 0, { abs: 1e-15 })
  },
)

const wrong = (change: Record<string, unknown>) =>
  mechanism({ ...trailingArm, ...change } as unknown as SemiTrailingArm)
refuses('not-finite', () => wrong({ innerFront: [0, Number.NaN, 0] }), 'innerFront.1')
refuses('bad-input', () => wrong({ innerRear: undefined }), 'innerRear')
refuses('bad-input', () => mechanism(trailingArm, { length: { tie: 0.001 } }), 'length.tie')
refuses('bad-input', () => mechanism(trailingArm, { body: { innerRear: [1, 1, 0] } }), 'body.innerRear')
refuses('coincident-pivots', () => wrong({ innerRear: trailingArm.innerFront }), 'innerFront')
refuses(
  'coincident-pivots',
  () =>
    mechanism(trailingArm, {
      knuckle: { eyeFront: minus(trailingArm.innerRear, trailingArm.innerFront) },
    }),
  'eyeFront',
)
refuses('degenerate', () => wrong({ wheelCentre: [0.19, -0.14, 0.25] }), 'wheelCentre')
refuses(
  'degenerate',
  () => mechanism(trailingArm, { knuckle: { wheelCentre: minus([0.19, -0.14, 0.25], [0, 0.72, 0.31]) } }),
  'wheelCentre',
)
refuses('singular', () => wrong({ innerRear: [0.43, 0.56, 0.1] }), 'wheelCentre')
refuses(
  'singular',
  () => wrong({ innerRear: [0.43, 0.2, 0.29], wheelCentre: [0.43, 0.7, 0.6] }),
  'wheelCentre',
)
refuses('unreachable', () => poseAt(m, drive(0.6)), 'arm')
refuses('unreachable', () => newtonPose(m, drive(-0.6), poseAt(m, drive(0))), 'arm')
refuses('unreachable', () => closedPose(m, drive(0.6)), 'arm')
refuses('unreachable', () =>
  batchPoints(
    m,
    { drive: drive(0.6), spread: metre(0.001), draws: 1, seed: 1 },
    new Float64Array(batchStride),
  ),
)
refuses('unreachable', () => rateOf(m, drive(0.6), { travel: 1 }), 'arm')
refuses('not-finite', () => poseAt(m, drive(Number.NaN)), 'travel')
refuses('not-for-this-layout', () => rackRange(m, { travel: metre(0) }), 'links')
refuses('not-for-this-layout', () => steeringScrew(m, drive(0)), 'links')
refuses('not-for-this-layout', () => instantCentre(m, drive(0), 'drawing board'), 'layout')
refuses('not-for-this-layout', () => rollCentre(m, drive(0), 'drawing board'), 'layout')
refuses('not-for-this-layout', () =>
  settingsFor(m, drive(0), {
    settings: [
      { name: 'bush', range: [-0.01, 0.01], displacement: (x) => ({ body: { innerRear: [x, 0, 0] } }) },
    ],
    changes: { caster: 0.001 },
  }),
)

law(
  'LI8 two eccentrics in the bushes bring camber and toe as wanted',
  fc.record({
    camber: fc.double({ min: -0.004, max: 0.004, noNaN: true }),
    toe: fc.double({ min: -0.004, max: 0.004, noNaN: true }),
  }),
  ({ camber, toe }) => {
    const before = poseAt(m, drive(0.01))
    const { pose } = settingsFor(m, drive(0.01), {
      settings: [
        { name: 'toe', range: [-0.02, 0.02], displacement: (x) => ({ body: { innerRear: [x, 0, 0] } }) },
        { name: 'camber', range: [-0.02, 0.02], displacement: (x) => ({ body: { innerRear: [0, 0, x] } }) },
      ],
      changes: { camber, toe },
    })
    near(pose.camber - before.camber, camber, { abs: 1e-12 })
    return near(pose.toe - before.toe, toe, { abs: 1e-12 })
  },
)
law('LI1 every spin axis is a unit vector', fc.record({ corner: anyTrailingArm, travel: travels }), (c) => {
  const s = poseAt(mechanism(c.corner), drive(c.travel)).spinAxis
  return near(dot(s, s), 1, { abs: 1e-14 })
})
