import { describe, expect, test } from 'vitest'
import { seededRandom } from '../../../src/measure/index.ts'
import { meanMinutes, minutesVariance, type ThreePoint, totalMinutes } from '../../../src/plan/index.ts'
import { published } from '../../support/published.ts'

const path: readonly ThreePoint[] = [
  [5, 8, 17],
  [3, 5, 7],
  [4, 6, 8],
  [3, 4, 5],
]
const sum = (numbers: readonly number[]) => numbers.reduce((a, b) => a + b, 0)
const source = 'Taylor, Introduction to Management Science, chapter problem, path 1-3-5-7'

published('PL11 mean and variance of three-point times', [
  { id: 'pert.path.te', got: sum(path.map(meanMinutes)), want: 24, within: 1e-9, source },
  { id: 'pert.path.variance', got: sum(path.map(minutesVariance)), want: 5, within: 0.0005, source },
  {
    id: 'pert.14.E',
    got: meanMinutes([1, 10, 17]),
    want: 9.667,
    within: 0.0005,
    source: 'operations-management textbook problem, 14 activities, activity E',
  },
  {
    id: 'pert.10.E',
    got: minutesVariance([1, 2, 9]),
    want: 1.7778,
    within: 0.00005,
    source: 'operations-management course example, 10 activities, activity E',
  },
])

describe('PL11 the time of a whole job', () => {
  const actions = path.map((minutes) => ({ minutes, risk: null }))
  test('PL11 the mean is the sum, with the changes; half is below the mean', () => {
    const total = totalMinutes(actions, 6)
    expect(total.mean).toBeCloseTo(30, 9)
    expect(total.p50).toBeLessThan(total.mean)
    expect(total.p90).toBeGreaterThan(total.mean)
    expect(totalMinutes([])).toEqual({ p50: 0, p90: 0, mean: 0, deviation: 0 })
  })
  test('PL11 a risk adds its chance of its minutes', () => {
    const risk = { what: 'seized', chance: 0.2, minutes: [10, 30, 90] as const }
    const total = totalMinutes([{ minutes: [5, 8, 17], risk }])
    expect(total.mean).toBeCloseTo(9 + 0.2 * (220 / 6), 9)
  })
  test('PL11 p50 and p90 agree with drawn sums of a job with risks', () => {
    // 60 actions, twelve of them with a risk; a quarter of each variance is common to all of a job.
    const random = seededRandom(20261125)
    const job = Array.from({ length: 60 }, (_, i) => ({
      minutes: [1, 3, 8] as const,
      risk: i % 5 === 0 ? { what: 'seized', chance: 0.15, minutes: [5, 15, 60] as const } : null,
    }))
    const total = totalMinutes(job)
    const draw = (three: ThreePoint, common: number): number =>
      meanMinutes(three) +
      Math.sqrt(minutesVariance(three)) * (Math.sqrt(0.25) * common + Math.sqrt(0.75) * random.normal())
    const sums = Array.from({ length: 20_000 }, () => {
      const common = random.normal()
      let all = 0
      for (const { minutes, risk } of job) {
        all += draw(minutes, common)
        if (risk && random.uniform() < risk.chance) all += draw(risk.minutes, random.normal())
      }
      return all
    }).sort((a, b) => a - b)
    const at = (share: number) => sums[Math.floor(share * sums.length)]!
    // The shape is taken as log-normal: within 3 % at both.
    expect(Math.abs(total.p50 - at(0.5))).toBeLessThan(0.03 * at(0.5))
    expect(Math.abs(total.p90 - at(0.9))).toBeLessThan(0.03 * at(0.9))
  })
})
