import fc from 'fast-check'
import { expect } from 'vitest'
import {
  type Displacement,
  type Drive,
  instantCentre,
  mechanism,
  newtonPose,
  type Pose,
  parameters,
  poseAt,
  rateOf,
  rollCentre,
  sensitivities,
  settingsFor,
  steeringScrew,
  sumOfDisplacements,
} from '../../../src/linkage/index.ts'
import { metre, Refusal } from '../../../src/quantity/index.ts'
import { law, near } from '../../support/law.ts'
import { anyCorner, anyDrive } from './any-corner.ts'

const zero: Drive = { travel: metre(0), rack: metre(0) }
const answers = (call: () => unknown): boolean => {
  try {
    call()
    return true
  } catch (error) {
    if (error instanceof Refusal && error.code === 'unreachable') return false
    throw error
  }
}

/** Fourth-order central difference. */
const slope = (f: (x: number) => number, h: number): number =>
  (8 * (f(h) - f(-h)) - (f(2 * h) - f(-2 * h))) / (12 * h)
const scaled = (d: Displacement, by: number): Displacement => {
  const each = (g: Displacement['body'] = {}) =>
    Object.fromEntries(Object.entries(g).map(([k, v]) => [k, v.map((x) => x * by) as unknown as typeof v]))
  return {
    body: each(d.body),
    knuckle: each(d.knuckle),
    length: Object.fromEntries(Object.entries(d.length ?? {}).map(([k, x]) => [k, x * by])),
    ...(d.spin && { spin: d.spin.map((x) => x * by) as unknown as typeof d.spin }),
  }
}

/** A longer run on request. */
const soak = (runs: number): number => (process.env['AXLEWRIGHT_SOAK'] ? 20 * runs : runs)

law(
  'LI7 rates equal central differences, for every number of a corner',
  fc.record({ corner: anyCorner(), drive: anyDrive, place: fc.nat() }),
  ({ corner, drive, place }) => {
    const some: Displacement = { spin: [0.01, -0.02, 0.015] }
    const m = mechanism(corner, some)
    if (!answers(() => poseAt(m, drive))) return true
    const rates = sensitivities(m, drive)
    const directions = Object.entries(parameters(m))
    const [name, direction] = directions[place % directions.length]!
    const base = poseAt(m, drive)
    const pose = (x: number): Pose =>
      newtonPose(
        mechanism(corner, sumOfDisplacements([some, scaled(direction, x)])),
        {
          travel: metre(drive.travel + x * (direction.travel ?? 0)),
          rack: metre(drive.rack + x * (direction.rack ?? 0)),
        },
        base,
      )
    const h = 1e-4
    for (const angle of ['camber', 'toe', 'caster', 'sai'] as const) {
      const got = rates[name]![angle]
      if (got === null) continue
      near(
        got,
        slope((x) => pose(x)[angle]!, h),
        { abs: 1e-8, rel: 1e-7 },
      )
    }
    for (let i = 0; i < 3; i++)
      near(
        rates[name]!.wheelCentre[i]!,
        slope((x) => pose(x).wheelCentre[i]!, h),
        { abs: 1e-8, rel: 1e-7 },
      )
    expect(rateOf(m, drive, direction)).toEqual(rates[name])
    return true
  },
  { runs: soak(60) },
)

law(
  'LI8 settings found bring the changes that were wanted',
  fc.record({
    corner: anyCorner(['double wishbone']),
    camber: fc.double({ min: -0.006, max: 0.006, noNaN: true }),
    caster: fc.double({ min: -0.006, max: 0.006, noNaN: true }),
    toe: fc.double({ min: -0.006, max: 0.006, noNaN: true }),
  }),
  ({ corner, ...changes }) => {
    const m = mechanism(corner)
    const before = poseAt(m, zero)
    const limit: readonly [number, number] = [-0.03, 0.03]
    const { settings, pose } = settingsFor(m, zero, {
      settings: [
        { name: 'front', range: limit, displacement: (s) => ({ body: { upperFrontInner: [0, s, 0] } }) },
        { name: 'rear', range: limit, displacement: (s) => ({ body: { upperRearInner: [0, s, 0] } }) },
        { name: 'tie', range: limit, displacement: (s) => ({ length: { tie: s } }) },
      ],
      changes,
    })
    near(pose.camber - before.camber, changes.camber, { abs: 1e-13 })
    near(pose.caster! - before.caster!, changes.caster, { abs: 1e-13 })
    near(pose.toe - before.toe, changes.toe, { abs: 1e-13 })
    return settings.every((s) => Math.abs(s) < 0.03)
  },
  { runs: soak(40) },
)

law(
  'LI9 points of the steering screw move along it, and nothing else steers a five-link',
  fc.record({ corner: anyCorner(), drive: anyDrive }),
  ({ corner, drive }) => {
    const m = mechanism(corner)
    if (!answers(() => poseAt(m, drive))) return true
    const screw = steeringScrew(m, drive)
    const base = poseAt(m, drive)
    // a finite steer to both sides: the chord of the axis point is along the axis
    const h = 1e-4
    const at = (x: number): readonly number[] => {
      const pose = newtonPose(m, { travel: drive.travel, rack: metre(drive.rack + x) }, base)
      const [w, a, b, c] = pose.turn!
      const [w0, a0, b0, c0] = base.turn!
      // where the knuckle carries the point: R R0ᵀ (point − W0) + W
      const back = rotate([w0, -a0, -b0, -c0], minus(screw.point, base.wheelCentre))
      return plus(rotate([w, a, b, c], back), pose.wheelCentre)
    }
    const chord = minus(at(h) as never, at(-h) as never).map((x) => x / (2 * h))
    const along =
      chord[0]! * screw.direction[0] + chord[1]! * screw.direction[1] + chord[2]! * screw.direction[2]
    for (let i = 0; i < 3; i++) near(chord[i]!, along * screw.direction[i]!, { abs: 1e-5 })
    expect(screw.jointCaster === null).toBe(corner.layout === 'five-link')
    return screw.direction[2] >= 0
  },
  { runs: soak(40) },
)

type Three = readonly [number, number, number]
const minus = (a: Three, b: Three): Three => [a[0] - b[0], a[1] - b[1], a[2] - b[2]]
const plus = (a: Three, b: Three): Three => [a[0] + b[0], a[1] + b[1], a[2] + b[2]]
function rotate([w, x, y, z]: readonly [number, number, number, number], v: Three): Three {
  const t: Three = [2 * (y * v[2] - z * v[1]), 2 * (z * v[0] - x * v[2]), 2 * (x * v[1] - y * v[0])]
  return [
    v[0] + w * t[0] + y * t[2] - z * t[1],
    v[1] + w * t[1] + z * t[0] - x * t[2],
    v[2] + w * t[2] + x * t[1] - y * t[0],
  ]
}

law(
  'LI10 the roll centre lies on the line from contact to instant centre, whichever way it is found',
  fc.record({ corner: anyCorner(['double wishbone', 'strut']), drive: anyDrive }),
  ({ corner, drive }) => {
    const m = mechanism(corner)
    if (!answers(() => poseAt(m, drive))) return true
    for (const how of ['drawing board', 'instantaneous'] as const) {
      const { height, instantCentre: ic } = rollCentre(m, drive, how)
      if (!ic.centre) continue
      const { contact } = ic.pose
      const slope = (ic.centre.z - contact[2]) / (ic.centre.y - contact[1])
      near(height, -contact[1] * slope, { abs: 1e-12, rel: 1e-9 })
      near(contact[1] - ic.centre.y, ic.swingArm!, { abs: 1e-12, rel: 1e-12 })
    }
    return true
  },
)

law(
  'LI10 the instantaneous centre is the point of the front view that a small bump does not move',
  anyCorner(),
  (corner) => {
    const m = mechanism(corner)
    const { centre, pose } = instantCentre(m, zero, 'instantaneous')
    if (!centre) return true
    const point: Three = [pose.contact[0], centre.y, centre.z]
    const h = 1e-5
    const at = (x: number): Three => {
      const { turn, wheelCentre } = newtonPose(m, { travel: metre(x), rack: metre(0) }, pose)
      return plus(rotate(turn!, minus(point, pose.wheelCentre)), wheelCentre)
    }
    const [up, down] = [at(h), at(-h)]
    const size = Math.hypot(...minus(point, pose.wheelCentre))
    near((up[1] - down[1]) / (2 * h), 0, { abs: 1e-6 * (1 + size) })
    return near((up[2] - down[2]) / (2 * h), 0, { abs: 1e-6 * (1 + size) })
  },
  { runs: soak(40) },
)
