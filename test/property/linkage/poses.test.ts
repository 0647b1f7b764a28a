import fc from 'fast-check'
import { expect, test } from 'vitest'
import {
  bushTwist,
  type CornerPoints,
  closedPose,
  type Drive,
  mechanism,
  mirrorPoint,
  motionCurve,
  newtonPose,
  type Point,
  type Pose,
  poseAt,
  rackForSide,
  rackRange,
  steerCurve,
  sumOfDisplacements,
  travelRange,
  wheelShift,
} from '../../../src/linkage/index.ts'
import { metre, Refusal } from '../../../src/quantity/index.ts'
import { law, near } from '../../support/law.ts'
import { anyCorner, anyDrive, fiveLink, strut, wishbone } from './any-corner.ts'

const zero: Drive = { travel: metre(0), rack: metre(0) }
const apart = (a: Point, b: Point): number => Math.hypot(a[0] - b[0], a[1] - b[1], a[2] - b[2])
const cornerAndDrive = fc.record({ corner: anyCorner(), drive: anyDrive })

/** A longer run on request. */
const soak = (runs: number): number => (process.env['AXLEWRIGHT_SOAK'] ? 20 * runs : runs)

/** The answer, or the code of the refusal. */
function attempt<T>(call: () => T): T | string {
  try {
    return call()
  } catch (error) {
    if (error instanceof Refusal) return error.code
    throw error
  }
}

/** Largest difference between two poses: angles in rad, places in m. */
function difference(a: Pose, b: Pose): number {
  const pairs: [number, number][] = [
    [a.camber, b.camber],
    [a.toe, b.toe],
    [a.caster ?? 0, b.caster ?? 0],
    [a.sai ?? 0, b.sai ?? 0],
    ...a.wheelCentre.map((x, i): [number, number] => [x, b.wheelCentre[i]!]),
    ...a.contact.map((x, i): [number, number] => [x, b.contact[i]!]),
  ]
  return Math.max(...pairs.map(([x, y]) => Math.abs(x - y)))
}

law('LI1 links keep their lengths and the wheel its height', cornerAndDrive, ({ corner, drive }) => {
  const pose = attempt(() => poseAt(mechanism(corner), drive))
  if (typeof pose === 'string') return pose === 'unreachable'
  near(pose.residual, 0, { abs: 1e-14 })
  near(pose.wheelCentre[2], corner.wheelCentre[2] + drive.travel, { abs: 1e-15 })
  if (corner.layout === 'five-link')
    corner.links.forEach(({ inner, outer, rack }, i) => {
      const now: Point = [inner[0], inner[1] + (rack ? drive.rack : 0), inner[2]]
      near(apart(pose.points[`outer${i}`]!, now), apart(outer, inner), { abs: 1e-13 })
    })
  else {
    const tie: Point = [corner.tieInner[0], corner.tieInner[1] + drive.rack, corner.tieInner[2]]
    near(apart(pose.points['tieOuter']!, tie), apart(corner.tieOuter, corner.tieInner), { abs: 1e-13 })
  }
  return true
})

law('LI2 the design pose gives back camber and toe exactly', anyCorner(), (corner) => {
  const pose = poseAt(mechanism(corner), zero)
  near(pose.camber, corner.camber, { abs: 1e-16 })
  near(pose.toe, corner.toe, { abs: 1e-16 })
  expect(pose.wheelCentre).toEqual(corner.wheelCentre)
  return pose.armLower === null || Math.abs(pose.armLower) === 0
})

/** Follows in fine steps by Newton from pose to pose, rack first or travel first. */
function bySteps(corner: CornerPoints, drive: Drive, first: 'rack' | 'travel'): Pose {
  const m = mechanism(corner)
  let pose = poseAt(m, zero)
  const go = (travel: (share: number) => number, rack: (share: number) => number): void => {
    for (let i = 1; i <= 20; i++)
      pose = newtonPose(m, { travel: metre(travel(i / 20)), rack: metre(rack(i / 20)) }, pose)
  }
  if (first === 'rack') {
    go(
      () => 0,
      (s) => s * drive.rack,
    )
    go(
      (s) => s * drive.travel,
      () => drive.rack,
    )
  } else {
    go(
      (s) => s * drive.travel,
      () => 0,
    )
    go(
      () => drive.travel,
      (s) => s * drive.rack,
    )
  }
  return pose
}

law(
  'LI2 the way does not matter: straight, rack first, travel first',
  cornerAndDrive,
  ({ corner, drive }) => {
    const straight = attempt(() => poseAt(mechanism(corner), drive))
    const ways = (['rack', 'travel'] as const).map((first) => attempt(() => bySteps(corner, drive, first)))
    if (typeof straight === 'string') return true
    for (const way of ways) if (typeof way !== 'string') near(difference(straight, way), 0, { abs: 1e-12 })
    return ways.some((way) => typeof way !== 'string')
  },
  { runs: soak(30) },
)

law('LI5 closed form, Newton and following agree', cornerAndDrive, ({ corner, drive }) => {
  const m = mechanism(corner)
  const followed = attempt(() => poseAt(m, drive))
  const closed = attempt(() => closedPose(m, drive))
  if (typeof followed === 'string') return closed === followed
  near(difference(followed, closed as Pose), 0, { abs: 1e-12 })
  near(difference(followed, newtonPose(m, drive, poseAt(m, zero))), 0, { abs: 1e-12 })
  return true
})

law(
  'LI5 closed form and following agree up to 0.1 mm before the end of the travel',
  anyCorner(['double wishbone', 'strut']),
  (corner) => {
    const m = mechanism(corner)
    const { up, down } = travelRange(m, { rack: metre(0) })
    for (const share of [0.5, 0.8, 0.95, 0.99])
      for (const end of [up, down]) {
        const drive = { travel: metre(share * end), rack: metre(0) }
        const [a, b] = [attempt(() => poseAt(m, drive)), attempt(() => closedPose(m, drive))]
        if (typeof a === 'string') expect(b).toBe(a)
        else near(difference(a, b as Pose), 0, { abs: 1e-11 })
      }
    return true
  },
  { runs: soak(30) },
)

law(
  'LI4 a hair before the end is answered, a hair past it refused',
  anyCorner(),
  (corner) => {
    const m = mechanism(corner)
    const { up, down } = travelRange(m, { rack: metre(0) })
    expect(up).toBeGreaterThan(0)
    expect(down).toBeLessThan(0)
    for (const [end, sign] of [
      [up, 1],
      [down, -1],
    ] as const) {
      const inside = attempt(() => poseAt(m, { travel: metre(end - sign * 1e-6), rack: metre(0) }))
      // near the end some wheels lie flat on their way, which is a refusal of its own
      expect(inside === 'degenerate' || typeof inside === 'object').toBe(true)
      expect(attempt(() => poseAt(m, { travel: metre(end + sign * 1e-6), rack: metre(0) }))).toBe(
        'unreachable',
      )
    }
    return true
  },
  { runs: soak(30) },
)

law(
  'LI4 the rack has its ends too',
  anyCorner(['double wishbone', 'strut']),
  (corner) => {
    const m = mechanism(corner)
    const { left, right } = rackRange(m, { travel: metre(0.01) })
    for (const [end, sign] of [
      [left, 1],
      [right, -1],
    ] as const) {
      const inside = attempt(() => poseAt(m, { travel: metre(0.01), rack: metre(end - sign * 1e-6) }))
      expect(inside === 'degenerate' || typeof inside === 'object').toBe(true)
    }
    return left > 0 && right < 0
  },
  { runs: soak(30) },
)

law('LI6 a displacement of nothing changes nothing', cornerAndDrive, ({ corner, drive }) => {
  const plain = attempt(() => poseAt(mechanism(corner), drive))
  const name = corner.layout === 'five-link' ? 'inner0' : 'tieInner'
  const same = attempt(() =>
    poseAt(mechanism(corner, { body: { [name]: [0, 0, 0] }, spin: [0, 0, 0], length: {} }), drive),
  )
  if (typeof plain === 'string') return same === plain
  return near(difference(plain, same as Pose), 0, { abs: 0 + 1e-300 })
})

law(
  'LI6 a longer tie rod is the rack pushed: both move the same joint',
  anyCorner(['double wishbone', 'strut']),
  (corner) => {
    if (corner.layout === 'five-link') return false
    // moving the inner point along the rod towards the outer one, or lengthening the rod by as much at design
    const rod = corner.tieOuter.map((x, i) => x - corner.tieInner[i]!) as unknown as Point
    const size = Math.hypot(...rod)
    const by = 0.002
    const shift = rod.map((x) => (x / size) * by) as unknown as Point
    const moved = poseAt(mechanism(corner, { body: { tieInner: shift } }), zero)
    const longer = poseAt(mechanism(corner, { length: { tie: by } }), zero)
    return near(moved.toe, longer.toe, { abs: 1e-4 })
  },
)

test('LI6 shifts of the same point add', () => {
  expect(
    sumOfDisplacements([
      { body: { tieInner: [0.001, 0, 0] }, length: { tie: 0.001 }, spin: [0.1, 0, 0] },
      { body: { tieInner: [0, 0.002, 0] }, length: { tie: 0.002 }, spin: [0, 0.1, 0] },
      { knuckle: { tieOuter: [0, 0, 0.003] } },
    ]),
  ).toEqual({
    body: { tieInner: [0.001, 0.002, 0] },
    knuckle: { tieOuter: [0, 0, 0.003] },
    length: { tie: 0.003 },
    spin: [0.1, 0.1, 0],
  })
  expect(sumOfDisplacements([])).toEqual({})
})

law(
  'LI13 the right corner is the mirror image: same angles, rack turned round',
  cornerAndDrive,
  ({ corner, drive }) => {
    if (corner.layout === 'five-link') return true
    // the vehicle's rack stands `rack` to the left; the right corner is computed as a left one
    const pose = attempt(() =>
      poseAt(mechanism(corner), { ...drive, rack: rackForSide({ side: 'right', rack: drive.rack }) }),
    )
    if (typeof pose === 'string') return true
    // in vehicle axes: mirrored points, the inner tie-rod point moved to the left by the rack
    const [x, y, z] = mirrorPoint(corner.tieInner)
    const inner: Point = [x, y + drive.rack, z]
    near(apart(mirrorPoint(pose.points['tieOuter']!), inner), apart(corner.tieOuter, corner.tieInner), {
      abs: 1e-13,
    })
    return rackForSide({ side: 'left', rack: drive.rack }) === drive.rack
  },
)

law('LI14 bush twist is the arm angle, and adds up', cornerAndDrive, ({ corner, drive }) => {
  const m = mechanism(corner)
  const to = attempt(() => poseAt(m, drive))
  if (typeof to === 'string') return true
  const from = poseAt(m, zero)
  const middle = poseAt(m, { travel: metre(drive.travel / 2), rack: metre(0) })
  const [whole, first, second] = [
    bushTwist(m, { from, to }),
    bushTwist(m, { from, to: middle }),
    bushTwist(m, { from: middle, to }),
  ]
  if (corner.layout === 'five-link') return Object.keys(whole).length === 5
  near(whole['lowerFrontInner']!, to.armLower!, { abs: 1e-13 })
  near(first['lowerFrontInner']! + second['lowerFrontInner']!, whole['lowerFrontInner']!, { abs: 1e-13 })
  if (drive.travel > 0.005) expect(whole['lowerRearInner']).toBeGreaterThan(0)
  return whole['lowerFrontInner'] === whole['lowerRearInner']
})

test('LI1 curves are poses in a row', () => {
  const m = mechanism(wishbone)
  const lengths = [-0.02, 0, 0.02].map(metre)
  expect(motionCurve(m, { travels: lengths, rack: metre(0) })).toEqual(
    lengths.map((travel) => poseAt(m, { travel, rack: metre(0) })),
  )
  expect(steerCurve(m, { racks: lengths, travel: metre(0.01) })).toEqual(
    lengths.map((rack) => poseAt(m, { travel: metre(0.01), rack })),
  )
})

test('LI1 the wheel shift is measured from the design pose', () => {
  for (const corner of [wishbone, strut, fiveLink]) {
    const m = mechanism(corner)
    expect(wheelShift(m, poseAt(m, zero))).toEqual({
      halfTrack: 0,
      wheelbase: 0,
      halfTrackAtCentre: 0,
      wheelbaseAtCentre: 0,
    })
    const up = poseAt(m, { travel: metre(0.05), rack: metre(0) })
    near(wheelShift(m, up).halfTrackAtCentre, up.wheelCentre[1] - corner.wheelCentre[1], { abs: 1e-16 })
  }
})
