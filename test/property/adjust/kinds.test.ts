import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import {
  type Adjuster,
  checkAdjuster,
  clockOf,
  displacementOf,
  handOf,
  isFaced,
  settingAt,
  settingFromClock,
  settingUnit,
  strokeOf,
} from '../../../src/adjust/index.ts'
import {
  type AnyCornerPoints,
  type Displacement,
  mechanism,
  poseAt,
  type Strut,
} from '../../../src/linkage/index.ts'
import { deg, metre, mm, rad } from '../../../src/quantity/index.ts'
import { law, near, refuses } from '../../support/law.ts'
import { familyStrut, longArms, rearLinks, tieRod, tiltedAxes } from './invented-corners.ts'
import { busArm, dragLink, sleeve, slide, subFrame, tieRodOfAxle, topPlate, wedge } from './whole-axles.ts'

const still = { travel: metre(0), rack: metre(0) }
const pose = (points: AnyCornerPoints, by: Displacement = {}) => poseAt(mechanism(points, by), still)

describe('settings and strokes of the other kinds', () => {
  test('AD1 a slide, a top plate and a sub-frame take their points along by their setting', () => {
    const slid = displacementOf(slide({ along: [0, 0.6, 0.8] }), longArms, mm(2)).body!
    expect(Object.keys(slid).sort()).toEqual(['lowerFrontInner', 'lowerRearInner'])
    near(slid['lowerFrontInner']![1], 0.0012, { abs: 1e-15 })
    near(slid['lowerRearInner']![2], 0.0016, { abs: 1e-15 })
    expect(displacementOf(topPlate(), familyStrut, mm(-3)).body).toEqual({ topMount: [-0, -0.003, -0] })
    // to the left is outward on the left corner
    const frame = displacementOf(subFrame(), familyStrut, mm(1.5)).body!
    expect(Object.keys(frame).sort()).toEqual(['lowerFrontInner', 'lowerRearInner', 'tieInner'])
    near(frame['tieInner']![1], 0.0015, { abs: 1e-18 })
  })
  test('AD2 each of them counts in its unit', () => {
    expect([slide(), topPlate(), subFrame(), sleeve(), wedge('toe'), dragLink()].map(settingUnit)).toEqual([
      'm',
      'm',
      'm',
      'rad',
      'rad',
      'turn',
    ])
  })
  law(
    'AD2 setting and stroke are each other’s inverse, and a wedge counts from how it was drawn',
    fc.tuple(
      fc.constantFrom<Adjuster>(
        slide(),
        topPlate(),
        subFrame(),
        sleeve(),
        wedge('camber'),
        wedge('toe', { asDrawn: deg(0.5) }),
      ),
      fc.double({ min: 0.01, max: 0.99, noNaN: true }),
    ),
    ([one, share]) => {
      const setting = one.range[0] + share * (one.range[1] - one.range[0])
      near(strokeOf(one, setting), setting - (one.id === 'toe wedge' ? deg(0.5) : 0), { abs: 1e-15 })
      return near(settingAt(one, strokeOf(one, setting)), setting, { abs: 1e-15 })
    },
  )
  test('AD1 the arms of every rear layout take eccentrics: five links, semi-trailing, double wishbone', () => {
    const washer = (moves: string): Adjuster => ({
      kind: 'eccentric',
      id: moves,
      name: moves,
      moves,
      along: [0, 0, 1],
      throw: mm(5),
      range: [deg(-90), deg(90)],
      step: deg(1),
      play: rad(0),
      seenFrom: 'rear',
      positiveLooks: 'clockwise',
      markAt: rad(0),
    })
    for (const [points, moves] of [
      [rearLinks, 'inner4'],
      [busArm, 'innerFront'],
      [tiltedAxes, 'lowerRearInner'],
    ] as const) {
      const by = displacementOf(washer(moves), points, deg(30))
      near(by.body![moves]![2], 0.0025, { abs: 1e-15 })
      const [before, after] = [pose(points), pose(points, by)]
      expect(Math.abs(after.toe - before.toe) + Math.abs(after.camber - before.camber)).toBeGreaterThan(1e-4)
    }
  })
})

describe('AD23 wedges', () => {
  law(
    'AD23 a wedge between knuckle and hub adds its angle to camber or toe at design, and nothing to the other',
    fc.tuple(
      fc.constantFrom<AnyCornerPoints>(familyStrut, rearLinks, busArm, longArms),
      fc.constantFrom<'camber' | 'toe'>('camber', 'toe'),
      fc.integer({ min: -4, max: 4 }),
    ),
    ([points, tilts, quarters]) => {
      const angle = deg(quarters / 4)
      const by = displacementOf(wedge(tilts), points, angle)
      const [before, after] = [pose(points), pose(points, by)]
      near(after.camber - before.camber, tilts === 'camber' ? angle : 0, { abs: 1e-14 })
      return near(after.toe - before.toe, tilts === 'toe' ? angle : 0, { abs: 1e-14 })
    },
  )
  test('AD3 a wedge says which one, and where its thick edge goes', () => {
    const hand = (tilts: 'camber' | 'toe', from: number, to: number) =>
      handOf(wedge(tilts), 'right', { from: deg(from), to: deg(to) })
    expect(hand('camber', 0, 0.5)).toMatchObject({
      amount: 'fit a 0.5° wedge',
      how: 'thick edge up: the top of the wheel goes out',
      seenFrom: 'seen from the rear',
    })
    expect(hand('camber', 0.5, -0.75)).toMatchObject({
      amount: 'fit a 0.75° wedge in place of the 0.5° one',
      how: 'thick edge down: the top of the wheel goes in',
    })
    expect(hand('toe', 0.25, -0.25).amount).toBe('turn the 0.25° wedge round')
    expect(hand('toe', 0, 0.25).how).toBe('thick edge to the rear: the front of the wheel goes in')
    expect(hand('toe', 0, -0.25).how).toBe('thick edge to the front: the front of the wheel goes out')
    expect(hand('toe', 1, 0)).toMatchObject({ amount: 'take out the 1° wedge', how: '', seenFrom: '' })
    expect(hand('toe', 1, 1).amount).toBe('stays')
    // a wedge has no end to warn of
    expect(hand('toe', 0, 1).warning).toBe('')
  })
})

describe('AD21 top plate', () => {
  /** A strut seen as a flat picture: no caster, no toe, camber in the plane, lower joint on the strut's line. */
  const flat: Strut = {
    ...familyStrut,
    lowerFrontInner: [0.15, 0.36, 0.2],
    lowerRearInner: [-0.15, 0.36, 0.2],
    lowerOuter: [0, 0.705, 0.18],
    strutLower: [0, 0.66, 0.36],
    topMount: [0, 0.54, 0.84],
    tieInner: [-0.13, 0.36, 0.2],
    tieOuter: [-0.13, 0.705, 0.18],
    wheelCentre: [0, 0.755, 0.3],
    toe: rad(0),
  }
  const shift = fc.integer({ min: -12, max: 12 }).filter((n) => n !== 0)
  law(
    'AD21 camber gains what SAI loses, exactly, where the lower joint lies on the strut’s line in the picture’s plane',
    shift,
    (millimetres) => {
      const [before, after] = [pose(flat), pose(flat, displacementOf(topPlate(), flat, mm(millimetres)))]
      expect(Math.sign(after.camber - before.camber)).toBe(Math.sign(millimetres))
      return near(after.camber + after.sai!, before.camber + before.sai!, { abs: 1e-12 })
    },
  )
  law(
    'AD21 on any strut wheel and strut keep their angle exactly, the included angle to a fifteenth of what camber gains',
    shift,
    (millimetres) => {
      const by = displacementOf(topPlate(), familyStrut, mm(millimetres))
      const [before, after] = [pose(familyStrut), pose(familyStrut, by)]
      const between = ({ spinAxis, points }: typeof before, moved: number) => {
        const line = familyStrut.topMount.map((x, i) => x + (i === 1 ? moved : 0) - points['strutLower']![i]!)
        return line.reduce((sum, x, i) => sum + x * spinAxis[i]!, 0) / Math.hypot(...line)
      }
      near(between(after, mm(millimetres)), between(before, 0), { abs: 1e-12 })
      const gained = after.camber - before.camber
      // lever: height of the top mount above the lower joint
      near(gained, millimetres * (0.001 / 0.65), { rel: 0.1 })
      return near(after.camber + after.sai!, before.camber + before.sai!, { abs: Math.abs(gained) / 15 })
    },
  )
})

describe('AD22 sub-frame', () => {
  law(
    'AD22 one side gains what the other loses: what is left over falls with the square of the shift',
    fc.tuple(
      fc.constantFrom<AnyCornerPoints>(familyStrut, tiltedAxes, longArms),
      fc.integer({ min: 1, max: 6 }),
    ),
    ([points, millimetres]) => {
      const frame = subFrame({
        moves:
          points.layout === 'strut'
            ? ['lowerFrontInner', 'lowerRearInner', 'tieInner']
            : ['lowerFrontInner', 'lowerRearInner'],
      })
      const design = pose(points)
      const leftOver = (by: number) => {
        const [left, right] = [by, -by].map(
          (one) => pose(points, displacementOf(frame, points, one)).camber - design.camber,
        ) as [number, number]
        expect(Math.sign(left)).toBe(-Math.sign(right))
        return { sum: left + right, gained: left }
      }
      const whole = leftOver(mm(millimetres))
      const half = leftOver(mm(millimetres) / 2)
      expect(Math.abs(whole.sum)).toBeLessThan(0.05 * Math.abs(whole.gained))
      return near(half.sum, whole.sum / 4, { rel: 0.1, abs: 1e-12 })
    },
  )
  test('AD3 a sub-frame goes to the left or to the right, whoever stands where', () => {
    for (const on of ['left', 'right', 'both'] as const) {
      expect(handOf(subFrame(), on, { from: 0, to: mm(1.5) }).amount).toBe('1.5 mm to the left')
      expect(handOf(subFrame(), on, { from: 0, to: mm(-1) }).amount).toBe('1 mm to the right')
    }
    expect(handOf(subFrame(), 'both', { from: 0, to: mm(-1) }).how).toMatch(/stays supported/)
  })
})

describe('hands of slides, plates, sleeves and rods of an axle', () => {
  test('AD3 a slide says out, in, forward, rearward, up, down by the way it goes along most', () => {
    const way = (along: readonly [number, number, number], by: number) =>
      handOf(slide({ along }), 'right', { from: 0, to: mm(by) }).amount
    expect(way([0, 1, 0], 1.5)).toBe('1.5 mm out')
    expect(way([0, 1, 0], -1.5)).toBe('1.5 mm in')
    expect(way([0.8, 0.6, 0], 2)).toBe('2 mm forward')
    expect(way([0.8, 0.6, 0], -2)).toBe('2 mm rearward')
    expect(way([0, -0.6, -0.8], -0.5)).toBe('0.5 mm up')
    expect(handOf(topPlate(), 'left', { from: 0, to: mm(-3) })).toMatchObject({
      amount: '3 mm in',
      seenFrom: 'seen from above',
    })
    expect(handOf(topPlate(), 'left', { from: 0, to: mm(-3) }).how).toMatch(/spring held/)
  })
  test('AD3 a sleeve is turned under its mark, mirrored on the right, and the shorter way round', () => {
    const turned = { from: deg(-150), to: deg(150) }
    expect(handOf(sleeve(), 'left', { from: 0, to: deg(90) })).toMatchObject({
      amount: '90° clockwise',
      how: "from 9 to 12 o'clock",
      looks: 'clockwise',
    })
    expect(handOf(sleeve(), 'right', { from: 0, to: deg(90) })).toMatchObject({
      amount: '90° anticlockwise',
      how: "from 3 to 12 o'clock",
    })
    expect(handOf(sleeve(), 'left', turned).amount).toBe('60° anticlockwise')
    // not all the way round: there is a stop between
    expect(handOf(sleeve({ range: [deg(-160), deg(160)] }), 'left', turned).amount).toBe('300° clockwise')
    expect(handOf(sleeve(), 'left', { from: 0, to: deg(180) }).warning).toBe('')
    expect(handOf(sleeve({ range: [deg(-90), deg(90)] }), 'left', { from: 0, to: deg(90) }).warning).toMatch(
      /end of its range/,
    )
    expect(handOf(sleeve(), 'left', { from: 0, to: deg(15), known: false }).warning).toMatch(/read the mark/)
  })
  test('AD3 what acts on both wheels is seen from the left or the right, not from outside', () => {
    expect(handOf(tieRodOfAxle(), 'both', { from: 0, to: 1 })).toMatchObject({
      amount: '1 turn longer',
      how: 'turn the sleeve clockwise: its top goes to the rear',
      seenFrom: 'seen from the left',
    })
    expect(handOf(dragLink({ rightSide: 'mirrored thread' }), 'both', { from: 0, to: 1 }).looks).toBe(
      'clockwise',
    )
    expect(handOf(tieRod(), 'right', { from: 0, to: 1 }).seenFrom).toBe('seen from outside')
    expect(handOf(tieRod({ seenFrom: 'inside' }), 'left', { from: 0, to: 1 }).seenFrom).toBe(
      'seen from inside',
    )
    expect(handOf(dragLink({ seenFrom: 'inside' }), 'both', { from: 0, to: -1 })).toMatchObject({
      how: 'turn the sleeve anticlockwise: its top goes to the rear',
      seenFrom: 'seen from the right',
    })
  })
  law(
    'AD5 the clock says the setting of a sleeve and the setting says the clock, wherever its range lies',
    fc.tuple(
      fc.double({ min: -179.9, max: 179.9, noNaN: true }),
      fc.constantFrom<'left' | 'right'>('left', 'right'),
      fc.constantFrom<'clockwise' | 'anticlockwise'>('clockwise', 'anticlockwise'),
      fc.double({ min: 0, max: 360, noNaN: true }),
      fc.double({ min: -360, max: 360, noNaN: true }),
    ),
    ([from, side, positiveLooks, markAt, middle]) => {
      const one = sleeve({
        positiveLooks,
        markAt: deg(markAt),
        range: [deg(middle - 180), deg(middle + 180)],
      })
      expect(isFaced(one)).toBe(true)
      const setting = deg(middle + from)
      return near(settingFromClock(one, side, clockOf(one, side, setting)), setting, { abs: 1e-9 })
    },
  )
  test('AD5 what has no mark has no clock', () => {
    expect([slide(), wedge('toe'), subFrame(), topPlate(), tieRod()].some(isFaced)).toBe(false)
  })
  refuses(
    'setting-out-of-range',
    () => settingFromClock(sleeve({ range: [deg(0), deg(180)] }), 'left', deg(200)),
    'sleeve',
  )
})

describe('refusals of the other kinds', () => {
  refuses('bad-adjuster', () => checkAdjuster(slide({ along: [0, 2, 0] })), 'slide.along')
  refuses('bad-adjuster', () => checkAdjuster(slide({ moves: [] })), 'slide.moves')
  refuses('bad-adjuster', () => checkAdjuster(topPlate({ along: [0, 0, 0] })), 'top plate.along')
  refuses('bad-adjuster', () => checkAdjuster(subFrame({ moves: [] })), 'sub-frame.moves')
  refuses('bad-adjuster', () => checkAdjuster(sleeve({ tilt: deg(0) })), 'sleeve.tilt')
  refuses('bad-adjuster', () => checkAdjuster(sleeve({ tilt: deg(90) })), 'sleeve.tilt')
  refuses('bad-adjuster', () => checkAdjuster(sleeve({ markAt: rad(Number.NaN) })), 'sleeve.markAt')
  refuses('bad-adjuster', () => checkAdjuster(sleeve({ range: [deg(-180), deg(181)] })), 'sleeve.range')
  refuses('bad-adjuster', () => checkAdjuster(wedge('toe', { sizes: [] })), 'toe wedge.sizes')
  refuses('bad-adjuster', () => checkAdjuster(wedge('toe', { sizes: [deg(-1)] })), 'toe wedge.sizes')
  refuses('bad-adjuster', () => checkAdjuster(wedge('toe', { range: [deg(-90), deg(1)] })), 'toe wedge.range')
  refuses('setting-out-of-range', () => strokeOf(wedge('toe'), deg(1.01)), 'toe wedge')
  refuses('no-such-point', () => displacementOf(slide(), rearLinks, 0), 'slide')
  refuses('no-such-point', () => displacementOf(topPlate(), longArms, 0), 'top plate')
  refuses('no-such-point', () => displacementOf(sleeve(), longArms, 0), 'sleeve')
  refuses('no-such-point', () => displacementOf(tieRod(), busArm, 0), 'tie rod')
  refuses('no-such-point', () => displacementOf(tieRodOfAxle(), longArms, 0), 'tie rod')
})
