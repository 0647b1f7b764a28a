import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { chanceDoneBy, criticalPath, type TimedAction } from '../../../../src/plan/index.ts'
import { law, near, refuses } from '../../../support/law.ts'

/** Up to nine actions; each waits for some of those before it. */
const anyActions: fc.Arbitrary<readonly TimedAction[]> = fc
  .array(
    fc.record({
      time: fc.oneof(
        fc.integer({ min: 0, max: 5 }),
        fc.integer({ min: 0, max: 400 }).map((n) => n / 10),
      ),
      variance: fc.integer({ min: 0, max: 90 }).map((n) => n / 10),
      waits: fc.integer({ min: 0, max: 511 }),
    }),
    { minLength: 1, maxLength: 9 },
  )
  .map((all) =>
    all.map(({ time, variance, waits }, i) => ({
      name: `a${i}`,
      time,
      variance,
      after: all.flatMap((_, k) => (k < i && (waits >> k) & 1 ? [`a${k}`] : [])),
    })),
  )

/** Every chain from an action that waits for nothing to one that nothing waits for. */
function chains(actions: readonly TimedAction[]): (readonly TimedAction[])[] {
  const from = (chain: readonly TimedAction[]): (readonly TimedAction[])[] => {
    const next = actions.filter(({ after }) => after.includes(chain.at(-1)!.name))
    return next.length === 0 ? [chain] : next.flatMap((each) => from([...chain, each]))
  }
  return actions.filter(({ after }) => after.length === 0).flatMap((each) => from([each]))
}
const timeOf = (chain: readonly TimedAction[]) => chain.reduce((sum, { time }) => sum + time, 0)
const varianceOf = (chain: readonly TimedAction[]) =>
  chain.reduce((sum, { variance = 0 }) => sum + variance, 0)

law(
  'PL51 it takes as long as the longest chain; of several the most uncertain is shown',
  anyActions,
  (actions) => {
    const all = chains(actions)
    const longest = Math.max(...all.map(timeOf))
    const { duration, variance, path } = criticalPath(actions)
    near(duration, longest, { rel: 1e-12, abs: 1e-12 })
    const shown = path.map((name) => actions.find((each) => each.name === name)!)
    near(timeOf(shown), longest, { rel: 1e-12, abs: 1e-12 })
    for (let k = 1; k < shown.length; k++) if (!shown[k]!.after.includes(path[k - 1]!)) return false
    const alike = all.filter((chain) => timeOf(chain) >= longest * (1 - 1e-12))
    return near(variance, Math.max(...alike.map(varianceOf)), { rel: 1e-9, abs: 1e-9 })
  },
)

law(
  'PL51 an action later by its slack delays nothing, by more the end; by its free slack no other',
  anyActions,
  (actions) => {
    const { duration, actions: times } = criticalPath(actions)
    for (const [
      i,
      { earliestStart, earliestFinish, latestStart, latestFinish, slack, freeSlack },
    ] of times.entries()) {
      const later = (by: number) =>
        criticalPath(actions.map((each, k) => (k === i ? { ...each, time: each.time + by } : each)))
      near(earliestFinish - earliestStart, actions[i]!.time, { abs: 1e-9 })
      near(latestFinish - latestStart, actions[i]!.time, { abs: 1e-9 })
      near(latestFinish - earliestFinish, slack, { abs: 1e-9 })
      near(later(slack).duration, duration, { abs: 1e-9 })
      near(later(slack + 1).duration, duration + 1, { abs: 1e-9 })
      const moved = later(freeSlack).actions
      for (const [k, each] of times.entries())
        if (k !== i) near(moved[k]!.earliestStart, each.earliestStart, { abs: 1e-9 })
      if (freeSlack > slack + 1e-9 || slack < -1e-9 || freeSlack < -1e-9) return false
    }
    return true
  },
)

test('PL51 in whatever order the actions are listed', () => {
  const listed = [
    { name: 'c', time: 3, after: ['b'] },
    { name: 'b', time: 2, after: ['a'] },
    { name: 'a', time: 1, after: [] },
    { name: 'd', time: 1, after: ['a'] },
  ]
  const { duration, path, actions } = criticalPath(listed)
  expect({ duration, path }).toEqual({ duration: 6, path: ['a', 'b', 'c'] })
  expect(actions[3]).toMatchObject({ earliestStart: 1, latestFinish: 6, slack: 4, freeSlack: 4 })
  expect(criticalPath([])).toEqual({ duration: 0, variance: 0, path: [], actions: [] })
})

describe('PL51 what is no network', () => {
  const a = { name: 'a', time: 1, after: [] }
  refuses('circle', () =>
    criticalPath([
      { ...a, after: ['b'] },
      { name: 'b', time: 1, after: ['a'] },
    ]),
  )
  refuses('no-such-action', () => criticalPath([{ ...a, after: ['lift'] }]), 'a')
  refuses('twice', () => criticalPath([a, a]), 'a')
  refuses('not-a-time', () => criticalPath([{ ...a, time: -1 }]), 'a')
  refuses('not-a-time', () => criticalPath([{ ...a, time: Number.NaN }]))
  refuses('not-a-time', () => criticalPath([{ ...a, variance: -1 }]))
})

test('PL52 one half at the expected time, rising, and certain without variance', () => {
  expect(chanceDoneBy({ duration: 10, variance: 4 }, 10)).toBe(0.5)
  near(chanceDoneBy({ duration: 10, variance: 4 }, 12) + chanceDoneBy({ duration: 10, variance: 4 }, 8), 1, {
    abs: 1e-12,
  })
  expect(chanceDoneBy({ duration: 10, variance: 4 }, 11)).toBeGreaterThan(0.6)
  expect(chanceDoneBy({ duration: 10, variance: 0 }, 10)).toBe(1)
  expect(chanceDoneBy({ duration: 10, variance: 0 }, 9.99)).toBe(0)
})
