import { describe, expect, test } from 'vitest'
import { type Judgement, judge, type Truths } from './judge.ts'
import { flooredCamber, methods } from './methods.ts'

// Short and seeded here; `node scripts/soak.mjs` runs the long form.
const long = process.env['AXLEWRIGHT_SOAK'] === '1'
const n = long ? Number(process.env['AXLEWRIGHT_DRAWS'] ?? 20_000) : 250
const seed = Number(process.env['AXLEWRIGHT_SEED'] ?? 20261125)

/** 94 … 96 % in the long form; with few draws, three standard errors about 95 %. */
const room = long ? Math.max(0.01, 3 * Math.sqrt((0.95 * 0.05) / n)) : 3 * Math.sqrt((0.95 * 0.05) / n)
const isCovered = ({ coverage }: Judgement) => Math.abs(coverage - 0.95) <= room
/**
 * Each bin within three standard errors. Of 320 honest bins one lies beyond by chance in every second run, so a
 * method may have one such bin, none beyond four, and `strays` holds all of them together to 1.5 %.
 */
const isCalibrated = ({ bins }: Judgement) =>
  bins.every(({ errors }) => errors <= 4) && bins.filter(({ errors }) => errors > 3).length <= 1
const strays = { bins: 0, beyond: 0 }
/** With few draws the count itself wanders by its root. */
const isUseful = ({ called, ideal }: Judgement) => called >= 0.9 * ideal - (long ? 0 : Math.sqrt(ideal))

const line = ({ name, coverage, bins, called, ideal }: Judgement) =>
  `${name}: coverage ${(100 * coverage).toFixed(2)} %, worst bin ${Math.max(...bins.map((b) => b.errors)).toFixed(2)} errors, called inside ${called} of ${ideal}` +
  ` [${bins.map((b) => `${b.stated.toFixed(2)}→${b.observed.toFixed(2)}`).join(' ')}]`

for (const truths of ['flat', 'population'] as Truths[])
  describe(`GA9 stated chances come true, ${truths} truths`, () => {
    for (const [i, method] of methods.entries())
      test(method.name, () => {
        const result = judge(method, { n, seed: seed + 17 * i, truths })
        if (long) console.log(`${truths}: ${line(result)}`)
        strays.bins += result.bins.length
        strays.beyond += result.bins.filter(({ errors }) => errors > 3).length
        expect(isCovered(result), line(result)).toBe(true)
        expect(isCalibrated(result), line(result)).toBe(true)
        expect(isUseful(result), line(result)).toBe(true)
      })
  })

test('GA9 bins beyond three standard errors are as rare as chance makes them', () => {
  expect(strays.bins).toBe(2 * 10 * methods.length)
  expect(strays.beyond).toBeLessThanOrEqual(0.015 * strays.bins)
})

describe('GA9 the same test fails when every spread is halved', () => {
  for (const [i, method] of methods.entries())
    test(method.name, () => {
      const result = judge(method, { n, seed: seed + 17 * i, truths: 'flat', halved: true })
      expect(isCovered(result) && isCalibrated(result), line(result)).toBe(false)
    })
})

describe('GA3 the floor counts with its sign', () => {
  const coverage = (sign: 1 | 0 | -1) => judge(flooredCamber(sign), { n, seed, truths: 'flat' }).coverage
  test('corrected as it should be, coverage holds', () => {
    expect(Math.abs(coverage(1) - 0.95)).toBeLessThanOrEqual(room)
  })
  test('not corrected, or with the wrong sign on the right side, it falls far', () => {
    const [not, flipped] = [coverage(0), coverage(-1)]
    if (long) console.log(`floor not corrected ${not.toFixed(3)}, wrong sign ${flipped.toFixed(3)}`)
    expect(not).toBeLessThan(0.8)
    expect(flipped).toBeLessThan(0.5)
    expect(flipped).toBeLessThan(not)
  })
})

test('GA9 a flat prior is timid on an ordinary population: what it states too low, the population prior states right', () => {
  const rough = { ...methods[0]!, limit: methods[0]!.limit / 2 }
  const count = Math.max(n, 2000)
  const middle = ({ bins }: Judgement) =>
    bins.slice(2, 8).reduce((sum, b) => sum + b.observed - b.stated, 0) / 6
  const timid = middle(judge(rough, { n: count, seed, truths: 'population', prior: 'flat' }))
  const right = middle(judge(rough, { n: count, seed, truths: 'population' }))
  expect(timid).toBeGreaterThan(0.03)
  expect(Math.abs(right)).toBeLessThan(timid / 2)
})
