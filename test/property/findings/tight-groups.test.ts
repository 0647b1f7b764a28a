import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { tightGroups } from '../../../src/findings/tight-groups.ts'
import { gainOfCheck, gainOfReading } from '../../../src/findings/told-apart.ts'
import { law, near } from '../../support/law.ts'

const never = () => Number.POSITIVE_INFINITY

describe('groups', () => {
  law(
    'FI10 no two of a group are further apart than the limit, and everybody is in one group',
    fc.array(
      fc.record({
        x: fc.double({ min: 0, max: 20, noNaN: true }),
        belief: fc.double({ min: 0.001, max: 1, noNaN: true }),
      }),
      {
        minLength: 1,
        maxLength: 25,
      },
    ),
    (list) => {
      const distance = (a: number, b: number): number => Math.abs(list[a]!.x - list[b]!.x)
      const groups = tightGroups(
        list.map(({ belief }) => belief),
        distance,
        { limit: 2, least: 0.05, first: 0, faint: distance },
      )
      const all = groups.flat().sort((a, b) => a - b)
      const tight = groups.every((group) => group.every((a) => group.every((b) => distance(a, b) <= 2)))
      return tight && all.length === list.length && all.every((x, i) => x === i)
    },
  )
  test('FI10 it is complete linkage: a chain is not one group', () => {
    const x = [0, 1.5, 3]
    const distance = (a: number, b: number): number => Math.abs(x[a]! - x[b]!)
    const groups = tightGroups([0.5, 0.3, 0.2], distance, { limit: 2, least: 0.05, first: 0, faint: never })
    expect(groups).toEqual([[0, 1], [2]])
  })
  test('FI10 who is far less likely stands alone', () => {
    const groups = tightGroups([0.9, 0.09, 0.01], () => 0, { limit: 2, least: 0.05, first: 0, faint: never })
    expect(groups).toEqual([[0, 1], [2]])
  })
})

describe('what a check is worth', () => {
  test('FI11 a check that decides between two is worth ln 2, one that cannot is worth nothing', () => {
    const sure = gainOfCheck([
      { belief: 0.5, shows: 1 },
      { belief: 0.5, shows: 0 },
    ])
    expect(sure).toBeCloseTo(Math.LN2, 12)
    expect(
      gainOfCheck([
        { belief: 0.5, shows: 0.3 },
        { belief: 0.5, shows: 0.3 },
      ]),
    ).toBeCloseTo(0, 12)
    expect(
      gainOfReading([
        { belief: 0.5, mean: 0, variance: 1 },
        { belief: 0.5, mean: 40, variance: 1 },
      ]),
    ).toBeCloseTo(Math.LN2, 3)
    expect(
      gainOfReading([
        { belief: 0.5, mean: 1, variance: 4 },
        { belief: 0.5, mean: 1, variance: 4 },
      ]),
    ).toBeCloseTo(0, 4)
  })
  law(
    'FI11 a gain is never more than what is not known, and more precise readings tell more',
    fc.array(
      fc.record({
        belief: fc.double({ min: 0.01, max: 1, noNaN: true }),
        mean: fc.double({ min: -3, max: 3, noNaN: true }),
      }),
      {
        minLength: 2,
        maxLength: 6,
      },
    ),
    (list) => {
      const all = list.reduce((sum, { belief }) => sum + belief, 0)
      const unknown = -list.reduce((sum, { belief }) => sum + (belief / all) * Math.log(belief / all), 0)
      const at = (variance: number): number => gainOfReading(list.map((one) => ({ ...one, variance })))
      const [fine, rough] = [at(0.2), at(2)]
      near(Math.min(fine, unknown + 1e-3), fine, { abs: 1e-3 })
      return rough <= fine + 1e-3
    },
    { runs: 60 },
  )
})
