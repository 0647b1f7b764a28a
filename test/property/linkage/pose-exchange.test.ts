import fc from 'fast-check'
import { expect, test } from 'vitest'
import { posesOf } from '../../../src/cli/poses/index.ts'
import { badCases, poseCases } from '../../published/linkage/read-cases.ts'
import { law, refuses } from '../../support/law.ts'

const kinds = new Set([
  null,
  'not-finite',
  'bad-input',
  'zero-length-link',
  'coincident-pivots',
  'degenerate',
  'singular',
  'unreachable',
])
type Row = Record<string, unknown> & { error?: string | null; sentence?: string; out?: object }
const bad = (rows: unknown): Row[] => posesOf({ bad: rows }).output['bad'] as Row[]
const copy = <T>(value: T): T => structuredClone(value)
const good = (badCases.bad as unknown as Row[]).find((row) => row.error === null)!

/** Every path to a value below. */
function paths(value: unknown, at: string[] = []): string[][] {
  if (typeof value !== 'object' || value === null) return [at]
  return [at, ...Object.entries(value).flatMap(([key, inner]) => paths(inner, [...at, key]))]
}

law(
  'LI3 whatever stands in a row, the row gets an answer or a refusal, never a fault',
  fc.record({
    row: fc.constantFrom(
      ...(badCases.bad as unknown as Row[]),
      ...poseCases.cases.map((c) => ({ ...c.poses[0], geometry: c.geometry })),
    ),
    changes: fc.array(fc.record({ place: fc.nat(), junk: fc.jsonValue() }), { minLength: 1, maxLength: 3 }),
  }),
  ({ row, changes }) => {
    const changed = { ...copy(row), out: undefined } as Record<string, unknown>
    for (const { place, junk } of changes) {
      const all = paths(changed).filter((path) => path.length > 0)
      const path = all[place % all.length]!
      let inner: Record<string, unknown> = changed
      for (const key of path.slice(0, -1)) inner = inner[key] as Record<string, unknown>
      inner[path.at(-1)!] = junk
    }
    const { output, ok } = posesOf({ bad: [changed] })
    const [got] = output['bad'] as Row[]
    expect(ok).toBe(true)
    expect(kinds.has(got!.error!), `${got!.error}: ${got!.sentence}`).toBe(true)
    const text = JSON.stringify(got!.out ?? {})
    return got!.error === null ? !text.includes('null,null') : got!.sentence!.length > 20
  },
  { runs: 300 },
)

test('LI3 the first fault in the order of the table counts', () => {
  const cases: readonly (readonly [string, (row: Row & { geometry: Row }) => void])[] = [
    ['not-finite', (r) => Object.assign(r.geometry, { lower_outer: undefined, camber_deg: Number.NaN })],
    ['not-finite', (r) => Object.assign(r, { nonfinite_strings: true, travel: 'NaN', rack: 'text' })],
    ['bad-input', (r) => Object.assign(r, { travel: 'NaN' })],
    ['bad-input', (r) => Object.assign(r.geometry, { tyre_radius: 0, tie_inner: r.geometry['tie_outer'] })],
    [
      'bad-input',
      (r) => Object.assign(r, { theta_front_deg: 10 }) && Object.assign(r.geometry, { adjusters: undefined }),
    ],
    ['bad-input', (r) => Object.assign(r, { travel: undefined })],
    ['bad-input', (r) => Object.assign(r.geometry, { adjusters: { front: { e: 0.005, slot: [0, 1, 0] } } })],
    [
      'zero-length-link',
      (r) =>
        Object.assign(r.geometry, {
          tie_inner: r.geometry['tie_outer'],
          lower_front_inner: r.geometry['lower_rear_inner'],
        }),
    ],
    [
      'coincident-pivots',
      (r) =>
        Object.assign(r.geometry, {
          upper_front_inner: r.geometry['upper_rear_inner'],
          tie_outer: r.geometry['upper_outer'],
        }),
    ],
    [
      'singular',
      (r) =>
        Object.assign(r, { travel: 9 }) &&
        Object.assign(r.geometry, { tie_outer: r.geometry['lower_outer'] }),
    ],
    [
      'unreachable',
      (r) => Object.assign(r, { travel: 0, inverse_target_delta: { camber: 30, caster: 0, toe: 0 } }),
    ],
    ['bad-input', (r) => Object.assign(r, { travel: 0, inverse_target_delta: { camber: 1, caster: 0 } })],
  ]
  for (const [error, change] of cases) {
    const row = copy(good) as Row & { geometry: Row }
    change(row)
    const [got] = bad([row])
    expect(got!.error, `${change}: ${got!.sentence}`).toBe(error)
  }
})

test('LI3 values present in the input are ignored', () => {
  const file = copy(poseCases) as unknown as {
    cases: { poses: { out: unknown }[]; sensitivities?: unknown }[]
  }
  const want = JSON.stringify(posesOf(file).output['cases'])
  for (const c of file.cases) for (const p of c.poses) p.out = { camber: 99 }
  expect(JSON.stringify(posesOf(JSON.stringify(file)).output['cases'])).toBe(want)
})

test('LI3 a case that is no case, rows that are no rows: each its own refusal', () => {
  const { output, ok } = posesOf({
    cases: [null, 7, {}, { id: 'a', poses: 3 }, { id: 'b', poses: [null, 1] }],
  })
  expect(ok).toBe(true)
  const text = JSON.stringify(output)
  expect(text.split('"error":"bad-input"').length).toBeGreaterThan(6)
})

refuses('no-pose-file', () => posesOf('{'), 'file')
refuses('no-pose-file', () => posesOf({}), 'file')
refuses('no-pose-file', () => posesOf(null), 'file')
refuses('no-pose-file', () => posesOf({ cases: 'none' }), 'file')
