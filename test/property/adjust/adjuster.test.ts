import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import {
  type Adjuster,
  checkAdjuster,
  clockOf,
  displacementOf,
  handOf,
  type ShimPack,
  type SlottedBolt,
  settingAt,
  settingFromClock,
  settingUnit,
  strokeOf,
} from '../../../src/adjust/index.ts'
import { mechanism, poseAt } from '../../../src/linkage/index.ts'
import { deg, metre, mm, rad, turn } from '../../../src/quantity/index.ts'
import { law, near, refuses } from '../../support/law.ts'
import { eccentric, familyStrut, longArms, rearLinks, tieRod } from './invented-corners.ts'

const washer = eccentric('upper front', 'upperFrontInner')
const pack: ShimPack = {
  kind: 'shims',
  id: 'upper shims',
  name: 'upper shims',
  moves: ['upperFrontInner', 'upperRearInner'],
  along: [0, 1, 0],
  sizes: [mm(0.5), mm(1), mm(3)],
  range: [mm(0), mm(12)],
  step: mm(0.5),
  play: mm(0),
  asDrawn: mm(4),
}
const slot: SlottedBolt = {
  kind: 'slotted bolt',
  id: 'upper strut bolt',
  name: 'upper strut bolt',
  turns: 'strut',
  pivot: [0, 0.64, 0.29],
  axis: [-1, 0, 0],
  boltSpacing: mm(60),
  range: [mm(-2), mm(2)],
  step: mm(0.25),
  play: mm(0),
  seenFrom: 'front',
}
const still = { travel: metre(0), rack: metre(0) }

describe('settings and strokes', () => {
  test('AD1 an eccentric moves its point by throw times the sine of its setting, along its slot', () => {
    const shift = displacementOf(washer, longArms, deg(30)).body!['upperFrontInner']!
    near(shift[1], 0.0035, { abs: 1e-15 })
    expect([shift[0], shift[2]]).toEqual([0, 0])
  })
  test('AD1 a washer turned round moves it the other way', () => {
    const other = eccentric('upper front', 'upperFrontInner', { fitted: 'turned round' })
    near(displacementOf(other, longArms, deg(30)).body!['upperFrontInner']![1], -0.0035, { abs: 1e-15 })
  })
  test('AD1 a shim pack as drawn moves nothing, a thicker one moves every point under which it stands', () => {
    expect(displacementOf(pack, longArms, mm(4)).body!['upperRearInner']).toEqual([0, 0, 0])
    const body = displacementOf(pack, longArms, mm(5.5)).body!
    near(body['upperFrontInner']![1], 0.0015, { abs: 1e-15 })
    near(body['upperRearInner']![1], 0.0015, { abs: 1e-15 })
  })
  test('AD1 a left-and-right sleeve does twice what one thread does', () => {
    const one = displacementOf(tieRod(), longArms, 2).length!['tie']!
    const two = displacementOf(tieRod({ sleeve: true }), longArms, 2).length!['tie']!
    near(one, 0.003, { abs: 1e-15 })
    near(two, 0.006, { abs: 1e-15 })
  })
  test('AD1 a link of a five-link corner can be the one that gets longer', () => {
    expect(displacementOf(tieRod({ length: 'link4' }), rearLinks, 1).length!['link4']).toBeCloseTo(0.0015, 12)
  })
  test('AD1 a stub that turns carries the spin axis and the wheel centre with it', () => {
    const stub: SlottedBolt = { ...slot, turns: 'stub' }
    const d = displacementOf(stub, longArms, mm(1.2))
    near(d.spin![0], -0.02, { abs: 1e-15 })
    const centre = d.knuckle!['wheelCentre']!
    const was = longArms.wheelCentre
    const from = Math.hypot(was[1] - 0.64, was[2] - 0.29)
    const to = Math.hypot(was[1] + centre[1] - 0.64, was[2] + centre[2] - 0.29)
    near(to, from, { abs: 1e-15 })
    // the wheel centre lies above the pivot, so tipping the top outward carries it outward
    near(centre[1], Math.sin(0.02) * (was[2] - 0.29) - (1 - Math.cos(0.02)) * (was[1] - 0.64), { abs: 1e-15 })
  })
  test('AD1 the strut’s line turns as one about the pivot bolt, against the wheel', () => {
    const { strutLower, strutTop } = displacementOf(slot, familyStrut, mm(1.2)).knuckle!
    const angle = 1.2 / 60
    for (const [was, shift] of [
      [familyStrut.strutLower, strutLower!],
      [familyStrut.topMount, strutTop!],
    ] as const) {
      // right-handed about +x by 0.02 rad: y' = y cos − z sin, z' = y sin + z cos about the pivot
      const [y, z] = [was[1] - slot.pivot[1], was[2] - slot.pivot[2]]
      near(shift[0], 0, { abs: 1e-15 })
      near(y + shift[1], y * Math.cos(angle) - z * Math.sin(angle), { abs: 1e-15 })
      near(z + shift[2], y * Math.sin(angle) + z * Math.cos(angle), { abs: 1e-15 })
    }
  })
  test('AD1 a slotted strut bolt turns the wheel against the strut by shift over spacing', () => {
    const shift = mm(1.2)
    const before = poseAt(mechanism(familyStrut), still)
    const after = poseAt(mechanism(familyStrut, displacementOf(slot, familyStrut, shift)), still)
    // the wheel turns by θ against the strut; with the lower joint held the strut leans back by the share of its
    // length that lies below the pivot bolt, so (top − pivot)/(top − lower joint) of θ is left in height: 0.831
    const turned = shift / slot.boltSpacing
    near((after.camber - before.camber) / turned, (0.83 - 0.29) / (0.83 - 0.18), { rel: 0.01 })
    // camber and included angle, not SAI (trade table)
    expect(Math.abs(after.sai! - before.sai!)).toBeLessThan(0.1 * turned)
  })
  test('AD2 each kind counts in its unit', () => {
    expect([washer, pack, slot, tieRod()].map(settingUnit)).toEqual(['rad', 'm', 'm', 'turn'])
  })
  law(
    'AD2 setting and stroke are each other’s inverse',
    fc.tuple(
      fc.constantFrom<Adjuster>(washer, pack, slot, tieRod(), { ...washer, fitted: 'turned round' }),
      fc.double({ min: 0.01, max: 0.99, noNaN: true }),
    ),
    ([one, share]) => {
      const setting = one.range[0] + share * (one.range[1] - one.range[0])
      return near(settingAt(one, strokeOf(one, setting)), setting, { abs: 1e-9 })
    },
  )
  test('AD2 a stroke beyond the range stops at its end', () => {
    near(settingAt(tieRod(), mm(100)), 5, { abs: 0 })
    near(settingAt(washer, -1), deg(-90), { abs: 0 })
  })
})

describe('hands', () => {
  const turned = { from: 0, to: deg(30) }
  test('AD3 the right corner is the mirror: clockwise flips, the clock face is turned over', () => {
    expect(handOf(washer, 'left', turned)).toMatchObject({
      amount: '30° clockwise',
      how: 'from 12 to 1 o’clock'.replace('’', "'"),
      seenFrom: 'seen from the front',
    })
    expect(handOf(washer, 'right', turned)).toMatchObject({
      amount: '30° anticlockwise',
      how: "from 12 to 11 o'clock",
    })
  })
  test('AD3 a tie rod with the same thread on both sides keeps its sense, seen from outside', () => {
    const longer = { from: 0, to: 5 / 12 }
    expect(handOf(tieRod(), 'left', longer)).toMatchObject({
      amount: '5/12 turn longer',
      how: 'turn the rod clockwise: its top goes to the rear',
    })
    expect(handOf(tieRod(), 'right', longer).how).toBe('turn the rod clockwise: its top goes to the front')
    const mirrored = tieRod({ rightSide: 'mirrored thread' })
    expect(handOf(mirrored, 'right', longer).how).toBe('turn the rod anticlockwise: its top goes to the rear')
    expect(handOf(mirrored, 'left', longer).how).toBe('turn the rod clockwise: its top goes to the rear')
  })
  test('AD3 shorter is the other way round', () => {
    expect(handOf(tieRod(), 'left', { from: 0, to: -1.25 })).toMatchObject({
      amount: '1 1/4 turns shorter',
      how: 'turn the rod anticlockwise: its top goes to the front',
    })
    expect(handOf(tieRod({ sleeve: true, seenFrom: 'inside' }), 'left', { from: 0, to: 1 })).toMatchObject({
      amount: '1 turn longer',
      how: 'turn the sleeve clockwise: its top goes to the front',
      seenFrom: 'seen from inside',
    })
  })
  test('AD3 shims are named one by one, and swapped where nothing else fits', () => {
    expect(handOf(pack, 'left', { from: mm(4), to: mm(5.5) }).amount).toBe('add 1 mm + 0.5 mm shims')
    expect(handOf(pack, 'left', { from: mm(5), to: mm(4) })).toMatchObject({
      amount: 'take out 1 mm shims',
      how: 'pack from 5 mm to 4 mm, the same under each bolt',
    })
    const odd: ShimPack = { ...pack, sizes: [mm(0.8), mm(1)], step: mm(0.2) }
    const doubled: ShimPack = { ...pack, sizes: [mm(0.8), mm(1.6), mm(3.2)], step: mm(0.8) }
    expect(handOf(doubled, 'left', { from: mm(4), to: mm(9.6) }).amount).toBe(
      'add 3.2 mm + 1.6 mm + 0.8 mm shims',
    )
    expect(handOf(odd, 'left', { from: mm(4), to: mm(4.2) }).amount).toBe('swap 0.8 mm for 1 mm')
  })
  test('AD3 a slotted bolt says which way the top of the wheel tips, the same on both sides', () => {
    expect(handOf(slot, 'left', { from: 0, to: mm(1) }).amount).toBe('1 mm out')
    expect(handOf(slot, 'right', { from: 0, to: mm(-1) }).amount).toBe('1 mm in')
  })
  test('AD3 an adjuster that stays says so', () => {
    for (const one of [washer, pack, slot, tieRod()])
      expect(handOf(one, 'left', { from: one.range[0], to: one.range[0] }).amount).toBe('stays')
  })
  test('AD4 within 10° of its end an eccentric warns', () => {
    expect(handOf(washer, 'left', { from: 0, to: deg(79) }).warning).toBe('')
    expect(handOf(washer, 'left', { from: 0, to: deg(81) }).warning).toMatch(/within 10° of its end/)
    expect(handOf(washer, 'left', { from: 0, to: deg(-85) }).warning).toMatch(/within 10° of its end/)
    expect(handOf(tieRod(), 'left', { from: 0, to: 5 }).warning).toMatch(/end of its range/)
  })
  test('AD4 an eccentric whose present position nobody knows asks for its mark', () => {
    const hand = handOf(washer, 'left', { from: 0, to: deg(10), known: false })
    expect(hand.dial).toBeNull()
    expect(hand.warning).toMatch(/read the mark/)
  })
  law(
    'AD5 the clock says the setting and the setting says the clock',
    fc.tuple(
      fc.double({ min: -89, max: 89, noNaN: true }),
      fc.constantFrom<'left' | 'right'>('left', 'right'),
      fc.constantFrom<'clockwise' | 'anticlockwise'>('clockwise', 'anticlockwise'),
      fc.double({ min: 0, max: 6.28, noNaN: true }),
    ),
    ([setting, side, positiveLooks, markAt]) => {
      const one = eccentric('x', 'upperFrontInner', { positiveLooks, markAt: rad(markAt) })
      const clock = clockOf(one, side, deg(setting))
      expect(clock >= 0 && clock < 2 * Math.PI).toBe(true)
      return near(settingFromClock(one, side, clock), deg(setting), { abs: 1e-7 })
    },
  )
  refuses('setting-out-of-range', () => settingFromClock(washer, 'left', deg(150)), 'upper front')
  refuses('setting-out-of-range', () => settingFromClock(washer, 'right', deg(180)), 'upper front')
  test('AD5 a mark at the end of the range, read a degree too far, is the end', () => {
    near(settingFromClock(washer, 'left', deg(90.9)), deg(90), { abs: 1e-12 })
    near(settingFromClock(washer, 'left', deg(269.1)), deg(-90), { abs: 1e-12 })
  })
})

describe('refusals', () => {
  const bad = (more: object) => () => checkAdjuster({ ...washer, ...more } as Adjuster)
  refuses('bad-adjuster', bad({ range: [1, 1] }), 'upper front.range')
  refuses('bad-adjuster', bad({ range: [deg(-91), deg(90)] }), 'upper front.range')
  refuses('bad-adjuster', bad({ range: [Number.NaN, deg(90)] }), 'upper front.range')
  refuses('bad-adjuster', bad({ step: 0 }), 'upper front.step')
  refuses('bad-adjuster', bad({ play: -1 }), 'upper front.play')
  refuses('bad-adjuster', bad({ throw: 0 }), 'upper front.throw')
  refuses('bad-adjuster', bad({ throw: Number.POSITIVE_INFINITY }), 'upper front.throw')
  refuses('bad-adjuster', bad({ along: [0, 2, 0] }), 'upper front.along')
  refuses('bad-adjuster', bad({ markAt: Number.NaN }), 'upper front.markAt')
  refuses('bad-adjuster', () => checkAdjuster({ ...pack, sizes: [] }), 'upper shims.sizes')
  refuses('bad-adjuster', () => checkAdjuster({ ...pack, moves: [] }), 'upper shims.moves')
  refuses('bad-adjuster', () => checkAdjuster({ ...tieRod(), pitch: mm(0) }), 'tie rod.pitch')
  refuses(
    'bad-adjuster',
    () => checkAdjuster({ ...slot, boltSpacing: mm(-1) }),
    'upper strut bolt.boltSpacing',
  )
  refuses('bad-adjuster', () => checkAdjuster({ ...slot, axis: [0, 0, 0] }), 'upper strut bolt.axis')
  refuses('setting-out-of-range', () => strokeOf(washer, deg(90.1)), 'upper front')
  refuses('setting-out-of-range', () => strokeOf(washer, Number.NaN), 'upper front')
  refuses(
    'setting-out-of-range',
    () => displacementOf(tieRod(), longArms, Number.NEGATIVE_INFINITY),
    'tie rod',
  )
  refuses(
    'setting-out-of-range',
    () => settingFromClock(eccentric('x', 'y', { range: [deg(-20), deg(20)] }), 'left', deg(40)),
    'x',
  )
  refuses('setting-out-of-range', () => settingFromClock(washer, 'left', Number.NaN), 'upper front')
  refuses('no-such-point', () => displacementOf(washer, familyStrut, 0), 'upper front')
  refuses('no-such-point', () => displacementOf(tieRod({ length: 'link9' }), rearLinks, 0), 'tie rod')
  refuses('no-such-point', () => displacementOf(slot, longArms, 0), 'upper strut bolt')
  test('AD2 the ends of the range themselves are in it, and −0 is 0', () => {
    expect(strokeOf(washer, deg(90))).toBe(mm(7))
    expect(strokeOf(tieRod(), turn(-0))).toBe(-0)
  })
})
