import { rmSync } from 'node:fs'
import { afterAll, expect, test } from 'vitest'
import { agreement } from '../../bench/agreement.ts'
import { interleaved } from '../../bench/interleaved.ts'
import { fiveLink, wishbone } from '../../bench/invented-corners.ts'
import { newtonBatch } from '../../bench/newton-batch.ts'
import { quantile } from '../../bench/quantile.ts'
import { compileRival, startRival } from '../../bench/rival.ts'
import { posesPerBatch, sweep } from '../../bench/sweep.ts'
import { batchPoses, batchStride, mechanism } from '../../src/linkage/index.ts'

const c = compileRival()
afterAll(() => {
  if (typeof c !== 'string') rmSync(c.folder, { recursive: true, force: true })
})
const drives = sweep({ travel: 0.05, rack: 0.02 })
const unsteered = sweep({ travel: 0.05, rack: 0 })
const room = () => new Float64Array(batchStride * posesPerBatch)

test.skipIf(typeof c === 'string').each([
  { kind: 'closed', points: wishbone, way: drives },
  { kind: 'newton', points: wishbone, way: drives },
  { kind: 'poses', points: fiveLink, way: unsteered },
] as const)('C and TypeScript agree on every pose: $kind', async ({ kind, points, way }) => {
  const m = mechanism(points)
  const out = room()
  const answered = kind === 'newton' ? newtonBatch(m, way, out)() : batchPoses(m, way, out)
  expect(answered).toBe(posesPerBatch)
  const rival = startRival(c as Exclude<typeof c, string>, m, way)
  expect(await rival.batch(kind)).toBeGreaterThan(0)
  const theirs = await rival.results()
  rival.end()
  expect(agreement(out, theirs)).toBeLessThan(1e-12)
  expect(out.some((x) => x !== 0)).toBe(true)
})

test('results that differ, or are not numbers, give no ratio', () => {
  expect(() => agreement(Float64Array.of(1, 2), Float64Array.of(1, 2 + 1e-9))).toThrow(/disagree in number 1/)
  expect(() => agreement(Float64Array.of(Number.NaN), Float64Array.of(Number.NaN))).toThrow(/disagree/)
  expect(() => agreement(Float64Array.of(1), Float64Array.of(1, 2))).toThrow(/against/)
})

test('a race gives the median of its rounds, warm-up left out', async () => {
  let [a, b] = [0, 0]
  const ours = () => (a++ < 4 ? 9000 : 30 * a)
  const theirs = async () => (b++ < 4 ? 1 : 20 * b)
  const race = await interleaved({ ours, theirs, ourPieces: 1, theirPieces: 2 }, { warm: 4, rounds: 5 })
  expect(race.ratio).toBeCloseTo(3, 12)
  expect(race.ours).toBe(210)
  expect(race.theirs).toBe(70)
})

test('quantiles lie between their neighbours', () => {
  expect(quantile([4, 1, 3, 2], 0.5)).toBe(2.5)
  expect(quantile([5], 0.25)).toBe(5)
})
