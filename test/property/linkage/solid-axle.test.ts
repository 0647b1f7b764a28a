import fc from 'fast-check'
import { expect, test } from 'vitest'
import {
  type AxleDirection,
  type AxleDrive,
  type AxlePose,
  type AxleSettings,
  axlePoseAt,
  axleRange,
  axleRates,
  type Point,
  type SolidAxlePoints,
  sleeveTilt,
  solidAxle,
} from '../../../src/linkage/index.ts'
import { deg, metre, Refusal, rad } from '../../../src/quantity/index.ts'
import { law, near, refuses } from '../../support/law.ts'
import { axlePoints, straight } from '../../support/linkage-examples.ts'
import { anyAxle, anyAxleDrive, fourLinkAxle, mirrored, trackBarAxle } from './any-axle.ts'

const sides = ['left', 'right'] as const
const angles = ['camber', 'toe', 'caster', 'sai'] as const
const axleAndDrive = fc.record({ points: anyAxle, drive: anyAxleDrive })
/** The answer, or the refusal. */
function attempt<T>(call: () => T): T | Refusal {
  try {
    return call()
  } catch (error) {
    if (error instanceof Refusal) return error
    throw error
  }
}

law('LI17 an axle at its design pose gives back camber and toe', anyAxle, (points) => {
  const pose = axlePoseAt(solidAxle(points), straight)
  for (const side of sides) {
    near(pose[side].camber, points[side].camber, { abs: 1e-14 })
    near(pose[side].toe, points[side].toe, { abs: 1e-13 })
    near(pose[side].steer, 0, { abs: 1e-13 })
    for (let i = 0; i < 3; i++) near(pose[side].wheelCentre[i]!, points[side].wheelCentre[i]!, { abs: 1e-14 })
  }
  return near(pose.residual, 0, { abs: 1e-14 })
})

law(
  'LI17 rods keep their lengths, the middle its height, the line of the hubs its tilt',
  axleAndDrive,
  (c) => {
    const pose = attempt(() => axlePoseAt(solidAxle(c.points), c.drive))
    if (pose instanceof Refusal) return pose.code === 'unreachable'
    near(pose.residual, 0, { abs: 1e-13 })
    if (c.points.steering) return true
    // hubs of an axle that is not steered are points of it
    const [l, r] = [pose.left.wheelCentre, pose.right.wheelCentre]
    const [dl, dr] = [c.points.left.wheelCentre, c.points.right.wheelCentre]
    near((l[2] + r[2]) / 2 - (dl[2] + dr[2]) / 2, c.drive.heave, { abs: 1e-14 })
    const width = Math.hypot(dl[0] - dr[0], dl[1] - dr[1], dl[2] - dr[2])
    near(Math.asin((l[2] - r[2]) / width) - Math.asin((dl[2] - dr[2]) / width), c.drive.roll, { abs: 1e-13 })
    return near(Math.hypot(l[0] - r[0], l[1] - r[1], l[2] - r[2]), width, { abs: 1e-14 })
  },
)

law(
  'LI13 an axle in a mirror: sides change places, roll and drop arm their sense',
  axleAndDrive,
  ({ points, drive }) => {
    const here = attempt(() => axlePoseAt(solidAxle(points), drive))
    const there = attempt(() =>
      axlePoseAt(solidAxle(mirrored(points)), {
        heave: drive.heave,
        roll: rad(-drive.roll),
        drop: rad(-drive.drop),
      }),
    )
    if (here instanceof Refusal) return there instanceof Refusal && there.code === here.code
    for (const [a, b] of [
      ['left', 'right'],
      ['right', 'left'],
    ] as const) {
      const other = (there as AxlePose)[b]
      for (const name of [...angles, 'scrub', 'trail', 'scrubWheel', 'trailWheel'] as const)
        near(here[a][name] ?? 0, other[name] ?? 0, { abs: 1e-11 })
      near(here[a].steer, -other.steer, { abs: 1e-11 })
      near(here[a].wheelCentre[1], -other.wheelCentre[1], { abs: 1e-12 })
    }
    return true
  },
)

const anyDirection: fc.Arbitrary<AxleDirection> = fc.constantFrom<AxleDirection>(
  { heave: 1 },
  { roll: 1 },
  { drop: 1 },
  { tieRod: 1 },
  { dragLink: 1 },
  { links: [1, 0, -1, 0.5] },
  { tilt: { left: { camber: 1, caster: -0.4 } } },
  { tilt: { right: { camber: 0.2, caster: 1 } } },
  { shim: { left: { camber: 1, toe: 0.3 }, right: { camber: -0.2, toe: 1 } } },
)
const some: AxleSettings = {
  tilt: { left: { camber: deg(0.5), caster: deg(-0.3) }, right: { camber: deg(-0.2), caster: deg(0.6) } },
  shim: { right: { camber: deg(0.3), toe: deg(-0.2) } },
  tieRod: metre(0.001),
  dragLink: metre(-0.002),
  links: [metre(0.001), metre(0), metre(-0.001), metre(0.002)],
}
const angle = (base: number | undefined, rate: number | undefined, by: number) =>
  rad((base ?? 0) + by * (rate ?? 0))
/** The settings and drive, moved along a direction. */
function along(d: AxleDirection, by: number, drive: AxleDrive): { settings: AxleSettings; drive: AxleDrive } {
  const tilt = (side: 'left' | 'right') => ({
    camber: angle(some.tilt?.[side]?.camber, d.tilt?.[side]?.camber, by),
    caster: angle(some.tilt?.[side]?.caster, d.tilt?.[side]?.caster, by),
  })
  const shim = (side: 'left' | 'right') => ({
    camber: angle(some.shim?.[side]?.camber, d.shim?.[side]?.camber, by),
    toe: angle(some.shim?.[side]?.toe, d.shim?.[side]?.toe, by),
  })
  return {
    settings: {
      tilt: { left: tilt('left'), right: tilt('right') },
      shim: { left: shim('left'), right: shim('right') },
      tieRod: metre(some.tieRod! + by * (d.tieRod ?? 0)),
      dragLink: metre(some.dragLink! + by * (d.dragLink ?? 0)),
      links: some.links!.map((x, i) => x + by * (d.links?.[i] ?? 0)) as unknown as NonNullable<
        AxleSettings['links']
      >,
    },
    drive: {
      heave: metre(drive.heave + by * (d.heave ?? 0)),
      roll: rad(drive.roll + by * (d.roll ?? 0)),
      drop: rad(drive.drop + by * (d.drop ?? 0)),
    },
  }
}

law(
  'LI7 rates of an axle equal fourth-order central differences',
  fc.record({ points: anyAxle, drive: anyAxleDrive, direction: anyDirection }),
  ({ points, drive, direction }) => {
    const h = 1e-4
    const at = (by: number): AxlePose => {
      const there = along(direction, by, drive)
      return axlePoseAt(solidAxle(points, there.settings), there.drive)
    }
    const poses = attempt(() => [2, 1, -1, -2].map((k) => at(k * h)))
    if (poses instanceof Refusal) return poses.code === 'unreachable'
    const rates = axleRates(solidAxle(points, some), drive)(direction)
    for (const side of sides)
      for (const name of angles) {
        const got = rates[side][name]
        const [f2, f1, b1, b2] = poses.map((p) => p[side][name] ?? 0) as [number, number, number, number]
        if (got === null) expect(points.steering).toBeNull()
        else near(got, (8 * (f1 - b1) - (f2 - b2)) / (12 * h), { abs: 2e-7, rel: 1e-6 })
      }
    return true
  },
  { runs: 150 },
)

law(
  'LI17 offset sleeves turn the kingpin: SAI falls by r·cos, caster grows by r·sin, the included angle stays',
  fc.record({
    offset: fc.double({ min: 0, max: 1.5, noNaN: true }),
    turn: fc.double({ min: -180, max: 180, noNaN: true }),
  }),
  ({ offset, turn }) => {
    const tilt = sleeveTilt([{ offset: deg(offset), angle: deg(turn) }])
    const before = axlePoseAt(solidAxle(axlePoints), straight)
    for (const side of sides) {
      const after = axlePoseAt(solidAxle(axlePoints, { tilt: { [side]: tilt } }), straight)
      const r = deg(offset)
      near(after[side].sai! - before[side].sai!, -r * Math.cos(deg(turn)), { abs: 1e-15 })
      near(after[side].caster! - before[side].caster!, r * Math.sin(deg(turn)), { abs: 1e-15 })
      // SAI + camber: to what the small steer that follows does
      near(after[side].camber - before[side].camber, r * Math.cos(deg(turn)), { abs: 0.08 * r + 1e-15 })
      const other = side === 'left' ? 'right' : 'left'
      near(after[other].sai!, before[other].sai!, { abs: 1e-15 })
    }
    return true
  },
)

law(
  'LI17 two sleeves, one in the other, add as vectors',
  fc.tuple(fc.double({ min: -4, max: 4, noNaN: true }), fc.double({ min: -4, max: 4, noNaN: true })),
  ([a, b]) => {
    const offset = deg(0.75)
    const both = sleeveTilt([
      { offset, angle: rad(a) },
      { offset, angle: rad(b) },
    ])
    near(Math.hypot(both.camber, both.caster), Math.abs(2 * offset * Math.cos((a - b) / 2)), { abs: 1e-15 })
    return true
  },
)

law(
  'LI4 a hair before an axle’s end is answered, a hair past it refused, with the rod and the end named',
  fc.record({ points: anyAxle, along: fc.constantFrom('heave' as const, 'roll' as const, 'drop' as const) }),
  ({ points, along: name }) => {
    const a = solidAxle(points)
    const { most, least } = axleRange(a, straight, name)
    for (const end of [most, least]) {
      if (end === null) continue
      const hair = Math.sign(end) * 1e-7
      expect(Math.abs(end)).toBeGreaterThan(0.05)
      expect(attempt(() => axlePoseAt(a, { ...straight, [name]: end - hair }))).not.toBeInstanceOf(Refusal)
      const said = attempt(() =>
        axlePoseAt(a, { ...straight, [name]: end + 1e-3 * Math.sign(end) }),
      ) as Refusal
      expect(said).toBeInstanceOf(Refusal)
      expect(said.code).toBe('unreachable')
      expect(said.at).toMatch(/^(links\.[0-3]|dragLink|tieRod|location)$/)
      expect(said.sentence).toContain('The way ends at')
    }
    return most === null || most > 0
  },
  { runs: 30 },
)

law(
  'LI4 the rod that is named, made longer by a little more than it lacks, lets the axle further',
  anyAxle,
  (points) => {
    const a = solidAxle(points)
    const { most } = axleRange(a, straight, 'heave')
    if (most === null) return true
    const past = { ...straight, heave: metre(most + 0.001) }
    const said = attempt(() => axlePoseAt(a, past)) as Refusal
    const by = / too (short|long) by about ([\d.]+) mm/.exec(said.sentence)
    expect(by).not.toBeNull()
    const missing = ((by![1] === 'short' ? 1 : -1) * (Number(by![2]) + 0.05)) / 1000
    const link = /^links\.(\d)$/.exec(said.at)
    const longer: AxleSettings = link
      ? {
          links: [0, 1, 2, 3].map((i) =>
            metre(i === Number(link[1]) ? 1.2 * missing : 0),
          ) as unknown as NonNullable<AxleSettings['links']>,
        }
      : { [said.at]: metre(1.2 * missing) }
    expect(axleRange(solidAxle(points, longer), straight, 'heave').most ?? 9).toBeGreaterThan(past.heave)
    return true
  },
  { runs: 30 },
)

law(
  'LI17 on leaf springs an axle that is not steered heaves without an end',
  fc.constant(0),
  () => {
    const bare = { ...fourLinkAxle, location: axlePoints.location }
    return axleRange(solidAxle(bare), straight, 'heave').most === null
  },
  { runs: 1 },
)

// Found by a search: here Newton, let loose from one step to the next, lands in the other assembly of the same links,
// 66 mm away; only the sign of the determinant tells.
test('LI17 an axle that passes close by another assembly of its links stays in its own', () => {
  const rod = (inner: Point, outer: Point) => ({ inner, outer })
  const a = solidAxle({
    ...fourLinkAxle,
    location: {
      kind: 'links',
      links: [
        rod([0.1349, 0.5997, -0.1337], [0.4938, 0.5198, 0.2991]),
        rod([0.9601, -0.2106, 0.7192], [0.513, -0.9091, 0.6226]),
        rod([0.6251, 0.1258, 0.2197], [-0.5169, -0.036, 0.0701]),
        rod([0.2912, -0.0833, 0.7398], [-0.2755, -0.4751, 0.3285]),
      ],
    },
  })
  const at = (share: number) =>
    axlePoseAt(a, { ...straight, heave: metre(0.14395 * share), roll: rad(-0.7604 * share) }).middle
  let before = at(0)
  for (let i = 1; i <= 400; i++) {
    const now = at(i / 400)
    // its fastest place moves 6.2 mm in such a step
    expect(Math.hypot(...now.map((x, j) => x - before[j]!)), `share ${i / 400}`).toBeLessThan(0.008)
    before = now
  }
})

const wrong = (change: object, base: SolidAxlePoints = axlePoints, by: AxleSettings = {}) =>
  solidAxle({ ...base, ...change } as SolidAxlePoints, by)
const steering = axlePoints.steering!
const left = axlePoints.left
const links = trackBarAxle.location.kind === 'links' ? trackBarAxle.location.links : []
refuses('not-finite', () => wrong({ left: { ...left, camber: Number.NaN } }), 'left.camber')
refuses('not-finite', () => axlePoseAt(solidAxle(axlePoints), { ...straight, roll: rad(Number.NaN) }), 'roll')
refuses('not-finite', () => axleRange(solidAxle(axlePoints), { ...straight, drop: rad(Number.NaN) }, 'drop'))
refuses('not-finite', () => sleeveTilt([{ offset: rad(0.01), angle: rad(Number.NaN) }]), 'sleeves.0')
refuses('bad-input', () => sleeveTilt([{ offset: rad(-0.01), angle: rad(0) }]), 'sleeves.0')
refuses('bad-input', () => wrong({ left: { ...left, wheelCentre: [0, 1] } }), 'left.wheelCentre')
refuses('bad-input', () => wrong({ left: { ...left, tyreRadius: 0 } }), 'left.tyreRadius')
refuses('bad-input', () => wrong({ left: { ...left, toe: 2 } }), 'left.toe')
refuses('bad-input', () => wrong({ left: { ...left, kingpin: null } }), 'left.kingpin')
refuses('bad-input', () => wrong({ steering: null }), 'left.kingpin')
refuses('bad-input', () => wrong({ left: axlePoints.right, right: left }), 'right.wheelCentre')
refuses('bad-input', () => wrong({ location: { kind: 'links', links: links.slice(1) } }), 'location.links')
refuses('bad-input', () => wrong({ steering: { ...steering, drags: 'both' } }), 'steering.drags')
refuses(
  'bad-input',
  () => wrong({ left: { ...left, kingpin: { lower: left.kingpin!.upper, upper: left.kingpin!.lower } } }),
  'left.kingpin',
)
refuses(
  'zero-length-link',
  () => wrong({ steering: { ...steering, dragInner: steering.dragOuter } }),
  'dragLink',
)
refuses('zero-length-link', () => wrong({}, axlePoints, { tieRod: metre(-2) }), 'tieRod')
refuses(
  'coincident-pivots',
  () => wrong({ left: { ...left, kingpin: { lower: [0, 0.7, 0.3], upper: [0, 0.7, 0.3] } } }),
  'left.kingpin',
)
refuses('coincident-pivots', () =>
  wrong({
    location: {
      kind: 'leaf',
      rollAxis: [
        [0, 0, 0.4],
        [0, 0, 0.4],
      ],
    },
  }),
)
refuses(
  'singular',
  () =>
    wrong({
      location: {
        kind: 'leaf',
        rollAxis: [
          [0, -1, 0.4],
          [0, 1, 0.4],
        ],
      },
    }),
  'location.rollAxis',
)
refuses(
  'singular',
  () => wrong({ location: { kind: 'links', links: [links[0], links[0], links[2], links[3]] } }),
  'location.links',
)
refuses('singular', () => wrong({ steering: { ...steering, dragOuter: left.kingpin!.lower } }), 'dragLink')
refuses(
  'singular',
  () => wrong({ steering: { ...steering, tieRight: axlePoints.right.kingpin!.upper } }),
  'tieRod',
)
refuses('unreachable', () => axlePoseAt(solidAxle(axlePoints), { ...straight, drop: deg(80) }))
refuses(
  'unreachable',
  () => axlePoseAt(solidAxle(axlePoints), { ...straight, heave: metre(0.5) }),
  'dragLink',
)
refuses('unreachable', () => axlePoseAt(solidAxle(trackBarAxle), { ...straight, heave: metre(2) }))
refuses('unreachable', () => axleRange(solidAxle(axlePoints), { ...straight, heave: metre(0.5) }, 'roll'))
refuses('unreachable', () => axleRates(solidAxle(axlePoints), { ...straight, heave: metre(0.5) }))
refuses(
  'unreachable',
  () =>
    axlePoseAt(solidAxle({ ...fourLinkAxle, location: axlePoints.location }), { ...straight, roll: deg(95) }),
  'location',
)
