import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import {
  angleToSlot,
  axialAdvance,
  castleNut,
  castleOnScale,
  largestAdvance,
  parseThread,
  tighteningSequence,
  torqueThrough,
} from '../../../src/fasten/index.ts'
import { deg, inDegrees, mm, Nm, rad } from '../../../src/quantity/index.ts'
import { footWrench, longWrench, openEnd } from '../../support/fasten-examples.ts'
import { law, near, refuses } from '../../support/law.ts'

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true })
const anyNut = fc.record({
  slots: fc.integer({ min: 3, max: 12 }),
  holes: fc.array(between(0, 2 * Math.PI).map(rad), { minLength: 1, maxLength: 2 }),
})

describe('FA13 castle nuts', () => {
  law(
    'FA13 turned so far forward a slot stands at a hole, and at no smaller angle',
    fc.tuple(anyNut, between(-10, 10)),
    ([nut, slotAt]) => {
      const turn = angleToSlot({ ...nut, slotAt: rad(slotAt) })
      expect(turn).toBeGreaterThanOrEqual(0)
      expect(turn).toBeLessThanOrEqual(largestAdvance(nut) + 1e-9)
      // by trying every slot against every end of every hole
      const off = (turned: number) =>
        Math.min(
          ...nut.holes.flatMap((hole) =>
            [0, Math.PI].flatMap((end) =>
              Array.from({ length: nut.slots }, (_, k) => {
                const d = slotAt + turned + (2 * Math.PI * k) / nut.slots - hole - end
                return Math.abs(Math.atan2(Math.sin(d), Math.cos(d)))
              }),
            ),
          ),
        )
      near(off(turn), 0, { abs: 1e-8 })
      for (let i = 0; i < 20; i++) if (turn > 1e-6) expect(off((turn * i) / 20)).toBeGreaterThan(1e-9)
      return true
    },
  )
  law('FA13 at most 360° / slots, and more holes never make it further', anyNut, (nut) => {
    const alone = largestAdvance({ ...nut, holes: nut.holes.slice(0, 1) })
    return largestAdvance(nut) <= alone + 1e-9 && alone <= (2 * Math.PI) / nut.slots + 1e-9
  })
  test('FA13 at the slot already nothing is to turn; a hair past it a whole step', () => {
    expect(angleToSlot({ slots: 6, holes: [deg(0)], slotAt: deg(120) })).toBe(0)
    expect(inDegrees(angleToSlot({ slots: 6, holes: [deg(0)], slotAt: deg(0.5) }))).toBeCloseTo(59.5, 9)
    expect(inDegrees(angleToSlot({ slots: 5, holes: [deg(0)], slotAt: deg(-40) }))).toBeCloseTo(4, 9)
  })
  law('FA13 forward is along the thread in proportion', between(0, 7), (angle) =>
    near(axialAdvance({ pitch: mm(1.5), angle: rad(angle) }), (0.0015 * angle) / (2 * Math.PI), {
      rel: 1e-12,
    }),
  )
  test('FA13 a thread the table has not gets no nut', () => {
    expect(castleNut(parseThread('M7'))).toBeNull()
    expect(castleNut(parseThread('M24'))).toBeNull()
    expect(castleNut(parseThread('1/2-20 UNF'))).toBeNull()
    expect(castleNut(parseThread('M12x1.25'))).toEqual(castleNut(parseThread('M12')))
  })
  refuses('bad-count', () => angleToSlot({ slots: 2, holes: [deg(0)], slotAt: deg(0) }), 'slots')
  refuses('bad-count', () => largestAdvance({ slots: 6.5, holes: [deg(0)] }), 'slots')
  refuses('bad-count', () => largestAdvance({ slots: 6, holes: [] }), 'slots')
  refuses('not-finite', () => angleToSlot({ slots: 6, holes: [deg(0)], slotAt: rad(Number.NaN) }), 'slot')
  refuses('not-finite', () => largestAdvance({ slots: 6, holes: [rad(Number.NaN)] }), 'hole')
  refuses('not-positive', () => axialAdvance({ pitch: mm(0), angle: deg(60) }), 'pitch')
})

describe('FA14 castle nut on the scale', () => {
  law(
    'FA14 floor reached, ceiling not passed, at the fastener',
    fc.tuple(
      between(45, 120),
      between(4, 60),
      fc.constantFrom(longWrench, footWrench),
      fc.constantFrom(null, openEnd),
    ),
    ([floor, more, wrench, adapter]) => {
      const ceiling = floor + more
      const at = castleOnScale({ floor: Nm(floor), ceiling: Nm(ceiling), wrench, adapter })
      const received = (setting: number) =>
        torqueThrough({
          setting: Nm(setting),
          reach: wrench.reach,
          offset: adapter?.offset ?? mm(0),
          angle: deg(0),
        })
      return (
        at.floor <= at.ceiling &&
        received(at.floor) >= floor - 1e-6 &&
        received(at.ceiling) <= ceiling + 1e-6 &&
        received(at.floor) < floor + wrench.scale.step * 1.1 &&
        received(at.ceiling) > ceiling - wrench.scale.step * 1.1
      )
    },
  )
  refuses(
    'no-mark',
    () => castleOnScale({ floor: Nm(80.2), ceiling: Nm(80.8), wrench: longWrench, adapter: null }),
    'wrench',
  )
  refuses(
    'outside-range',
    () => castleOnScale({ floor: Nm(30), ceiling: Nm(60), wrench: longWrench, adapter: null }),
    'wrench',
  )
  refuses('outside-range', () =>
    castleOnScale({ floor: Nm(180), ceiling: Nm(230), wrench: longWrench, adapter: null }),
  )
  refuses(
    'bad-range',
    () => castleOnScale({ floor: Nm(80), ceiling: Nm(70), wrench: longWrench, adapter: null }),
    'floor and ceiling',
  )
  refuses(
    'not-positive',
    () => castleOnScale({ floor: Nm(0), ceiling: Nm(70), wrench: longWrench, adapter: null }),
    'floor',
  )
  refuses('not-finite', () =>
    castleOnScale({ floor: Nm(80), ceiling: Nm(Number.NaN), wrench: longWrench, adapter: null }),
  )
  refuses('no-lever', () =>
    castleOnScale({
      floor: Nm(80),
      ceiling: Nm(90),
      wrench: longWrench,
      adapter: { ...openEnd, angle: deg(180), offset: mm(500) },
    }),
  )
})

describe('FA15 rings', () => {
  const stages = [Nm(30), Nm(60), Nm(120)]
  test('FA15 for 3 to 32 fasteners: each once a stage, opposite first, rising', () => {
    for (let count = 3; count <= 32; count++) {
      const { order, places, pulls } = tighteningSequence({ count, stages })
      expect([...order].sort((a, b) => a - b)).toEqual(Array.from({ length: count }, (_, i) => i + 1))
      for (let i = 1; i < count; i += 1) {
        const apart = Math.abs(order[i]! - order[i - 1]!) % count
        const round = Math.min(apart, count - apart)
        // even: every pair exactly opposite; odd: always the furthest there is
        if (count % 2 === 1) expect(round).toBe((count - 1) / 2)
        else if (i % 2 === 1) expect(round).toBe(count / 2)
      }
      for (const { number, at, turn } of places) {
        expect(order[turn - 1]).toBe(number)
        near(at, (2 * Math.PI * (number - 1)) / count, { abs: 1e-12 })
      }
      expect(pulls).toHaveLength(3 * count)
      expect(pulls.map(({ stage, number }) => [stage, number])).toEqual(
        [1, 2, 3].flatMap((stage) => order.map((number) => [stage, number])),
      )
      expect(pulls.map(({ torque }) => torque)).toEqual(stages.flatMap((torque) => Array(count).fill(torque)))
    }
  })
  test('FA15 after any even number of an even ring the pull is balanced', () => {
    for (let count = 4; count <= 32; count += 2) {
      const { order, places } = tighteningSequence({ count, stages })
      for (let made = 2; made <= count; made += 2) {
        const sum = order
          .slice(0, made)
          .reduce(
            ([x, y], number) => [
              x! + Math.cos(places[number - 1]!.at),
              y! + Math.sin(places[number - 1]!.at),
            ],
            [0, 0],
          )
        near(Math.hypot(sum[0]!, sum[1]!), 0, { abs: 1e-9 })
      }
    }
  })
  test('FA15 where the first stands only turns the picture', () => {
    const turned = tighteningSequence({ count: 5, stages, firstAt: deg(36) })
    const plain = tighteningSequence({ count: 5, stages })
    expect(turned.order).toEqual(plain.order)
    near(turned.places[2]!.at - plain.places[2]!.at, deg(36), { abs: 1e-12 })
  })
  for (const count of [2, 33, 4.5, Number.NaN])
    refuses('bad-count', () => tighteningSequence({ count, stages }), 'count')
  refuses('bad-stages', () => tighteningSequence({ count: 5, stages: [] }), 'stages')
  refuses('bad-stages', () => tighteningSequence({ count: 5, stages: [Nm(60), Nm(60)] }), 'stages')
  refuses('not-positive', () => tighteningSequence({ count: 5, stages: [Nm(0), Nm(60)] }), 'stage 1')
  refuses('not-finite', () => tighteningSequence({ count: 5, stages: [Nm(Number.NaN)] }), 'stage 1')
})
