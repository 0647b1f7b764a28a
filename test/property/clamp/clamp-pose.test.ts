import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import {
  bushShearStress,
  bushStiffness,
  type ClampBush,
  type ClampTask,
  clampPose,
  clampTarget,
  travelFromArch,
  typicalStiffness,
} from '../../../src/clamp/index.ts'
import { mechanism, poseAt } from '../../../src/linkage/index.ts'
import { exact, interval, type Measured, normal, standardUncertainty } from '../../../src/measure/index.ts'
import { deg, inDegrees, metre, mm, NmPerRad, pascal } from '../../../src/quantity/index.ts'
import { law, near, refuses } from '../../support/law.ts'
import { familyStrut, longArms, rearLinks, tiltedAxes } from '../adjust/invented-corners.ts'

const bush = (id: string, pivot: string, more: Partial<ClampBush> = {}): ClampBush => ({
  id,
  name: id,
  pivot,
  bonded: true,
  stiffness: { value: NmPerRad(100), spread: 0.2 },
  adjuster: false,
  ...more,
})
const lower = [bush('lower front', 'lowerFrontInner'), bush('lower rear', 'lowerRearInner')]
const task = (more: Partial<ClampTask> = {}): ClampTask => ({
  side: 'left',
  points: longArms,
  target: exact(mm(-5)),
  hanging: exact(mm(-90)),
  bushes: lower,
  wheelRate: exact(25_000),
  ...more,
})
const poseOf = (travel: number, points = longArms) =>
  poseAt(mechanism(points), { travel: metre(travel), rack: metre(0) })

describe('CL2 raise and turn', () => {
  test('CL2 the hub is raised by target less hanging, and the arm turns as the poses say', () => {
    const pose = clampPose(task())
    near(pose.raise.value, 0.085, { abs: 1e-12 })
    near(pose.armTurn.lower!.value, poseOf(-0.005).armLower! - poseOf(-0.09).armLower!, { abs: 1e-15 })
    near(pose.armTurn.upper!.value, poseOf(-0.005).armUpper! - poseOf(-0.09).armUpper!, { abs: 1e-15 })
    for (const one of pose.bushes) near(one.twist.value, pose.armTurn.lower!.value, { abs: 1e-12 })
  })
  test('CL2 the arm turns about as its length says: raise over the arm’s reach', () => {
    // lower arm 405 mm long and nearly level; the wheel centre rises as its ball joint does within a few percent
    const turned = clampPose(task()).armTurn.lower!.value
    near(turned, 0.085 / (0.765 - 0.36), { rel: 0.05 })
  })
  law(
    'CL2 tightened at ride height nothing is left: no twist, no torque, no height',
    fc.double({ min: -0.06, max: 0.05, noNaN: true }),
    (travel) => {
      const pose = clampPose(task({ target: exact(travel), hanging: exact(travel) }))
      for (const one of pose.bushes) {
        near(one.twist.value, 0, { abs: 1e-15 })
        near(one.torque!.value, 0, { abs: 1e-12 })
      }
      near(pose.height!.value, 0, { abs: 1e-12 })
      return near(pose.raise.value, 0, { abs: 0 })
    },
    { runs: 20 },
  )
  test('CL2 the lower it hangs, the more is left', () => {
    const twists = [-0.03, -0.06, -0.09].map(
      (at) => clampPose(task({ hanging: exact(at) })).bushes[0]!.twist.value,
    )
    expect(twists[0]!).toBeGreaterThan(0)
    expect(twists[1]!).toBeGreaterThan(twists[0]!)
    expect(twists[2]!).toBeGreaterThan(twists[1]!)
  })
  test('CL2 a rule that both heights share leaves the raise when it cancels', () => {
    const zero = (value: number): Measured => normal(0.002, 'rule zero', value)
    const pose = clampPose(task({ target: zero(-0.005), hanging: zero(-0.09) }))
    near(standardUncertainty(pose.raise), 0, { abs: 1e-15 })
    // what is left of 2 mm on a 405 mm arm is the difference of the slopes at the two heights
    expect(standardUncertainty(pose.armTurn.lower!)).toBeLessThan((0.1 * 0.002) / 0.405)
    const own = clampPose(task({ target: normal(0.001, 'a', -0.005), hanging: normal(0.001, 'b', -0.09) }))
    near(standardUncertainty(own.raise), Math.SQRT2 * 0.001, { rel: 1e-9 })
    // an error of 1.4 mm on a 405 mm arm
    near(standardUncertainty(own.armTurn.lower!), (Math.SQRT2 * 0.001) / 0.405, { rel: 0.08 })
  })
  test('CL2 a strut has one arm, a five-link none; both have their twists', () => {
    const strut = clampPose(task({ points: familyStrut }))
    expect(strut.armTurn.upper).toBeNull()
    expect(strut.armTurn.lower!.value).toBeGreaterThan(0)
    const rear = clampPose(task({ points: rearLinks, bushes: [bush('toe link', 'inner4')] }))
    expect(rear.armTurn).toEqual({ lower: null, upper: null })
    expect(rear.bushes[0]!.twist.value).toBeGreaterThan(0)
  })
  test('CL2 adjusters where they stand are taken into account', () => {
    const shifted = clampPose(
      task({ points: tiltedAxes, displacement: { body: { lowerFrontInner: [0, 0.006, 0] } } }),
    )
    const plain = clampPose(task({ points: tiltedAxes }))
    expect(shifted.bushes[0]!.twist.value).not.toBe(plain.bushes[0]!.twist.value)
    near(shifted.bushes[0]!.twist.value, plain.bushes[0]!.twist.value, { rel: 0.05 })
  })
})

describe('CL3 torque and height', () => {
  test('CL3 torque is stiffness times twist, with the spread of both', () => {
    const [one] = clampPose(task()).bushes
    near(one!.torque!.value, 100 * one!.twist.value, { rel: 1e-12 })
    near(standardUncertainty(one!.torque!), 20 * one!.twist.value, { rel: 1e-6 })
  })
  test('CL3 the height agrees with the minimum of spring and bush energy', () => {
    // springs alone hold the ride pose; the bushes are then clamped hanging and the wheel looks for its new rest
    const k = 60
    const springs = 24_000
    const ride = -0.005
    const hang = -0.09
    const turn = (z: number) => poseOf(z).armLower!
    const energy = (z: number) =>
      (springs * (z - ride) ** 2) / 2 + 2 * ((k * (turn(z) - turn(hang)) ** 2) / 2)
    // golden section
    let [a, b] = [ride - 0.03, ride]
    const g = (Math.sqrt(5) - 1) / 2
    for (let i = 0; i < 60; i++) {
      const [c, d] = [b - g * (b - a), a + g * (b - a)]
      if (energy(c) < energy(d)) b = d
      else a = c
    }
    const settled = (a + b) / 2
    const slope = (turn(ride + 1e-5) - turn(ride - 1e-5)) / 2e-5
    const pose = clampPose(
      task({
        target: exact(ride),
        hanging: exact(hang),
        bushes: lower.map((one) => ({ ...one, stiffness: { value: NmPerRad(k), spread: 0 } })),
        // the rate at the wheel is taken with its bushes
        wheelRate: exact(springs + 2 * k * slope ** 2),
      }),
    )
    expect(pose.height!.value).toBeGreaterThan(0.002)
    near(pose.height!.value, ride - settled, { rel: 0.02 })
    near(pose.height!.value, pose.bushes[0]!.height!.value + pose.bushes[1]!.height!.value, { rel: 1e-12 })
  })
  test('CL3 twice the wheel rate is half the height; twice the stiffness twice the torque', () => {
    const base = clampPose(task())
    near(clampPose(task({ wheelRate: exact(50_000) })).height!.value, base.height!.value / 2, { rel: 1e-12 })
    const stiff = lower.map((one) => ({ ...one, stiffness: { value: NmPerRad(200), spread: 0 } }))
    near(clampPose(task({ bushes: stiff })).bushes[0]!.torque!.value, 2 * base.bushes[0]!.torque!.value, {
      rel: 1e-12,
    })
  })
  test('CL3 without a wheel rate there is no height, and it says why', () => {
    const pose = clampPose(task({ wheelRate: null }))
    expect(pose.height).toBeNull()
    expect(pose.bushes[0]!.height).toBeNull()
    expect(pose.bushes[0]!.torque).not.toBeNull()
    expect(pose.bushes[0]!.remark).toMatch(/rate at the wheel/)
  })
  test('CL3 without a stiffness a typical range is taken, and it says so', () => {
    const pose = clampPose(task({ bushes: [bush('x', 'lowerFrontInner', { stiffness: null })] }))
    expect(pose.bushes[0]!.remark).toMatch(/typical range/)
    expect(standardUncertainty(pose.bushes[0]!.torque!)).toBeGreaterThan(0.3 * pose.bushes[0]!.torque!.value)
  })
  test('CL3 the typical range spans bushes of the usual sizes and rubbers', () => {
    const range = interval(typicalStiffness('x'), 0.9999)
    for (const inner of [14, 20])
      for (const outer of [30, 40])
        for (const length of [40, 60])
          for (const modulus of [0.7, 1.2]) {
            const k = bushStiffness({
              inner: mm(inner),
              outer: mm(outer),
              length: mm(length),
              shear: pascal(modulus * 1e6),
            })
            expect(k).toBeGreaterThan(range.low)
            expect(k).toBeLessThan(range.high)
          }
  })
  test('CL3 a bush that slips holds nothing and may be final anywhere', () => {
    const [one] = clampPose(task({ bushes: [bush('x', 'lowerFrontInner', { bonded: false })] })).bushes
    expect(one).toMatchObject({ torque: null, height: null, rule: 'final in any position' })
  })
})

describe('CL4 rules and cautions', () => {
  test('CL4 a bonded bush is final only at ride height; one on an eccentric stays run up until the last move', () => {
    const pose = clampPose(
      task({
        bushes: [bush('plain', 'lowerFrontInner'), bush('eccentric', 'lowerRearInner', { adjuster: true })],
      }),
    )
    expect(pose.bushes.map((one) => one.rule)).toEqual([
      'final only at ride height',
      'stays run up until the last move',
    ])
    expect(pose.cautions.map((one) => one.code)).toContain('adjuster')
  })
  test('CL4 a jack alone and a jack that lifts the body are always warned of', () => {
    for (const one of [task(), task({ points: rearLinks, bushes: [] })]) {
      const codes = clampPose(one).cautions.map((caution) => caution.code)
      expect(codes[0]).toBe('jack alone')
      expect(codes).toContain('jack lifts body')
      expect(codes).toContain('maker')
    }
  })
  test('CL4 the corner’s load stands in the caution when it is known, to ten kilograms', () => {
    const load = clampPose(task({ cornerLoad: 5500 })).cautions.find((one) => one.code === 'jack lifts body')!
    expect(load.sentence).toMatch(/about 560 kg/)
    const none = clampPose(task()).cautions.find((one) => one.code === 'jack lifts body')!
    expect(none.sentence).not.toMatch(/kg/)
  })
  test('CL4 air springs and adjusters are warned of where they are', () => {
    const codes = (more: Partial<ClampTask>) => clampPose(task(more)).cautions.map((one) => one.code)
    expect(codes({ airSprung: true })).toContain('air spring')
    expect(codes({})).not.toContain('air spring')
    expect(codes({})).not.toContain('adjuster')
    expect(codes({ bushes: [bush('x', 'lowerFrontInner', { bonded: false })] })).not.toContain('hanging')
  })
})

describe('CL5 target', () => {
  const sheet = { low: mm(430), high: mm(450) }
  const foundAt = (millimetres: number, spread = 0.5) => normal(mm(spread), 'rule', mm(millimetres))
  test('CL5 springs stay and the height is inside: the one before lifting', () => {
    expect(clampTarget({ springs: 'stay', before: foundAt(441), sheet })).toMatchObject({
      by: 'before lifting',
      height: foundAt(441),
    })
    const near450 = clampTarget({ springs: 'stay', before: foundAt(449.8), sheet })
    expect(near450.by).toBe('before lifting')
    expect(near450.why).toMatch(/not proven/)
  })
  test('CL5 springs stay and the height is outside, or was not measured: settled on its wheels', () => {
    const low = clampTarget({ springs: 'stay', before: foundAt(420), sheet })
    expect(low).toMatchObject({ by: 'settled on its wheels', height: null })
    expect(low.why).toMatch(/outside.*settle that first/)
    expect(clampTarget({ springs: 'stay', before: null, sheet }).height).toBeNull()
  })
  test('CL5 springs renewed or torsion bar reset: the sheet’s, not the sagged one before', () => {
    for (const springs of ['renewed', 'torsion bar reset'] as const) {
      const target = clampTarget({ springs, before: foundAt(420), sheet })
      expect(target.by).toBe('sheet')
      near(target.height!.value, 0.44, { abs: 1e-12 })
      near(interval(target.height!, 0.9999).high, 0.45, { abs: 1e-5 })
      near(
        clampTarget({ springs, before: null, sheet: { ...sheet, preferred: mm(445) } }).height!.value,
        0.445,
        { abs: 0 },
      )
      expect(clampTarget({ springs, before: foundAt(420), sheet: null }).by).toBe('settled on its wheels')
    }
  })
  test('CL5 no sheet: the one before lifting, and it says that nothing holds it', () => {
    expect(clampTarget({ springs: 'stay', before: foundAt(441), sheet: null }).why).toMatch(/No sheet/)
  })
  test('CL5 a shorter gap to the arch is bump', () => {
    const travel = travelFromArch(foundAt(430), mm(450))
    near(travel.value, 0.02, { abs: 1e-15 })
    expect(travel.parts[0]!.effect).toBeLessThan(0)
  })
})

describe('refusals', () => {
  const ring = { inner: mm(16), outer: mm(32), length: mm(40), shear: pascal(7e5) }
  refuses('not-positive', () => bushStiffness({ ...ring, inner: mm(0) }), 'inner')
  refuses('not-positive', () => bushStiffness({ ...ring, outer: mm(16) }), 'outer')
  refuses('not-positive', () => bushStiffness({ ...ring, length: mm(Number.NaN) }), 'length')
  refuses(
    'not-positive',
    () => bushShearStress({ ...ring, shear: pascal(Number.POSITIVE_INFINITY) }, 0.1),
    'shear',
  )
  refuses('hangs-above-target', () => clampPose(task({ hanging: exact(0.01) })), 'hanging')
  refuses('not-positive', () => clampPose(task({ wheelRate: exact(0) })), 'wheelRate')
  refuses(
    'not-positive',
    () =>
      clampPose(
        task({ bushes: [bush('x', 'lowerFrontInner', { stiffness: { value: NmPerRad(-1), spread: 0 } })] }),
      ),
    'x',
  )
  refuses(
    'not-positive',
    () =>
      clampPose(
        task({
          bushes: [bush('x', 'lowerFrontInner', { stiffness: { value: NmPerRad(1), spread: Number.NaN } })],
        }),
      ),
    'x',
  )
  refuses('no-such-pivot', () => clampPose(task({ bushes: [bush('x', 'topMount')] })), 'x')
  refuses('not-finite', () => clampPose(task({ target: { value: Number.NaN, parts: [] } })), 'target')
  refuses(
    'not-finite',
    () => clampTarget({ springs: 'stay', before: null, sheet: { low: mm(450), high: mm(430) } }),
    'sheet',
  )
  refuses('unreachable', () => clampPose(task({ hanging: exact(-0.6) })))
  test('CL2 a hair below the target is still a raise', () => {
    near(inDegrees(clampPose(task({ hanging: exact(-0.005 - 1e-9) })).bushes[0]!.twist.value), 0, {
      abs: deg(1),
    })
  })
})
