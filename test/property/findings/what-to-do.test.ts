import { describe, expect, test } from 'vitest'
import {
  beforeOrdering,
  type Findings,
  type FindingsProblem,
  type NextCheck,
  rankSuspects,
  type Suspect,
  wearAnswers,
} from '../../../src/findings/index.ts'
import { normal } from '../../../src/measure/index.ts'
import { coilLower, problemOf, strut, torsionBar } from './invented-problem.ts'

const degree = Math.PI / 180
const entropy = ({ groups }: Findings): number =>
  -groups
    .flatMap(({ suspects }) => suspects)
    .reduce((sum, { posterior: p }) => sum + (p > 0 ? p * Math.log(p) : 0), 0)
const worth = ({ gain, minutes }: NextCheck): number => gain / minutes

describe('what to check next', () => {
  const bush = { body: { upperFrontInner: [0, -0.003, 0] as const } }
  const problem = problemOf(coilLower, { left: bush, spread: 0.2 * degree })
  const answer = rankSuspects(problem)
  test('FI11 the most telling for its minutes is first, and what was done is not asked again', () => {
    const { nextChecks } = answer
    expect(nextChecks.length).toBeGreaterThan(3)
    for (let i = 1; i < nextChecks.length; i++)
      expect(worth(nextChecks[i]!)).toBeLessThanOrEqual(worth(nextChecks[i - 1]!))
    for (const { gain } of nextChecks) expect(gain).toBeLessThanOrEqual(entropy(answer))
    const [first] = nextChecks.filter(({ check }) => check === 'lever at the bush')
    const [wheel, joint] = first!.at.split(', ')
    const done: FindingsProblem = {
      ...problem,
      checks: [
        {
          check: 'lever at the bush',
          wheel: wheel as 'front left',
          joint: joint!,
          part: null,
          found: ['nothing'],
        },
      ],
    }
    const after = rankSuspects(done).nextChecks
    expect(after.some(({ check, at }) => check === first!.check && at === first!.at)).toBe(false)
  })
  test('FI11 the gain is what entropy drops by, on average over its outcomes', () => {
    const check = answer.nextChecks.find((one) => one.check === 'lever at the bush')!
    const [wheel, joint] = check.at.split(', ')
    const with_ = (found: string): Findings =>
      rankSuspects({
        ...problem,
        checks: [
          { check: check.check, wheel: wheel as 'front left', joint: joint!, part: null, found: [found] },
        ],
      })
    const belief = answer.groups
      .flatMap(({ suspects }) => suspects)
      .filter(
        ({ suspect: { kind, side, at } }) =>
          kind === 'collapsed bush' && at === joint && wheel === `front ${side}`,
      )
      .reduce((sum, { posterior }) => sum + posterior, 0)
    // 0.75 and 0.05: how often levering shows a torn bush, and a sound one as torn (check-chances.ts)
    const shows = 0.75 * belief + 0.05 * (1 - belief)
    const left = shows * entropy(with_('torn')) + (1 - shows) * entropy(with_('nothing'))
    expect(Math.abs(entropy(answer) - left - check.gain)).toBeLessThan(0.03)
  })
  test('FI11 a reading that was not taken is worth more than the same one again', () => {
    const middle = { 'strut-slot': 0, 'top-plate': 0, 'sub-frame-shift': 0 }
    const leaning = problemOf(strut, {
      left: { spin: [-0.03, 0, 0] },
      spread: 0.1 * degree,
      settings: { left: middle, right: middle, both: middle },
    })
    // only camber is read: a bent knuckle, a bent arm or a shifted tower
    const rest = Object.fromEntries(
      Object.entries(leaning.readings).filter(([name]) => name.endsWith('camber')),
    )
    const gain = (p: FindingsProblem): number =>
      rankSuspects(p).nextChecks.find(({ check }) => check.includes('SAI'))?.gain ?? 0
    const unread = gain({ ...leaning, readings: rest })
    expect(unread).toBeGreaterThan(0.05)
    expect(unread).toBeGreaterThan(gain(leaning))
  })
})

describe('before ordering', () => {
  const suspect: Suspect = {
    kind: 'worn ball joint',
    axle: 'front',
    side: 'left',
    at: 'lower-ball-joint-stud',
  }
  const sure = (posterior: number): Findings => {
    const ranked = (one: Suspect, p: number) => ({
      suspect: one,
      posterior: p,
      size: { value: 0.001, spread: 0.0002, unit: 'm' as const },
      speaksFor: [],
      speaksAgainst: [],
      ghost: { left: null, right: null },
    })
    const other: Suspect = { kind: 'out of adjustment', axle: null, side: null, at: null }
    return {
      groups: [
        { suspects: [ranked(suspect, posterior)], posterior },
        { suspects: [ranked(other, 1 - posterior)], posterior: 1 - posterior },
      ],
      pairs: [],
      visible: [],
      unexplained: [],
      nextChecks: [{ check: 'rock at 12 and 6', at: 'front left', gain: 0.4, minutes: 3, parts: [suspect] }],
      cannotTell: false,
    }
  }
  const problem = problemOf(coilLower)
  test('FI12 a part is ordered when in vain costs less than waiting', () => {
    expect(beforeOrdering(problem, sure(0.9))[0]).toMatchObject({
      part: 'lower-ball-joint',
      side: 'left',
      advice: 'order now',
    })
    const unsure = beforeOrdering(problem, sure(0.6))[0]!
    expect(unsure.advice).toBe('check first')
    expect(unsure.checks[0]!.check).toBe('rock at 12 and 6')
    expect(unsure.lossIfOrdered).toBeCloseTo(1.2, 9)
    expect(unsure.lossIfNot).toBeCloseTo(0.6, 9)
    expect(beforeOrdering(problem, sure(0.02))[0]!.advice).toBe('do not order')
  })
  test('FI12 a cheap part and a vehicle that is needed turn the advice', () => {
    const costs = { 'lower-ball-joint': { wrongPart: 10, waiting: 80 } }
    expect(beforeOrdering(problem, sure(0.3), costs)[0]!.advice).toBe('order now')
  })
  test('FI12 suspects that one part mends count together, springs come in pairs', () => {
    const answer = rankSuspects(
      problemOf(strut, {
        left: { length: { lowerFront: -0.009, lowerRear: -0.009 } },
        spread: 0.05 * degree,
      }),
    )
    const arm = beforeOrdering(problemOf(strut), answer).find(
      ({ part, side }) => part === 'lower-arm' && side === 'left',
    )!
    expect(arm.suspects.map(({ kind }) => kind).sort()).toEqual(['bent lower arm', 'wrong part'])
    const spring = beforeOrdering(problemOf(strut), answer).find(({ part }) => part === 'coil')!
    expect(spring.inPairs).toBe(true)
  })
})

describe('wear', () => {
  test('FI13 what passes an inspection may be unable to hold an alignment', () => {
    const worn = (swing: number, limit: number | null): ReturnType<typeof wearAnswers>[number] =>
      wearAnswers({
        ...problemOf(torsionBar),
        play: [
          { wheel: 'front left', joint: 'tie-rod-end-stud', swing: normal(0.00005, 'dial', swing), limit },
        ],
      })[0]!
    // a quarter of an inch at the tread passes one country's rule; 1.5 mm at the rod's end stays below such a limit
    const passing = worn(0.0015, 0.0025)
    expect(passing.passes).toBe('inside')
    expect(passing.holds).toBe(false)
    expect(passing.worst!.angle).toBe('toe')
    // rod's end 1.5 mm off at a steering arm of some 130 mm: a good third of a degree of toe and more than the limits are wide
    expect(passing.worst!.swing / degree).toBeGreaterThan(0.25)
    expect(worn(0.00005, 0.0025)).toMatchObject({ passes: 'inside', holds: true })
    expect(worn(0.004, 0.0025).passes).toBe('outside')
    expect(worn(0.0015, null).passes).toBeNull()
  })
})
