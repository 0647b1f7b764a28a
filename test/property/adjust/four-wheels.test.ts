import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import {
  type CornersSetup,
  displacementOf,
  type MovesProblem,
  moves,
  type WheelSetup,
} from '../../../src/adjust/index.ts'
import {
  type AnyCornerPoints,
  centringChange,
  mechanism,
  poseAt,
  type RackSteering,
  steeringRatio,
  steeringWheelOff,
  straightAhead,
  sumOfDisplacements,
} from '../../../src/linkage/index.ts'
import { exact as exactly, standardUncertainty } from '../../../src/measure/index.ts'
import { deg, inDegrees, metre, mm, rad, turn } from '../../../src/quantity/index.ts'
import { law, near, refuses } from '../../support/law.ts'
import { axle, between, read, still, wheel } from './axle-problem.ts'
import { eccentric, familyStrut, longArms, rearLinks, tieRod } from './invented-corners.ts'
import { busArm, set, slide, subFrame, wedge } from './whole-axles.ts'

const few = { draws: 500 }
const sides = ['left', 'right'] as const

const bolts = () => [
  eccentric('camber bolt', 'inner2', { throw: mm(5), step: deg(2), sets: 'camber' }),
  eccentric('toe bolt', 'inner4', { throw: mm(5), step: deg(2), sets: 'toe' }),
]
const rearWheel = (): WheelSetup => ({
  points: rearLinks,
  drive: still,
  adjusters: bolts(),
  settings: { 'camber bolt': 0, 'toe bolt': 0 },
})
const frontWheel = (points: AnyCornerPoints = familyStrut): WheelSetup => ({
  points,
  drive: still,
  adjusters: [slide(), tieRod({ step: turn(1 / 24) })],
  settings: { slide: 0, 'tie rod': 0 },
})
const four = (): MovesProblem['axles'] => [
  { end: 'front', left: frontWheel(), right: frontWheel() },
  { end: 'rear', left: rearWheel(), right: rearWheel() },
]

const limits: MovesProblem['limits'] = {
  'front left camber': between(-1, 0.2),
  'front right camber': between(-1, 0.2),
  'front cross camber': between(-0.5, 0.5),
  'rear left camber': between(-1.6, -0.4),
  'rear right camber': between(-1.6, -0.4),
  'rear left toe': between(0, 0.3),
  'rear right toe': between(0, 0.3),
  thrust: between(-0.1, 0.1),
  'front left toe to thrust': between(-0.05, 0.2),
  'front right toe to thrust': between(-0.05, 0.2),
}
/** Camber and toe: front left, front right, rear left, rear right; degrees. */
function readings(values: readonly number[]): MovesProblem['readings'] {
  const out: Record<string, ReturnType<typeof read>> = {}
  ;['front left', 'front right', 'rear left', 'rear right'].forEach((name, w) => {
    out[`${name} camber`] = read(values[2 * w]!, 0.04, `${name} camber`, 0.01)
    out[`${name} toe`] = read(values[2 * w + 1]!, 0.03, `${name} toe`, 0.01)
  })
  return out
}
const hundredths = (low: number, high: number) =>
  fc.integer({ min: Math.round(100 * low), max: Math.round(100 * high) }).map((n) => n / 100)
const anyFour: fc.Arbitrary<MovesProblem> = fc
  .tuple(
    hundredths(-1.4, 0.6),
    hundredths(-0.4, 0.6),
    hundredths(-1.4, 0.6),
    hundredths(-0.4, 0.6),
    hundredths(-2, 0),
    hundredths(-0.3, 0.6),
    hundredths(-2, 0),
    hundredths(-0.3, 0.6),
  )
  .map((values) => ({ axles: four(), readings: readings(values), limits, steering: { ratio: 16 } }))

/** Exact angles of a wheel at settings, by the linkage alone. */
function exact({ points, drive, adjusters }: WheelSetup, settings: Readonly<Record<string, number>>) {
  const by = adjusters.map((one) => displacementOf(one, points, settings[one.id]!))
  return poseAt(mechanism(points, sumOfDisplacements(by)), drive)
}

describe('four wheels', () => {
  law(
    'AD6 moves of four wheels change every angle, and with them thrust and the steering wheel, by what was foreseen',
    anyFour,
    (problem) => {
      const found = moves(problem, few)
      const change: Record<string, number> = {}
      for (const setup of problem.axles as readonly CornersSetup[])
        for (const side of sides) {
          const now = setup[side].settings as Record<string, number>
          const to = { ...now }
          for (const move of found.moves)
            if (move.end === setup.end && move.side === side) to[move.adjuster.id] = move.to
          const [was, will] = [exact(setup[side], now), exact(setup[side], to)]
          change[`${setup.end} ${side} toe`] = will.toe - was.toe
          change[`${setup.end} ${side} camber`] = will.camber - was.camber
        }
      const foreseen = (name: string) => {
        const one = found.foreseen.find((each) => each.name === name)!
        return one.after.value - one.now.value
      }
      for (const [name, by] of Object.entries(change)) near(foreseen(name), by, { abs: 1e-12 })
      const thrust = (change['rear left toe']! - change['rear right toe']!) / 2
      near(foreseen('thrust'), thrust, { abs: 1e-12 })
      near(
        found.steeringWheel!.after.value - found.steeringWheel!.now.value,
        16 * ((change['front left toe']! - change['front right toe']!) / 2 - thrust),
        { abs: 1e-10 },
      )
      return true
    },
    { runs: 25 },
  )
  law(
    'AD9 rear camber, rear toe, front camber, front toe; the steering wheel is held before each front toe',
    anyFour,
    (problem) => {
      const list = moves(problem, few).moves
      const order = ['rear camber', 'rear toe', 'front camber', 'front toe']
      const ranks = list.map(({ end, job }) => order.indexOf(`${end} ${job}`))
      expect(ranks).toEqual(ranks.toSorted((a, b) => a - b))
      for (const { end, job, before } of list)
        expect(before).toBe(
          end === 'front' && job === 'toe' ? 'centre the steering wheel and hold it there' : '',
        )
      return true
    },
    { runs: 25 },
  )
  law(
    'AD25 where the steering wheel will stand is what the linkage says of the same toes, now and after',
    fc.tuple(anyFour, fc.integer({ min: 10, max: 24 })),
    ([problem, ratio]) => {
      const found = moves({ ...problem, steering: { ratio } }, few)
      for (const when of ['now', 'after'] as const) {
        const toe = (name: string) =>
          rad(found.foreseen.find((one) => one.name === (name as 'thrust'))![when].value)
        const toes = { left: toe('front left toe'), right: toe('front right toe') }
        near(found.steeringWheel![when].value, steeringWheelOff({ toes, thrust: toe('thrust') }, ratio), {
          abs: 1e-12,
        })
      }
      return true
    },
    { runs: 25 },
  )
  test('AD25 against the linkage of a rack: straight ahead is where it says, to a twentieth', () => {
    const steering: RackSteering = { kind: 'rack', perTurn: metre(-0.055) }
    const rods = { left: mm(0.6), right: mm(-0.4) }
    const corner = (side: 'left' | 'right') => mechanism(familyStrut, { length: { tie: rods[side] } })
    const linked = { steering, left: corner('left'), right: corner('right') }
    const level = { left: metre(0), right: metre(0) }
    const ratio = steeringRatio(linked, { wheel: deg(0), travel: level })
    const toe = (side: 'left' | 'right') => poseAt(corner(side), still).toe
    const thrust = deg(-0.2)
    const found = moves({
      axles: four(),
      readings: {
        'front left toe': exactly(toe('left')),
        'front right toe': exactly(toe('right')),
        'rear left toe': exactly(deg(-0.1)),
        'rear right toe': exactly(deg(0.3)),
      },
      limits: { thrust: between(-0.3, 0.3) },
      steering: { ratio },
    })
    const said = straightAhead(linked, { thrust, travel: level })
    expect(Math.abs(inDegrees(said))).toBeGreaterThan(1)
    near(found.steeringWheel!.now.value, said, { rel: 0.05 })
  })
  test('AD25 with a limit, the moves centre it: each rod by the centring change', () => {
    const found = moves({
      axles: four(),
      readings: readings([-0.4, 0.4, -0.4, -0.2, -1, 0.15, -1, 0.15]),
      limits: { 'front total toe': between(0, 0.4) },
      steering: { ratio: 16, limit: between(-1, 1) },
    })
    expect(found.moves.map(({ end, side, adjuster }) => `${end} ${side} ${adjuster.id}`).slice(-2)).toEqual([
      'front left tie rod',
      'front right tie rod',
    ])
    const change = centringChange({ toes: { left: deg(0.4), right: deg(-0.2) }, thrust: deg(0) })
    for (const side of sides) {
      const toe = found.foreseen.find(({ name }) => name === `front ${side} toe`)!
      near(toe.after.value - toe.now.value, change[side], { abs: deg(0.03) })
    }
    expect(Math.abs(found.steeringWheel!.after.value)).toBeLessThan(deg(0.5))
    expect(found.steeringWheel!.insideNow).toBe(0)
    expect(found.steeringWheel!.insideAfter).toBeGreaterThan(0.9)
  })
  test('AD28 rear readings in order: no rear adjuster is turned for what front toe lacks to the thrust line', () => {
    const found = moves({
      axles: four(),
      // thrust 0.05° to the right, surely inside; both front toes to it are out
      readings: readings([-0.4, 0.45, -0.4, -0.3, -1, 0.2, -1, 0.1]),
      limits,
      steering: { ratio: 16, limit: between(-2, 2) },
    })
    expect(found.moves.map(({ end, side, adjuster }) => `${end} ${side} ${adjuster.id}`)).toEqual([
      'front left tie rod',
      'front right tie rod',
    ])
    // nothing in front that could do it: then the rear toe bolts may
    const bare = { ...frontWheel(), adjusters: [], settings: {} }
    const only = moves({
      axles: [{ end: 'front', left: bare, right: bare }, four()[1]!],
      readings: readings([-0.4, 0.3, -0.4, -0.1, -1, 0.15, -1, 0.15]),
      limits: {
        'front left toe to thrust': between(-0.05, 0.2),
        'front right toe to thrust': between(-0.05, 0.2),
      },
    })
    expect(only.moves.length).toBeGreaterThan(0)
    expect(only.moves.every(({ end, job }) => end === 'rear' && job === 'toe')).toBe(true)
  })
  test('AD25 how it was held counts, with its spread; nothing is said without all four toes', () => {
    const asked = (more: Partial<MovesProblem>) =>
      moves({
        axles: four(),
        readings: readings([-0.4, 0.1, -0.4, 0.1, -1, 0.15, -1, 0.15]),
        limits,
        steering: { ratio: 16 },
        ...more,
      }).steeringWheel
    near(asked({})!.now.value, 0, { abs: 1e-12 })
    // four toes of 0.03° each, the zeros cancel: 16 · 0.03° · √(¼ + ¼ + ¼ + ¼)
    near(inDegrees(rad(standardUncertainty(asked({})!.now))), 16 * 0.03, { rel: 1e-9 })
    const held = asked({ steering: { ratio: 16, held: read(2, 0.5, 'held by eye') } })!
    near(inDegrees(rad(held.now.value)), 2, { abs: 1e-9 })
    near(inDegrees(rad(standardUncertainty(held.now))), Math.hypot(0.48, 0.5), { rel: 1e-9 })
    const { 'rear left toe': gone, ...rest } = readings([-0.4, 0.1, -0.4, 0.1, -1, 0.15, -1, 0.15])
    expect(gone).toBeDefined()
    expect(asked({ readings: rest })).toBeNull()
    const { steering: none, ...plain } = {
      axles: four(),
      readings: readings([-0.4, 0.1, -0.4, 0.1, -1, 0.15, -1, 0.15]),
      limits,
      steering: null,
    }
    expect(none).toBeNull()
    expect(moves(plain).steeringWheel).toBeNull()
  })
  const bad = (steering: MovesProblem['steering']) => () =>
    moves({
      axles: four(),
      readings: readings([-0.4, 0.1, -0.4, 0.1, -1, 0.15, -1, 0.15]),
      limits,
      ...(steering ? { steering } : {}),
    })
  refuses('bad-option', bad({ ratio: 0 }), 'steering.ratio')
  refuses('bad-option', bad({ ratio: Number.NaN }), 'steering.ratio')
  refuses('bad-limit', bad({ ratio: 16, limit: between(1, 1) }), 'steering.limit')
})

describe('what acts on both wheels, and other rear corners', () => {
  const framed = (at: number | null, more: Partial<CornersSetup> = {}): CornersSetup => ({
    end: 'front',
    left: { ...frontWheel(), adjusters: [], settings: {} },
    right: { ...frontWheel(), adjusters: [], settings: {} },
    both: set([subFrame(), at]),
    ...more,
  })
  const cambers = (left: number, right: number): MovesProblem['readings'] => ({
    'front left camber': read(left, 0.04, 'a'),
    'front right camber': read(right, 0.04, 'b'),
  })
  test('AD22 a cross value is mended by the sub-frame in one move, and what both sides lack alike is not', () => {
    const mended = moves({
      axles: [framed(0)],
      readings: cambers(-0.1, -0.7),
      limits: { 'front cross camber': between(-0.3, 0.3) },
    })
    // the left camber is the higher: the lower arms' pivots go to the left, out under the left wheel
    expect(
      mended.moves.map(({ side, hand }) => `${side} ${hand.amount.split(' ').slice(2).join(' ')}`),
    ).toEqual(['both to the left'])
    expect(mended.insideAfter).toBeGreaterThan(0.95)
    const [left, right] = sides.map((side) => {
      const one = mended.foreseen.find(({ name }) => name === `front ${side} camber`)!
      return one.after.value - one.now.value
    }) as [number, number]
    near(left, -right, { rel: 0.05 })
    const alike = moves({
      axles: [framed(0)],
      readings: cambers(-1.6, -1.6),
      limits: { 'front left camber': between(-1, 0), 'front right camber': between(-1, 0) },
    })
    expect(alike.moves).toEqual([])
    expect(alike.outOfReach.length).toBeGreaterThan(0)
  })
  test('AD6 AD10 a shifted sub-frame is foreseen exactly, and its mirror image is the shift the other way', () => {
    const setup = framed(mm(1))
    const found = moves({
      axles: [setup],
      readings: cambers(0.1, -0.7),
      limits: { 'front cross camber': between(-0.3, 0.3) },
    })
    const mirror = moves({
      axles: [framed(mm(-1))],
      readings: cambers(-0.7, 0.1),
      limits: { 'front cross camber': between(-0.3, 0.3) },
    })
    near(mirror.moves[0]!.to, -found.moves[0]!.to, { abs: 1e-12 })
    const to = found.moves[0]!.to
    for (const side of sides) {
      const sign = side === 'left' ? 1 : -1
      const at = (by: number) =>
        poseAt(mechanism(familyStrut, displacementOf(subFrame(), familyStrut, by)), still).camber
      const one = found.foreseen.find(({ name }) => name === `front ${side} camber`)!
      near(one.after.value - one.now.value, at(sign * to) - at(sign * mm(1)), { abs: 1e-12 })
    }
  })
  test('AD15 a semi-trailing arm takes an eccentric for toe and a wedge for camber', () => {
    const arm = (): WheelSetup => ({
      points: busArm,
      drive: still,
      adjusters: [
        eccentric('arm bolt', 'innerFront', { along: [1, 0, 0], throw: mm(6), sets: 'toe' }),
        wedge('camber'),
      ],
      settings: { 'arm bolt': 0, 'camber wedge': 0 },
    })
    const found = moves({
      axles: [{ end: 'rear', left: arm(), right: arm() }],
      readings: {
        'rear left camber': read(-2, 0.05, 'a'),
        'rear right camber': read(-1.2, 0.05, 'b'),
        'rear left toe': read(0.15, 0.03, 'c'),
        'rear right toe': read(0.6, 0.03, 'd'),
      },
      limits: {
        'rear left camber': between(-1.6, -0.8),
        'rear right camber': between(-1.6, -0.8),
        'rear left toe': between(0, 0.3),
        'rear right toe': between(0, 0.3),
      },
    })
    expect(found.moves.map(({ side, adjuster, job }) => `${side} ${adjuster.id} ${job}`)).toEqual([
      'left camber wedge camber',
      'right arm bolt toe',
    ])
    expect(found.insideAfter).toBeGreaterThan(0.95)
  })
  const asked = (setup: CornersSetup) => () =>
    moves({
      axles: [setup],
      readings: cambers(-0.1, -0.7),
      limits: { 'front cross camber': between(-0.3, 0.3) },
    })
  refuses('wrong-place', asked({ ...axle(), both: set([tieRod(), 0]) }), 'tie rod')
  refuses(
    'wrong-place',
    asked(framed(0, { left: { ...frontWheel(), ...set([subFrame(), 0]) } })),
    'sub-frame',
  )
  refuses(
    'no-such-point',
    asked({
      ...framed(0),
      left: wheel({}, longArms),
      right: { ...frontWheel(), points: rearLinks, adjusters: [] },
    }),
    'sub-frame',
  )
})
