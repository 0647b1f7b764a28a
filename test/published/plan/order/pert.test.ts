import { describe, expect, test } from 'vitest'
import { type CriticalPath, chanceDoneBy, criticalPath } from '../../../../src/plan/index.ts'
import { meanMinutes } from '../../../../src/plan/mean-minutes.ts'
import { minutesVariance } from '../../../../src/plan/minutes-variance.ts'
import { type PublishedRow, published } from '../../../support/published.ts'
import { fourteenActivities, type Network, tenActivities } from './textbook-networks.ts'

const solved = ({ actions }: Network): CriticalPath =>
  criticalPath(
    Object.entries(actions).map(([name, [low, usual, high, after]]) => ({
      name,
      time: meanMinutes([low, usual, high]),
      variance: minutesVariance([low, usual, high]),
      after: [...after],
    })),
  )

/** One row for each value of a list in the order of the activities. */
const rows = (
  network: Network,
  what: string,
  got: (name: string) => number,
  want: readonly number[],
  within: number,
): PublishedRow[] =>
  Object.keys(network.actions).map((name, k) => ({
    id: `${what} ${name}`,
    got: got(name),
    want: want[k]!,
    within,
    source: network.source,
  }))

const times = (path: CriticalPath, name: string) => path.actions.find((each) => each.name === name)!
const mean = (network: Network) => (name: string) => {
  const [low, usual, high] = network.actions[name]!
  return meanMinutes([low, usual, high])
}
const variance = (network: Network) => (name: string) => {
  const [low, usual, high] = network.actions[name]!
  return minutesVariance([low, usual, high])
}

describe('PL50', () => {
  const ten = solved(tenActivities)
  published('PL50 ten activities', [
    ...rows(tenActivities, 'mean', mean(tenActivities), [6, 3, 4, 2, 3, 5, 3, 5, 5, 3], 0.05),
    ...rows(
      tenActivities,
      'variance',
      variance(tenActivities),
      [0.1111, 0.4444, 1, 0.1111, 1.7778, 1.7778, 1, 1, 1, 1],
      5e-5,
    ),
    ...rows(
      tenActivities,
      'earliest start',
      (name) => times(ten, name).earliestStart,
      [0, 0, 0, 6, 3, 4, 4, 9, 8, 14],
      0.05,
    ),
    ...rows(
      tenActivities,
      'latest finish',
      (name) => times(ten, name).latestFinish,
      [10, 6, 4, 12, 9, 9, 14, 14, 17, 17],
      0.05,
    ),
    { id: 'duration', got: ten.duration, want: 17, within: 0.05, source: tenActivities.source },
    {
      id: 'variance of the path',
      got: ten.variance,
      want: 4.7778,
      within: 5e-5,
      source: tenActivities.source,
    },
  ])
  test('PL50 ten activities: the path is C, F, H, J', () => expect(ten.path).toEqual(['C', 'F', 'H', 'J']))

  const fourteen = solved(fourteenActivities)
  const { source } = fourteenActivities
  published('PL50 fourteen activities', [
    ...rows(
      fourteenActivities,
      'mean',
      mean(fourteenActivities),
      [5.333, 2.333, 5, 8.167, 9.667, 4.667, 5.833, 4.333, 6.667, 4.167, 9.833, 5.333, 2.167, 7.833],
      5e-4,
    ),
    { id: 'duration', got: fourteen.duration, want: 50.833, within: 5e-4, source },
    { id: 'variance of the path', got: fourteen.variance, want: 11.1944, within: 5e-5, source },
    // The source reads its table at z rounded to two places: z within 0.005, times the density of at most 0.4.
    { id: 'done by 55', got: chanceDoneBy(fourteen, 55), want: 0.8935, within: 0.002, source },
    { id: 'done by 53', got: chanceDoneBy(fourteen, 53), want: 0.7414, within: 0.002, source },
    { id: 'slack of B', got: times(fourteen, 'B').slack, want: 8, within: 5e-3, source },
    { id: 'slack of D', got: times(fourteen, 'D').slack, want: 1.83, within: 5e-3, source },
    { id: 'slack of F', got: times(fourteen, 'F').slack, want: 1.83, within: 5e-3, source },
  ])
  test('PL50 fourteen activities: the path is A, C, E, H, I, K, M, N', () =>
    expect(fourteen.path).toEqual([...'ACEHIKMN']))

  const chapter =
    'Taylor, Introduction to Management Science, chapter problem, solution steps 1 to 4, read in a public copy'
  const path = solved({
    source: chapter,
    actions: { 1: [5, 8, 17, ''], 3: [3, 5, 7, '1'], 5: [4, 6, 8, '3'], 7: [3, 4, 5, '5'] },
  })
  published('PL50 a path of four', [
    { id: 'duration of four', got: path.duration, want: 24, within: 0.05, source: chapter },
    { id: 'variance of four', got: path.variance, want: 5, within: 0.05, source: chapter },
    // z = 1.79 rounded from 1.789: as above.
    { id: 'done by 28', got: chanceDoneBy(path, 28), want: 0.9633, within: 0.0005, source: chapter },
  ])
})
