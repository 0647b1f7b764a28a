import fc from 'fast-check'
import { expect, test } from 'vitest'
import {
  batchFlag,
  batchPoints,
  batchPoses,
  batchStride,
  mechanism,
  poseAt,
  sensitivities,
} from '../../../src/linkage/index.ts'
import { metre, Refusal } from '../../../src/quantity/index.ts'
import { law, near, refuses } from '../../support/law.ts'
import { anyCorner, anyDrive, fiveLink, strut, wishbone } from './any-corner.ts'

law(
  'LI15 a batch gives the same answers as one by one, and flags what has none',
  fc.record({
    corner: anyCorner(),
    drives: fc.array(anyDrive, { minLength: 1, maxLength: 8 }),
    far: fc.boolean(),
  }),
  ({ corner, drives, far }) => {
    const m = mechanism(corner)
    const all = far ? [...drives, { travel: metre(2), rack: metre(0) }, ...drives] : drives
    const out = new Float64Array(all.length * batchStride)
    const answered = batchPoses(m, Float64Array.from(all.flatMap((d) => [d.travel, d.rack])), out)
    let counted = 0
    for (const [i, drive] of all.entries()) {
      const row = out.subarray(i * batchStride, (i + 1) * batchStride)
      expect(row.every(Number.isFinite)).toBe(true)
      try {
        const pose = poseAt(m, drive)
        expect(row[7]).toBe(batchFlag.answered)
        counted++
        const want = [pose.camber, pose.toe, pose.caster ?? 0, pose.sai ?? 0, ...pose.wheelCentre]
        for (const [j, x] of want.entries()) near(row[j]!, x, { abs: 1e-12 })
      } catch (error) {
        if (!(error instanceof Refusal)) throw error
        expect(row[7]).toBe(batchFlag.unreachable)
      }
    }
    return counted === answered
  },
  { runs: 50 },
)

for (const corner of [wishbone, strut, fiveLink])
  test(`LI15 draws of ${corner.layout} spread as the rates say, and a seed repeats them`, () => {
    const m = mechanism(corner)
    const drive = { travel: metre(0.04), rack: metre(0) }
    const draws = 10000
    const spread = metre(0.0005)
    const out = new Float64Array(draws * batchStride)
    expect(batchPoints(m, { drive, spread, draws, seed: 7 }, out)).toBe(draws)
    const again = new Float64Array(draws * batchStride)
    batchPoints(m, { drive, spread, draws, seed: 7 }, again)
    expect(again.every((x, i) => x === out[i])).toBe(true)
    batchPoints(m, { drive, spread, draws, seed: 8 }, again)
    expect(again.some((x, i) => x !== out[i])).toBe(true)
    // first order: a true point moves the design pose with it, so its lengths follow; by differences of mechanisms
    const variance = [0, 1].map((angle) => {
      let sum = 0
      for (const [name, value] of Object.entries(corner))
        if (Array.isArray(value) && name !== 'links')
          for (let axis = 0; axis < 3; axis++) sum += slopeOf(corner, [name], axis, angle) ** 2
      if (corner.layout === 'five-link')
        for (let i = 0; i < 5; i++)
          for (const end of ['inner', 'outer'])
            for (let axis = 0; axis < 3; axis++)
              sum += slopeOf(corner, ['links', String(i), end], axis, angle) ** 2
      return sum * spread ** 2
    })
    for (const angle of [0, 1]) {
      let [mean, square] = [0, 0]
      for (let i = 0; i < draws; i++) mean += out[i * batchStride + angle]! / draws
      for (let i = 0; i < draws; i++) square += (out[i * batchStride + angle]! - mean) ** 2 / (draws - 1)
      // standard error of a standard deviation from 10,000 draws: 0.7 %; three of them, and the second order
      near(Math.sqrt(square), Math.sqrt(variance[angle]!), { rel: 0.025 })
      const pose = poseAt(m, drive)
      near(mean, angle === 0 ? pose.camber : pose.toe, { abs: 5 * Math.sqrt(square / draws) + 1e-5 })
    }
  })

/** Rate of camber (0) or toe (1) at 40 mm of bump against one coordinate of a true point. */
function slopeOf(corner: typeof wishbone, path: readonly string[], axis: number, angle: number): number {
  const at = (by: number): number => {
    const copy = structuredClone(corner) as unknown as Record<string, unknown>
    let inner: Record<string, unknown> = copy
    for (const key of path.slice(0, -1)) inner = inner[key] as Record<string, unknown>
    const point = inner[path.at(-1)!] as number[]
    point[axis]! += by
    const pose = poseAt(mechanism(copy as unknown as typeof wishbone), {
      travel: metre(0.04),
      rack: metre(0),
    })
    return angle === 0 ? pose.camber : pose.toe
  }
  return (at(1e-5) - at(-1e-5)) / 2e-5
}

test('LI15 a spread of one point moves only that point', () => {
  const m = mechanism(wishbone)
  const drive = { travel: metre(0), rack: metre(0) }
  const out = new Float64Array(100 * batchStride)
  batchPoints(m, { drive, spread: { tieInner: metre(0.001) }, draws: 100, seed: 1 }, out)
  // at the design pose the links follow the true points, so nothing turns
  for (let i = 0; i < 100; i++) near(out[i * batchStride]!, wishbone.camber, { abs: 1e-12 })
  expect(Object.keys(sensitivities(m, drive)).length).toBe(3 * 5 + 3 * 4 + 5 + 3 + 2)
})

test('LI15 a drive that is no number is flagged, not followed for ever', () => {
  for (const corner of [wishbone, fiveLink]) {
    const out = new Float64Array(3 * batchStride)
    const drives = Float64Array.of(Number.NaN, 0, 0, Number.POSITIVE_INFINITY, 0.01, 0)
    expect(batchPoses(mechanism(corner), drives, out)).toBe(corner === wishbone ? 1 : 2)
    expect([out[7], out[23]]).toEqual([batchFlag.unreachable, batchFlag.answered])
    expect(out.every(Number.isFinite)).toBe(true)
  }
})

const m = mechanism(wishbone)
const room = new Float64Array(80)
const draw = { drive: { travel: metre(0), rack: metre(0) }, spread: metre(0.001), draws: 10, seed: 1 }
refuses('bad-input', () => batchPoses(m, new Float64Array(3), room), 'out')
refuses('bad-input', () => batchPoses(m, new Float64Array(40), room), 'out')
refuses('bad-input', () => batchPoints(m, { ...draw, draws: 11 }, room), 'draws')
refuses('bad-input', () => batchPoints(m, { ...draw, seed: 0.5 }, room), 'seed')
refuses('bad-input', () => batchPoints(m, { ...draw, spread: { hub: metre(0.001) } }, room), 'spread')
refuses('bad-input', () => batchPoints(m, { ...draw, spread: metre(-0.001) }, room), 'spread')
refuses('not-finite', () =>
  batchPoints(m, { ...draw, drive: { travel: metre(Number.NaN), rack: metre(0) } }, room),
)
refuses('unreachable', () => batchPoints(m, { ...draw, drive: { travel: metre(1), rack: metre(0) } }, room))
