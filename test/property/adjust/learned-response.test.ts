import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import {
  type Adjuster,
  displacementOf,
  type LearnedResponse,
  learnMove,
  moves,
  priorResponse,
  type RecordedMove,
  type WheelSetup,
} from '../../../src/adjust/index.ts'
import { mechanism, poseAt, sumOfDisplacements } from '../../../src/linkage/index.ts'
import { standardUncertainty } from '../../../src/measure/index.ts'
import { deg, mm } from '../../../src/quantity/index.ts'
import { law, near, refuses } from '../../support/law.ts'
import { axle, read, readings, sheet, still, wheel } from './axle-problem.ts'
import { eccentric, familyStrut, longArms, rearLinks, tieRod, tiltedAxes } from './invented-corners.ts'
import { jittered, scatterOverPrior } from './response-scatter.ts'
import { busArm } from './whole-axles.ts'

const angles = ['camber', 'caster', 'toe'] as const
const typical = { known: 'typical', source: 'port unit 07' } as const

/** What a wheel's angles do between two settings, by the linkage alone. */
function change(setup: WheelSetup, from: Record<string, number>, to: Record<string, number>) {
  const at = (settings: Record<string, number>) =>
    poseAt(
      mechanism(
        setup.points,
        sumOfDisplacements(
          setup.adjusters.map((one) => displacementOf(one, setup.points, settings[one.id] ?? 0)),
        ),
      ),
      setup.drive,
    )
  const [before, after] = [at(from), at(to)]
  return angles.map((angle) => after[angle]! - before[angle]!)
}

const recorded = (
  values: readonly number[],
  from: Record<string, number>,
  to: Record<string, number>,
  spread: number,
): RecordedMove => ({
  from,
  to,
  change: Object.fromEntries(
    angles.map((angle, a) => [angle, { ...read(0, spread, angle), value: values[a]! }]),
  ),
})

describe('AD16 learned response', () => {
  const base = wheel()
  const prior = priorResponse(base, typical)

  test('AD16 before any move there is no correction, and the spread is wider for typical points', () => {
    expect(prior.mean.every((value) => value === 0)).toBe(true)
    const measured = priorResponse(base, { ...typical, known: 'measured' })
    prior.covariance.forEach((value, i) => {
      expect(value).toBeGreaterThanOrEqual(measured.covariance[i]!)
    })
  })
  law(
    'AD16 a zero move changes nothing',
    fc.double({ min: -1e-3, max: 1e-3, noNaN: true }),
    (value) => {
      const same = learnMove(prior, base, recorded([value, value, value], { front: 0 }, { front: 0 }, 0.01))
      expect(same).toBe(prior)
      return true
    },
    { runs: 20 },
  )
  test('AD16 a move without a reading changes nothing', () => {
    expect(learnMove(prior, base, { from: { front: 0 }, to: { front: 0.3 }, change: {} })).toBe(prior)
  })
  test('AD16 a precise recorded move pulls the response to what was seen', () => {
    // the vehicle answers 30 % more than its points say; play and step nearly nothing
    const sharp: WheelSetup = {
      ...base,
      adjusters: base.adjusters.map((one) => ({ ...one, step: 1e-9, play: 0 }) as Adjuster),
    }
    const from = { front: 0 }
    const to = { front: deg(20) }
    const seen = change(sharp, from, to).map((value) => 1.3 * value)
    const learned = learnMove(priorResponse(sharp, typical), sharp, recorded(seen, from, to, 0.0005))
    const stroke = mm(7) * Math.sin(deg(20))
    angles.forEach((_, a) => {
      const model = change(sharp, from, to)[a]!
      near(model + learned.mean[3 * a]! * stroke, seen[a]!, { abs: deg(0.001) })
    })
    expect(learned.moves).toBe(1)
    // and the other adjusters' slopes are left as they were
    expect(learned.mean[1]).toBe(0)
    expect(learned.covariance[10 * 1]).toBe(prior.covariance[10 * 1])
  })
  test('AD16 a vague recorded move hardly moves it, and no move ever widens a slope', () => {
    const from = { front: 0, rear: 0 }
    const to = { front: deg(20), rear: deg(-15) }
    const seen = change(base, from, to).map((value) => 1.3 * value)
    const vague = learnMove(prior, base, recorded(seen, from, to, 5))
    vague.mean.forEach((value, i) => {
      expect(Math.abs(value)).toBeLessThan(0.05 * Math.sqrt(prior.covariance[10 * i]!))
    })
    const sharp = learnMove(prior, base, recorded(seen, from, to, 0.01))
    for (const one of [vague, sharp])
      one.mean.forEach((_, i) => {
        expect(one.covariance[10 * i]!).toBeLessThanOrEqual(prior.covariance[10 * i]! * (1 + 1e-12))
      })
  })
  test('AD16 the order of recorded moves does not matter', () => {
    const first = recorded([0.002, 0.004, -0.001], { front: 0 }, { front: deg(25) }, 0.03)
    // both turn the front washer: what the first has taught is part of what the second expects
    const second = recorded(
      [0.001, -0.003, 0.002],
      { front: deg(25), rear: 0 },
      { front: deg(5), rear: deg(20), 'tie rod': 0.25 },
      0.03,
    )
    const one = learnMove(learnMove(prior, base, first), base, second)
    const other = learnMove(learnMove(prior, base, second), base, first)
    one.mean.forEach((value, i) => {
      near(other.mean[i]!, value, { abs: 1e-9 })
    })
    one.covariance.forEach((value, i) => {
      near(other.covariance[i]!, value, { abs: 1e-9 })
    })
  })
  test('AD16 moves recorded on a corner whose points were wrong foresee the next move better', () => {
    let [before, after] = [0, 0]
    for (let seed = 1; seed <= 12; seed++) {
      const truth = { ...base, points: jittered(longArms, 0.012, seed) }
      let learned = prior
      const steps: [Record<string, number>, Record<string, number>][] = [
        [{ front: 0, rear: 0, 'tie rod': 0 }, { front: deg(20) }],
        [{ front: deg(20), rear: 0, 'tie rod': 0 }, { rear: deg(-20) }],
        [{ front: deg(20), rear: deg(-20), 'tie rod': 0 }, { 'tie rod': 1 }],
      ]
      for (const [from, to] of steps)
        learned = learnMove(learned, base, recorded(change(truth, from, { ...from, ...to }), from, to, 0.01))
      const [from, to] = [
        { front: 0, rear: 0, 'tie rod': 0 },
        { front: deg(-25), rear: deg(10), 'tie rod': -0.5 },
      ]
      const seen = change(truth, from, to)
      const model = change(base, from, to)
      const strokes = [mm(7) * Math.sin(deg(-25)), mm(7) * Math.sin(deg(10)), -0.5 * mm(1.5)]
      angles.forEach((_, a) => {
        const taught = strokes.reduce((sum, stroke, j) => sum + learned.mean[3 * a + j]! * stroke, 0)
        before += (seen[a]! - model[a]!) ** 2
        after += (seen[a]! - model[a]! - taught) ** 2
      })
    }
    expect(Math.sqrt(after)).toBeLessThan(0.35 * Math.sqrt(before))
  })
  test('AD16 the moves use what was learned: twice the response, half the turn, less spread', () => {
    const sharp: WheelSetup = {
      ...base,
      adjusters: base.adjusters.map((one) => ({ ...one, step: 1e-4, play: 0 }) as Adjuster),
    }
    const problem = (response: LearnedResponse | null) => ({
      axles: [axle(response ? { ...sharp, response } : sharp, sharp)],
      readings: readings([-0.5, 3.2, 0.4, -0.5, 3.2, 0.1]),
      limits: { 'front left toe': sheet['front left toe']! },
    })
    const start = priorResponse(sharp, { ...typical, known: 'typical' })
    const from = { 'tie rod': 0 }
    const to = { 'tie rod': 1 }
    const seen = change(sharp, from, to).map((value) => 2 * value)
    const learned = learnMove(start, sharp, recorded(seen, from, to, 0.0001))
    const turn = (response: LearnedResponse | null) => moves(problem(response)).moves[0]!.to
    near(turn(learned) / turn(null), 0.5, { abs: 0.01 })
    const toe = moves(problem(learned)).foreseen.find((one) => one.name === 'front left toe')!
    near(toe.after.value, deg(0.1), { abs: deg(0.002) })
    near(
      toe.after.value - toe.now.value,
      2 * change(sharp, { 'tie rod': 0 }, { 'tie rod': turn(learned) })[2]!,
      { rel: 0.01 },
    )
    const spread = (response: LearnedResponse) =>
      standardUncertainty(
        moves(problem(response)).foreseen.find((one) => one.name === 'front left toe')!.after,
      )
    expect(spread(learned)).toBeLessThan(spread(start))
  })
  test('AD16 one response shared by both sides is one error: it cancels in the difference', () => {
    const pair = (left: LearnedResponse, right: LearnedResponse) =>
      moves({
        axles: [axle({ ...base, response: left }, { ...base, response: right })],
        readings: readings([-1.6, 3.2, 0.1, -1.6, 3.2, 0.1]),
        limits: sheet,
      })
    const cross = (found: ReturnType<typeof pair>) =>
      standardUncertainty(found.foreseen.find((one) => one.name === 'front cross camber')!.after)
    const shared = pair(prior, prior)
    const apart = pair(prior, { ...prior, source: 'the other side' })
    expect(shared.moves.length).toBeGreaterThan(3)
    expect(cross(shared)).toBeLessThan(cross(apart))
  })
  test('AD16 a five-link wheel learns camber and toe only', () => {
    const rear: WheelSetup = {
      points: rearLinks,
      drive: still,
      adjusters: [eccentric('toe bolt', 'inner4')],
      settings: {},
    }
    const learned = priorResponse(rear, typical)
    expect(learned.angles).toEqual(['camber', 'toe'])
    const after = learnMove(learned, rear, {
      from: { 'toe bolt': 0 },
      to: { 'toe bolt': 0.2 },
      change: { toe: read(0.3, 0.02, 'toe') },
    })
    expect(after.mean[1]).not.toBe(0)
  })
  refuses(
    'wrong-length',
    () => learnMove({ ...prior, mean: [0] }, base, recorded([0, 0, 0], { front: 0 }, { front: 0.1 }, 0.01)),
    'port unit 07',
  )
  refuses(
    'setting-out-of-range',
    () => learnMove(prior, base, recorded([0, 0, 0], { front: 0 }, { front: 4 }, 0.01)),
    'front',
  )
})

describe('AD17 prior of a response', () => {
  const setups: Record<string, WheelSetup> = {
    'upper eccentrics': wheel(),
    'upper eccentrics, tilted axes': wheel({}, tiltedAxes),
    'lower eccentrics': {
      ...wheel({}),
      adjusters: [eccentric('f', 'lowerFrontInner'), eccentric('r', 'lowerRearInner'), tieRod()],
    },
    strut: {
      points: familyStrut,
      drive: still,
      adjusters: [
        {
          kind: 'slotted bolt',
          id: 'slot',
          name: 'slot',
          turns: 'strut',
          pivot: [0, 0.64, 0.29],
          axis: [-1, 0, 0],
          boltSpacing: mm(60),
          range: [mm(-2), mm(2)],
          step: mm(0.25),
          play: mm(0),
          seenFrom: 'front',
        },
        tieRod(),
      ],
      settings: {},
    },
    'five-link': {
      points: rearLinks,
      drive: still,
      adjusters: [eccentric('camber', 'inner2'), eccentric('toe', 'inner4')],
      settings: {},
    },
    'semi-trailing arm': {
      points: busArm,
      drive: still,
      adjusters: [
        eccentric('front', 'innerFront', { along: [0, 0, 1] }),
        eccentric('rear', 'innerRear', { along: [1, 0, 0] }),
      ],
      settings: {},
    },
  }
  for (const [name, setup] of Object.entries(setups))
    for (const [known, spread] of [
      ['typical', 0.015],
      ['measured', 0.003],
    ] as const)
      test(`AD17 ${name}: points off by ${1000 * spread} mm stay within the ${known} prior, which is not absurdly wide`, () => {
        const ratios = scatterOverPrior(setup, known, spread, 80)
        expect(Math.max(...ratios)).toBeLessThan(1.2)
        expect(Math.max(...ratios)).toBeGreaterThan(0.3)
      })
})
