import fc from 'fast-check'
import { expect, test } from 'vitest'
import {
  mechanism,
  mirrorPoint,
  type Point,
  poseAt,
  rateOf,
  type TwistBeam,
  type TwistBeamSide,
  travelRange,
  twistBeamArm,
  twistBeamReadings,
} from '../../../src/linkage/index.ts'
import { deg, metre, type Refusal, rad } from '../../../src/quantity/index.ts'
import { law, near, refuses } from '../../support/law.ts'
import { beam, ride } from '../../support/linkage-examples.ts'

const some = (most: number): fc.Arbitrary<number> => fc.double({ min: -most, max: most, noNaN: true })
const shift = fc.tuple(some(0.02), some(0.02), some(0.02))
const moved = (p: Point, [x, y, z]: readonly number[]): Point => [p[0] + x!, p[1] + y!, p[2] + z!]
const sides = ['left', 'right'] as const

/** Both sides drawn apart: not alike. */
const anyBeam: fc.Arbitrary<TwistBeam> = fc
  .record({
    a: shift,
    b: shift,
    c: shift,
    d: shift,
    e: shift,
    shape: fc.double({ min: 0, max: 1.2, noNaN: true }),
    camber: some(2),
    toe: some(0.5),
  })
  .map(({ a, b, c, d, e, shape, camber, toe }) => ({
    left: {
      ...beam.left,
      pivot: moved(beam.left.pivot, a),
      wheelCentre: moved(beam.left.wheelCentre, b),
      camber: deg(camber),
    },
    right: {
      ...beam.right,
      pivot: moved(beam.right.pivot, c),
      wheelCentre: moved(beam.right.wheelCentre, d),
      toe: deg(toe),
    },
    shearCentre: moved(beam.shearCentre, e),
    shape,
  }))
/** Both sides alike. */
const evenBeam: fc.Arbitrary<TwistBeam> = anyBeam.map((b) => {
  const flip = (s: TwistBeamSide): TwistBeamSide => ({
    ...s,
    pivot: mirrorPoint(s.pivot),
    wheelCentre: mirrorPoint(s.wheelCentre),
  })
  return { ...b, right: flip(b.left), shearCentre: [b.shearCentre[0], 0, b.shearCentre[2]] }
})
const travels = fc.record({ left: some(0.08).map(metre), right: some(0.08).map(metre) })
const drive = (travel: number) => ({ travel: metre(travel), rack: metre(0) })

law('LI20 a twist beam at its design pose gives back camber and toe', anyBeam, (b) => {
  const at = twistBeamReadings(b, { left: metre(0), right: metre(0) })
  for (const side of sides) {
    near(at[side].camber, b[side].camber, { abs: 1e-14 })
    near(at[side].toe, b[side].toe, { abs: 1e-14 })
    near(at[side].twist, 0, { abs: 1e-14 })
  }
  return true
})

law(
  'LI20 both wheels stand at their travels, at their distances from pivot and beam',
  fc.record({ b: anyBeam, travel: travels }),
  ({ b, travel }) => {
    const at = twistBeamReadings(b, travel)
    for (const side of sides) {
      const { wheelCentre, pivot } = b[side]
      near(at[side].wheelCentre[2] - wheelCentre[2], travel[side], { abs: 1e-14 })
      const apart = (p: Point): number => Math.hypot(p[0] - pivot[0], p[1] - pivot[1], p[2] - pivot[2])
      near(apart(at[side].wheelCentre), apart(wheelCentre), { abs: 1e-14 })
    }
    return true
  },
)

law(
  'LI20 an even beam: together it is one hinge, apart the other, as the doors of a corner say',
  fc.record({ b: evenBeam, travel: some(0.08) }),
  ({ b, travel }) => {
    const [t, against] = [metre(travel), metre(-travel)]
    for (const [how, both] of [
      ['together', { left: t, right: t }],
      ['apart', { left: t, right: against }],
    ] as const) {
      const at = twistBeamReadings(b, both)
      for (const side of sides) {
        const pose = poseAt(mechanism(twistBeamArm(b, side, how)), drive(both[side]))
        near(at[side].camber, pose.camber, { abs: 1e-12 })
        near(at[side].toe, pose.toe, { abs: 1e-12 })
        const hub = side === 'left' ? pose.wheelCentre : mirrorPoint(pose.wheelCentre)
        for (let i = 0; i < 3; i++) near(at[side].wheelCentre[i]!, hub[i]!, { abs: 1e-12 })
      }
    }
    return true
  },
)

law(
  'LI20 at shape 0 each wheel is a trailing arm by itself, whatever the other does',
  fc.record({ b: anyBeam, travel: travels }),
  ({ b, travel }) => {
    const plain = { ...b, shape: 0 }
    const at = twistBeamReadings(plain, travel)
    for (const side of sides) {
      const pose = poseAt(mechanism(twistBeamArm(plain, side, 'together')), drive(travel[side]))
      near(at[side].camber, pose.camber, { abs: 1e-12 })
      near(at[side].toe, pose.toe, { abs: 1e-12 })
    }
    return true
  },
)

law(
  'LI20 the further the beam lies from the pivots the more camber goes with roll',
  fc.constant(0),
  () => {
    const gain = [0, 0.5, 1, 1.5].map(
      (shape) =>
        rateOf(mechanism(twistBeamArm({ ...beam, shape }, 'left', 'apart')), ride, { travel: 1 }).camber,
    )
    near(gain[0]!, 0, { abs: 0.03 }) // nearly nothing about an axis straight across: the little is toe's share
    for (let i = 1; i < gain.length; i++) expect(gain[i]!).toBeLessThan(gain[i - 1]!)
    return true
  },
  { runs: 1 },
)

law(
  'LI13 a twist beam in a mirror: sides change places',
  fc.record({ b: anyBeam, travel: travels }),
  ({ b, travel }) => {
    const flip = (s: TwistBeamSide): TwistBeamSide => ({
      ...s,
      pivot: mirrorPoint(s.pivot),
      wheelCentre: mirrorPoint(s.wheelCentre),
    })
    const here = twistBeamReadings(b, travel)
    const there = twistBeamReadings(
      { ...b, left: flip(b.right), right: flip(b.left), shearCentre: mirrorPoint(b.shearCentre) },
      { left: travel.right, right: travel.left },
    )
    near(here.left.camber, there.right.camber, { abs: 1e-13 })
    near(here.right.toe, there.left.toe, { abs: 1e-13 })
    near(here.left.contact[1], -there.right.contact[1], { abs: 1e-13 })
    return near(here.left.twist, there.right.twist, { abs: 1e-13 })
  },
)

law(
  'LI7 rates of either hinge of an even beam equal the readings’ central differences',
  fc.record({ b: evenBeam, apart: fc.boolean() }),
  ({ b, apart }) => {
    const rates = rateOf(mechanism(twistBeamArm(b, 'left', apart ? 'apart' : 'together')), ride, {
      travel: 1,
    })
    const at = (x: number) => twistBeamReadings(b, { left: metre(x), right: metre(apart ? -x : x) }).left
    const h = 1e-3
    for (const name of ['camber', 'toe'] as const)
      near(
        rates[name],
        (8 * (at(h)[name] - at(-h)[name]) - (at(2 * h)[name] - at(-2 * h)[name])) / (12 * h),
        {
          abs: 1e-8,
          rel: 1e-8,
        },
      )
    return true
  },
)

test('LI20 shims add to the readings at design', () => {
  const shim = { left: { camber: deg(0.5), toe: deg(-0.2) } }
  const at = twistBeamReadings({ ...beam, shim }, { left: metre(0), right: metre(0) })
  near(at.left.camber, beam.left.camber + deg(0.5), { abs: 1e-15 })
  near(at.left.toe, beam.left.toe - deg(0.2), { abs: 1e-15 })
  near(at.right.toe, beam.right.toe, { abs: 1e-15 })
  near(twistBeamArm({ ...beam, shim }, 'left', 'apart').camber, at.left.camber, { abs: 1e-15 })
})

law(
  'LI4 a hair before the end of an even beam’s travel is answered, a hair past it refused',
  fc.record({ b: evenBeam, apart: fc.boolean(), up: fc.boolean() }),
  ({ b, apart, up }) => {
    const both = (t: number) => ({ left: metre(t), right: metre(apart ? -t : t) })
    // apart the first of both wheels to come to its end counts
    const ranges = sides.map((side) =>
      travelRange(mechanism(twistBeamArm(b, side, apart ? 'apart' : 'together')), { rack: metre(0) }),
    )
    const end = apart ? Math.min(ranges[0]!.up, -ranges[1]!.down) : ranges[0]![up ? 'up' : 'down']
    const hair = 1e-9 * Math.sign(end)
    twistBeamReadings(b, both(end - hair))
    let said: Refusal | undefined
    try {
      twistBeamReadings(b, both(end + hair))
    } catch (error) {
      said = error as Refusal
    }
    expect(said?.code).toBe('unreachable')
    expect(said?.sentence).toContain('the way ends at')
    return true
  },
)

const none = { left: metre(0), right: metre(0) }
const wrong = (change: object) => twistBeamReadings({ ...beam, ...change } as TwistBeam, none)
refuses('not-finite', () => wrong({ shape: Number.NaN }), 'shape')
refuses('not-finite', () => twistBeamReadings(beam, { left: metre(Number.NaN), right: metre(0) }))
refuses('bad-input', () => wrong({ shearCentre: [0, 1] }), 'shearCentre')
refuses('bad-input', () => wrong({ shape: undefined }), 'shape')
refuses('bad-input', () => wrong({ left: { ...beam.left, tyreRadius: 0 } }), 'left.tyreRadius')
refuses('bad-input', () => wrong({ left: { ...beam.left, camber: rad(2) } }), 'left.camber')
refuses('bad-input', () => wrong({ left: beam.right, right: beam.left }), 'right.pivot')
refuses('coincident-pivots', () => wrong({ right: { ...beam.right, pivot: beam.left.pivot } }), 'right.pivot')
refuses('coincident-pivots', () => wrong({ shearCentre: beam.left.pivot }), 'left.pivot')
refuses(
  'singular',
  () => wrong({ left: { ...beam.left, wheelCentre: [0.42, 0.74, 0.3] } }),
  'left.wheelCentre',
)
refuses('singular', () =>
  twistBeamArm({ ...beam, left: { ...beam.left, wheelCentre: [0.42, 0.7, 0.6] } }, 'left', 'together'),
)
refuses('unreachable', () => twistBeamReadings(beam, { left: metre(0.6), right: metre(0.6) }), 'beam')
refuses('unreachable', () => twistBeamReadings(beam, { left: metre(0.6), right: metre(-0.6) }))
