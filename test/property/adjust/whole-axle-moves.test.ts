import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import {
  type Adjuster,
  type AdjusterSet,
  type Moves,
  type MovesProblem,
  moves,
  type WholeAxleSetup,
} from '../../../src/adjust/index.ts'
import {
  type AxleSettings,
  axlePoseAt,
  type Side,
  type SolidAxlePoints,
  sleeveTilt,
  solidAxle,
  type TwistBeam,
  twistBeamReadings,
} from '../../../src/linkage/index.ts'
import { standardUncertainty } from '../../../src/measure/index.ts'
import { deg, inDegrees, metre, mm, type Radian, rad } from '../../../src/quantity/index.ts'
import { law, near, refuses } from '../../support/law.ts'
import { between, read } from './axle-problem.ts'
import { tieRod } from './invented-corners.ts'
import {
  dragLink,
  linkedRear,
  set,
  sleeve,
  straight,
  tieRodOfAxle,
  tipper,
  tipperFront,
  vanBeam,
  wedge,
} from './whole-axles.ts'

const few = { draws: 500 }
const sides = ['left', 'right'] as const

type Settings = Readonly<Record<'left' | 'right' | 'both', Readonly<Record<string, number>>>>

/** Settings of an axle after moves. */
function standing(setup: WholeAxleSetup, found: Moves): Settings {
  const of = (on: 'left' | 'right' | 'both') => {
    const now = { ...setup[on]?.settings } as Record<string, number>
    for (const move of found.moves) if (move.side === on) now[move.adjuster.id] = move.to
    return now
  }
  return { left: of('left'), right: of('right'), both: of('both') }
}

/** The linkage's own settings, written down by hand from what each adjuster is. */
function byHand(setup: WholeAxleSetup, at: Settings): AxleSettings {
  const find = (on: 'left' | 'right' | 'both', kind: Adjuster['kind']) =>
    (setup[on]?.adjusters ?? []).filter((one) => one.kind === kind)
  const tilt = (side: Side) =>
    sleeveTilt(
      find(side, 'offset sleeve').map((one) => ({
        offset: (one as { tilt: Radian }).tilt,
        angle: rad(at[side][one.id]!),
      })),
    )
  const shim = (side: Side) => ({
    camber: rad(at[side]['camber wedge'] ?? 0),
    toe: rad(at[side]['toe wedge'] ?? 0),
  })
  // 1.5 mm pitch, left-and-right sleeves
  const rod = (id: string) => metre(0.003 * (at.both[id] ?? 0))
  const solid = 'location' in setup.axle
  return {
    shim: { left: shim('left'), right: shim('right') },
    ...(solid && setup.axle.left.kingpin ? { tilt: { left: tilt('left'), right: tilt('right') } } : {}),
    ...(solid && setup.axle.steering ? { tieRod: rod('tie rod'), dragLink: rod('drag link') } : {}),
  }
}

function exact(setup: WholeAxleSetup, at: Settings) {
  return axlePoseAt(solidAxle(setup.axle as SolidAxlePoints, byHand(setup, at)), setup.drive)
}

const limits: MovesProblem['limits'] = {
  'front left camber': between(0.4, 1.4),
  'front right camber': between(0.4, 1.4),
  'front left caster': between(3, 4.5),
  'front right caster': between(3, 4.5),
  'front total toe': between(0, 0.3),
}
const spread = { camber: 0.05, caster: 0.1, toe: 0.03 }
/** Camber, caster and toe of the left, then of the right wheel, degrees. */
function readings(values: readonly number[]): MovesProblem['readings'] {
  const out: Record<string, ReturnType<typeof read>> = {}
  sides.forEach((side, s) => {
    ;(['camber', 'caster', 'toe'] as const).forEach((angle, a) => {
      out[`front ${side} ${angle}`] = read(values[3 * s + a]!, spread[angle], `${side} ${angle}`)
    })
  })
  return out
}
const rear = { 'rear left toe': read(0, 0.02, 'rl'), 'rear right toe': read(0, 0.02, 'rr') }

const hundredths = (low: number, high: number) =>
  fc.integer({ min: Math.round(100 * low), max: Math.round(100 * high) }).map((n) => n / 100)
const anyTipper: fc.Arbitrary<MovesProblem> = fc
  .record({
    sleeves: fc.tuple(fc.integer({ min: -11, max: 12 }), fc.integer({ min: -11, max: 12 })),
    rods: fc.tuple(fc.integer({ min: -12, max: 12 }), fc.integer({ min: -12, max: 12 })),
    values: fc.tuple(
      hundredths(0, 1.8),
      hundredths(2.6, 4.9),
      hundredths(-0.5, 0.8),
      hundredths(0, 1.8),
      hundredths(2.6, 4.9),
      hundredths(-0.5, 0.8),
    ),
    heave: fc.integer({ min: -20, max: 20 }),
    roll: fc.integer({ min: -10, max: 10 }),
  })
  .map(({ sleeves, rods, values, heave, roll }) => ({
    axles: [
      {
        ...tipper(deg(15 * sleeves[0]), deg(15 * sleeves[1])),
        drive: { heave: mm(heave), roll: deg(roll / 10), drop: rad(0) },
        both: set([tieRodOfAxle(), rods[0] / 12], [dragLink(), rods[1] / 12]),
      },
    ],
    readings: { ...readings(values), ...rear },
    limits,
    steering: { ratio: 18, limit: between(-3, 3) },
  }))

describe('a solid axle', () => {
  law(
    'AD6 applied to the exact axle, the moves change every angle of both wheels by what was foreseen',
    anyTipper,
    (problem) => {
      const found = moves(problem, few)
      const setup = problem.axles[0] as WholeAxleSetup
      const still: Moves = { ...found, moves: [] }
      const [was, will] = [exact(setup, standing(setup, still)), exact(setup, standing(setup, found))]
      for (const side of sides)
        for (const angle of ['camber', 'caster', 'toe'] as const) {
          const one = found.foreseen.find(({ name }) => name === `front ${side} ${angle}`)!
          near(one.after.value - one.now.value, will[side][angle]! - was[side][angle]!, { abs: 1e-12 })
          if (one.path.length > 0) near(one.path.at(-1)!, one.after.value, { abs: 1e-12 })
        }
      return true
    },
    { runs: 25 },
  )
  law(
    'AD7 settings stay in range and on whole steps from where they were; AD8 moves are only offered when they are worth it',
    anyTipper,
    (problem) => {
      const found = moves(problem, few)
      for (const { adjuster, from, to } of found.moves) {
        const steps = (to - from) / adjuster.step
        near(steps, Math.round(steps), { abs: 1e-6 })
        expect(to).toBeGreaterThanOrEqual(adjuster.range[0] - 1e-9)
        expect(to).toBeLessThanOrEqual(adjuster.range[1] + 1e-9)
      }
      if (found.moves.length > 0)
        expect(
          found.reachableAfter >= found.reachableNow + 0.05 || found.reachableAfter > 2 * found.reachableNow,
        ).toBe(true)
      return true
    },
    { runs: 25 },
  )
  law(
    'AD9 sleeves before the tie rod, the tie rod before the drag link, and the steering wheel is held before each of the two',
    anyTipper,
    (problem) => {
      const list = moves(problem, few).moves
      const ranks = list.map(({ job }) => ['camber', 'toe', 'steering wheel'].indexOf(job))
      expect(ranks).toEqual(ranks.toSorted((a, b) => a - b))
      for (const { adjuster, before, side } of list) {
        expect(side === 'both').toBe(adjuster.kind === 'thread')
        expect(before === '').toBe(adjuster.kind === 'offset sleeve')
      }
      return true
    },
    { runs: 25 },
  )
  test('AD20 a sleeve is found on the far side of its circle, where a small turn either way only makes it worse', () => {
    // camber 1.5° too high: the sleeve stands at its most outward, so it must go half round
    const problem: MovesProblem = {
      axles: [tipper(0, deg(90))],
      readings: { ...readings([2.1, 3.7, 0.05, 0.9, 3.7, 0.05]), ...rear },
      limits,
    }
    const found = moves(problem)
    const [first] = found.moves
    expect(first).toMatchObject({ side: 'left', job: 'camber' })
    const camber = found.foreseen.find(({ name }) => name === 'front left camber')!
    // r·cos: from +0.75° to r·cos of where it ends
    // the drag link holds the knuckle while its pin leans, which turns it a little about the pin
    near(inDegrees(rad(camber.after.value - camber.now.value)), 0.75 * (Math.cos(first!.to) - 1), {
      abs: 0.06,
    })
    expect(Math.abs(inDegrees(rad(first!.to)))).toBeGreaterThan(110)
    expect(found.insideAfter).toBeGreaterThan(0.95)
  })
  test('AD20 brute force over all turns of a splined sleeve finds nothing surer', () => {
    const splined = sleeve({ step: deg(90) })
    const setup: WholeAxleSetup = {
      ...tipper(),
      left: set([splined, 0]),
      right: set([splined, deg(90)]),
    }
    const problem: MovesProblem = {
      axles: [setup],
      readings: { ...readings([1.75, 3.1, 0.15, 0.9, 3.7, 0.0]), ...rear },
      limits,
    }
    const found = moves(problem)
    expect(
      found.moves.filter(({ side }) => side === 'left').map(({ to }) => Math.round(inDegrees(rad(to)))),
    ).toEqual([90])
    // r·cos of the turn on camber, r·sin on caster: of the four positions only this one leaves both inside
    const inside = [-90, 0, 90, 180].filter((turn) => {
      const camber = 1.75 + 0.75 * (Math.cos(deg(turn)) - 1)
      const caster = 3.1 + 0.75 * Math.sin(deg(turn))
      return camber > 0.5 && camber < 1.3 && caster > 3.2 && caster < 4.3
    })
    expect(inside).toEqual([90])
  })
  test('AD12 the reach of a sleeve ends where its circle does', () => {
    const found = moves({
      axles: [tipper(0, 0)],
      readings: { ...readings([3.4, 3.7, 0.1, 0.9, 3.7, 0.1]), ...rear },
      limits,
    })
    expect(found.outOfReach.map(({ reading }) => reading)).toEqual(['front left camber'])
    // from +0.75° to −0.75°: 1.5° of reach; the kingpin's own lean makes it a hundredth less or more
    near(inDegrees(rad(found.outOfReach[0]!.by)), 3.4 - 1.5 - 1.4, { abs: 0.02 })
    expect(found.outOfReach[0]!.mayBe).toContain('bent axle or beam')
    expect(found.outOfReach[0]!.mayBe).not.toContain('bent lower arm')
  })
  test('AD24 total toe is the tie rod’s, the steering wheel the drag link’s', () => {
    const asked = (left: number, right: number, more: Partial<MovesProblem>) =>
      moves({
        axles: [tipper(0, deg(90))],
        readings: { ...readings([0.9, 3.7, left, 0.9, 3.7, right]), ...rear },
        limits,
        ...more,
      })
    const rods = (found: Moves) => found.moves.map(({ adjuster }) => adjuster.id)
    // total toe out, nothing asked of the steering wheel
    expect(rods(asked(0.3, 0.25, {}))).toEqual(['tie rod'])
    // total toe in order, the wheel 4.5° off
    const centred = { steering: { ratio: 18, limit: between(-1.5, 1.5) } }
    const off = asked(0.35, -0.15, centred)
    expect(rods(off)).toEqual(['drag link'])
    near(inDegrees(rad(off.steeringWheel!.now.value)), 4.5, { abs: 1e-9 })
    near(inDegrees(rad(off.steeringWheel!.after.value)), 0, { abs: 0.7 })
    // both
    const both = asked(0.6, 0.1, centred)
    expect(rods(both)).toEqual(['tie rod', 'drag link'])
    expect(both.insideAfter).toBeGreaterThan(0.95)
  })
  test('AD26 a sleeve that nobody has looked at gets no move, and is named', () => {
    const found = moves({
      axles: [tipper(null, 0)],
      readings: { ...readings([2.1, 3.7, 0.05, 0.9, 3.7, 0.05]), ...rear },
      limits,
    })
    expect(found.moves).toEqual([])
    expect(found.readFirst.map(({ end, side, adjuster }) => `${end} ${side} ${adjuster.id}`)).toEqual([
      'front left sleeve',
    ])
    expect(found.sentence).toMatch(/See how the kingpin sleeve, left front, is fitted/)
    expect(found.sentence).not.toMatch(/No move/)
    // not "no adjuster moves it": one does
    expect(found.outOfReach).toEqual([])
  })
})

describe('wedges and links of rear axles', () => {
  const beamSetup = (left: AdjusterSet, right: AdjusterSet): WholeAxleSetup => ({
    end: 'rear',
    axle: vanBeam,
    drive: straight,
    left,
    right,
  })
  const wedges = (camber: number | null = 0, toe: number | null = 0) =>
    set([wedge('camber'), camber], [wedge('toe'), toe])
  const rearLimits: MovesProblem['limits'] = {
    'rear left camber': between(-1.8, -0.8),
    'rear right camber': between(-1.8, -0.8),
    'rear left toe': between(0, 0.3),
    'rear right toe': between(0, 0.3),
    thrust: between(-0.1, 0.1),
  }
  const rearRead = (values: readonly number[]): MovesProblem['readings'] => ({
    'rear left camber': read(values[0]!, 0.05, 'a'),
    'rear left toe': read(values[1]!, 0.03, 'b'),
    'rear right camber': read(values[2]!, 0.05, 'c'),
    'rear right toe': read(values[3]!, 0.03, 'd'),
  })
  law(
    'AD23 moves of a twist beam take wedges that can be had, and change the exact beam by what was foreseen',
    fc.tuple(hundredths(-2.4, -0.3), hundredths(-0.5, 0.8), hundredths(-2.4, -0.3), hundredths(-0.5, 0.8)),
    (values) => {
      const drive = { heave: mm(12), roll: deg(1.2), drop: rad(0) }
      const setup = { ...beamSetup(wedges(), wedges(deg(0.5), deg(-0.25))), drive }
      // hubs 2 · 0.73 m apart and level at design: left wheel up by half of that times sin roll
      const half = 0.73 * Math.sin(drive.roll)
      const travel = { left: metre(0.012 + half), right: metre(0.012 - half) }
      const found = moves({ axles: [setup], readings: rearRead(values), limits: rearLimits }, few)
      const still: Moves = { ...found, moves: [] }
      const pose = (of: Moves) =>
        twistBeamReadings(
          { ...(setup.axle as TwistBeam), shim: byHand(setup, standing(setup, of)).shim! },
          travel,
        )
      const [was, will] = [pose(still), pose(found)]
      for (const side of sides)
        for (const angle of ['camber', 'toe'] as const) {
          const one = found.foreseen.find(({ name }) => name === `rear ${side} ${angle}`)!
          near(one.after.value - one.now.value, will[side][angle] - was[side][angle], { abs: 1e-12 })
        }
      for (const { adjuster, to } of found.moves)
        expect([0, 0.25, 0.5, 0.75, 1]).toContain(
          Number(Math.abs(inDegrees(rad(to))).toFixed(6)) + adjuster.play,
        )
      return true
    },
    { runs: 25 },
  )
  test('AD13 what comes in pieces or rests in splines is not half a step off; its play counts', () => {
    const added = (setup: WholeAxleSetup, name: 'rear left camber' | 'front left camber') => {
      const found = moves({
        axles: [setup],
        readings: { [name]: read(name === 'rear left camber' ? -2.2 : 2.1, 0.05, 'a') },
        limits: {
          'rear left camber': between(-1.6, -0.8),
          'front left camber': between(0.4, 1.4),
        },
      })
      expect(found.moves.length).toBe(1)
      const { now, after: then } = found.foreseen[0]!
      return {
        spread: Math.sqrt(standardUncertainty(then) ** 2 - standardUncertainty(now) ** 2),
        to: found.moves[0]!.to,
      }
    }
    near(added(beamSetup(wedges(), wedges()), 'rear left camber').spread, 0, { abs: 1e-9 })
    const loose = set([wedge('camber', { play: deg(0.06) }), 0])
    near(added(beamSetup(loose, wedges()), 'rear left camber').spread, deg(0.06) / Math.sqrt(3), {
      rel: 1e-3,
    })
    // a sleeve that may slip by 6° about its turn: r · sin of the turn · 6° over √3
    const slack = { ...tipper(), left: set([sleeve({ play: deg(6) }), 0]), right: set(), both: set() }
    const one = added(slack, 'front left camber')
    near(one.spread, (deg(0.75) * Math.abs(Math.sin(one.to)) * deg(6)) / Math.sqrt(3), { rel: 0.1 })
  })
  test('AD13 a slipping sleeve at an angle: camber by r·sin, caster by r·cos, and of their sum both with their signs', () => {
    // all four positions 90° apart, from 45°: wherever it ends, sine and cosine are alike in size
    const splined = sleeve({ play: deg(6), step: deg(90), range: [deg(-135), deg(135)] })
    const found = moves({
      axles: [{ ...tipper(), left: set([splined, deg(45)]), right: set(), both: set() }],
      readings: { 'front left camber': read(2.1, 0.01, 'a'), 'front left caster': read(3.5, 0.01, 'b') },
      limits: { 'front left camber': between(0.4, 1.4), 'front left caster': between(3, 4) },
    })
    expect(found.moves.map(({ to }) => Math.round(inDegrees(rad(to))))).toEqual([135])
    const effects = found.foreseen.map(({ after: then }) => then.parts.at(-1)!.effect)
    const one = (deg(0.75) * deg(6)) / Math.sqrt(3)
    // caster leans the steered knuckle too, a tenth of it
    near(effects[0]!, -one * Math.sin(deg(135)), { rel: 0.2 })
    near(effects[1]!, one * Math.cos(deg(135)), { rel: 0.02 })
  })
  test('AD26 a sleeve that nobody has looked at is not turned from where it is only thought to stand', () => {
    const found = moves({
      axles: [tipper(null, 0)],
      readings: { 'front left camber': read(1.3, 0.05, 'a'), 'front right camber': read(0.6, 0.05, 'b') },
      limits: { 'front cross camber': between(-0.3, 0.3) },
    })
    expect(found.moves).toEqual([])
    expect(found.readFirst.map(({ side }) => side)).toEqual(['left'])
  })
  test('AD24 a drag link alone does not mend total toe', () => {
    const found = moves({
      axles: [{ ...tipper(0, 0), both: set([dragLink(), 0]) }],
      readings: readings([0.9, 3.7, 0.3, 0.9, 3.7, 0.25]),
      limits: { 'front total toe': between(0, 0.5) },
    })
    expect(found.moves.filter(({ adjuster }) => adjuster.id === 'drag link')).toEqual([])
  })
  test('AD26 toe that is out of reach is said to be, whether or not a sleeve has been looked at', () => {
    const found = moves({
      axles: [{ ...tipper(null, 0), both: set() }],
      readings: readings([0.9, 3.7, 0.6, 0.9, 3.7, 0.6]),
      limits: { 'front total toe': between(0, 0.3) },
    })
    expect(found.outOfReach.map(({ reading }) => reading)).toEqual(['front total toe'])
  })
  test('AD26 a sleeve that nobody has looked at stays where the other wheel’s could do it', () => {
    const found = moves({
      axles: [tipper(null, 0)],
      readings: { 'front left camber': read(0.6, 0.05, 'a'), 'front right camber': read(1.3, 0.05, 'b') },
      limits: { 'front cross camber': between(-0.3, 0.3) },
    })
    expect(found.moves.length).toBeGreaterThan(0)
    expect(found.moves.every(({ side }) => side === 'right')).toBe(true)
  })
  test('AD26 a wedge that nobody has seen is named, not swapped', () => {
    const found = moves({
      axles: [beamSetup(wedges(null), wedges())],
      readings: rearRead([-2.2, 0.1, -1.3, 0.1]),
      limits: { 'rear left camber': between(-1.6, -0.8) },
    })
    expect(found.moves).toEqual([])
    expect(found.readFirst.map(({ side, adjuster }) => `${side} ${adjuster.id}`)).toEqual([
      'left camber wedge',
    ])
  })
  test('AD23 at another height and lean a wedge still adds its angle, nearly', () => {
    const read = (setup: WholeAxleSetup) =>
      moves(
        {
          axles: [setup],
          readings: rearRead([-2.2, 0.1, -1.3, 0.1]),
          limits: { 'rear left camber': between(-1.4, -1) },
        },
        few,
      )
    const found = read({
      ...beamSetup(wedges(), wedges()),
      drive: { heave: mm(30), roll: deg(1.5), drop: rad(0) },
    })
    expect(found.moves.map(({ side, adjuster }) => `${side} ${adjuster.id}`)).toEqual(['left camber wedge'])
    const camber = found.foreseen.find(({ name }) => name === 'rear left camber')!
    near(camber.after.value - camber.now.value, found.moves[0]!.to, { rel: 0.01 })
  })
  test('AD9 a thrust line is set behind before anything is set in front, and the front toes follow it', () => {
    const found = moves({
      axles: [tipper(0, deg(90)), beamSetup(wedges(), wedges())],
      readings: {
        ...readings([0.9, 3.7, 0.1, 0.9, 3.7, 0.1]),
        ...rearRead([-1.3, 0.55, -1.3, -0.1]),
      },
      limits: {
        ...limits,
        ...rearLimits,
        'front left toe to thrust': between(-0.05, 0.2),
        'front right toe to thrust': between(-0.05, 0.2),
      },
      steering: { ratio: 18 },
    })
    const ends = found.moves.map(({ end }) => end)
    expect(ends.lastIndexOf('rear')).toBeLessThan(
      ends.indexOf('front') < 0 ? ends.length : ends.indexOf('front'),
    )
    expect(found.moves.filter(({ end }) => end === 'rear').map(({ job }) => job)).toEqual(['toe', 'toe'])
    expect(found.insideAfter).toBeGreaterThan(0.9)
    near(inDegrees(rad(found.foreseen.find(({ name }) => name === 'thrust')!.after.value)), 0, { abs: 0.1 })
    // before: 0.325° of thrust × 18; after: what is left of thrust and toes
    near(inDegrees(rad(found.steeringWheel!.now.value)), -18 * 0.325, { abs: 1e-9 })
    expect(Math.abs(found.steeringWheel!.after.value)).toBeLessThan(deg(2))
  })
  test('AD24 threads of an axle’s locating links turn it: thrust without camber', () => {
    const left = tieRod({ id: 'left link', name: 'left link', length: 'link0', sleeve: true })
    const found = moves({
      axles: [
        {
          end: 'rear',
          axle: linkedRear,
          drive: straight,
          left: set(),
          right: set(),
          both: set([left, 0]),
        },
      ],
      readings: rearRead([-0.2, 0.45, -0.2, -0.15]),
      limits: { thrust: between(-0.1, 0.1) },
    })
    expect(found.moves.map(({ side, adjuster, job }) => `${side} ${adjuster.id} ${job}`)).toEqual([
      'both left link toe',
    ])
    // thrust 0.3° to the right: the left wheel stands too far forward, so the link ahead of it must push: longer
    expect(found.moves[0]!.hand.amount).toMatch(/longer/)
    near(inDegrees(rad(found.foreseen.find(({ name }) => name === 'thrust')!.after.value)), 0, { abs: 0.03 })
  })
  const wrong = (setup: WholeAxleSetup) => () =>
    moves({ axles: [setup], readings: rearRead([-1, 0, -1, 0]), limits: rearLimits }, few)
  const rearAxle = (more: Partial<WholeAxleSetup>): WholeAxleSetup => ({
    end: 'rear',
    axle: linkedRear,
    drive: straight,
    left: set(),
    right: set(),
    ...more,
  })
  refuses('no-such-point', wrong(rearAxle({ both: set([tieRodOfAxle(), 0]) })), 'tie rod')
  refuses('no-such-point', wrong(rearAxle({ left: set([sleeve(), 0]) })), 'sleeve')
  refuses('no-such-point', wrong(beamSetup(set([sleeve(), 0]), set())), 'sleeve')
  refuses(
    'no-such-point',
    wrong(rearAxle({ axle: tipperFront, both: set([tieRod({ length: 'link0' }), 0]) })),
    'tie rod',
  )
  refuses('wrong-place', wrong(rearAxle({ both: set([wedge('toe'), 0]) })), 'toe wedge')
  refuses('wrong-place', wrong(rearAxle({ axle: tipperFront, left: set([dragLink(), 0]) })), 'drag link')
  refuses('repeated-id', wrong(rearAxle({ left: set([wedge('toe'), 0], [wedge('toe'), 0]) })), 'toe wedge')
})
