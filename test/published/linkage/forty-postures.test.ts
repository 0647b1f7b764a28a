import { expect, test } from 'vitest'
import { type Placement, type Point, rigidBodyFromDistances } from '../../../src/linkage/index.ts'
import { type PublishedRow, published } from '../../support/published.ts'
import { dataFile } from './read-cases.ts'

const data = dataFile('forty-postures.json') as Readonly<{
  source: string
  base_points: readonly Point[]
  platform_points: readonly Point[]
  leg_lengths: readonly number[]
  expected: Readonly<{
    real_postures: number
    postures: readonly Readonly<{ p: Point; q_wxyz: Placement['turn'] }>[]
  }>
}>
const six = { base: data.base_points, body: data.platform_points, lengths: data.leg_lengths }
const { postures, real_postures } = data.expected

/** Started a little off, on all sides. */
const off = (p: Point, q: Placement['turn'], i: number): Placement => ({
  origin: [p[0] + 1e-4 * Math.sin(i), p[1] + 1e-4 * Math.cos(2 * i), p[2] - 1e-4 * Math.sin(3 * i)],
  turn: [q[0] + 1e-4 * Math.cos(i), q[1] - 1e-4 * Math.sin(5 * i), q[2] + 1e-4 * Math.cos(7 * i), q[3]],
})
const places = postures.map(({ p, q_wxyz }, i) => rigidBodyFromDistances(six, off(p, q_wxyz, i)))

published(
  'LI11 forty postures of a body on six legs',
  postures.flatMap(({ p }, i) =>
    p.map(
      (want, j): PublishedRow => ({
        id: `posture ${i} ${'xyz'[j]}`,
        got: places[i]!.origin[j]!,
        want,
        within: 2e-10, // printed to 10 decimals
        source: data.source,
        basis: 'derived',
      }),
    ),
  ),
)

test('LI11 the legs have their lengths in each of them, and no two are the same', () => {
  expect(places.length).toBe(real_postures)
  const keys = new Set(places.map(({ origin }) => origin.map((x) => x.toFixed(6)).join(' ')))
  expect(keys.size).toBe(40)
  for (const { origin, turn } of places)
    six.body.forEach(([x, y, z], i) => {
      const [w, a, b, c] = turn
      const r: Point = [
        (1 - 2 * (b * b + c * c)) * x + 2 * (a * b - w * c) * y + 2 * (a * c + w * b) * z,
        2 * (a * b + w * c) * x + (1 - 2 * (a * a + c * c)) * y + 2 * (b * c - w * a) * z,
        2 * (a * c - w * b) * x + 2 * (b * c + w * a) * y + (1 - 2 * (a * a + b * b)) * z,
      ]
      const leg = Math.hypot(...r.map((e, k) => e + origin[k]! - six.base[i]![k]!))
      expect(Math.abs(leg - six.lengths[i]!)).toBeLessThan(1e-12)
    })
})
