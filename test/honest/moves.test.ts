import { describe, expect, test } from 'vitest'
import { normalQuantile } from '../../src/measure/index.ts'
import { asked, type Case, fourWheels, solidAxle, type Vehicle } from './moves-vehicles.ts'
import { chance } from './truth-random.ts'

// Short and seeded here; `npm run soak` runs the long form.
const long = process.env['AXLEWRIGHT_SOAK'] === '1'
const n = long ? Math.min(5000, Number(process.env['AXLEWRIGHT_DRAWS'] ?? 5000)) : 150
/** Few are enough to see that halved spreads are wrong. */
const few = Math.min(n, long ? 1000 : 150)
const seed = Number(process.env['AXLEWRIGHT_SEED'] ?? 20261125)

/** Certainties teach nothing; the open answers count. */
const isOpen = ({ stated }: Case) => stated > 0.005 && stated < 0.995
const binCount = long ? 10 : 4
/** Fewer open cases in a bin than this say nothing. */
const least = 12

interface Bin {
  readonly stated: number
  readonly observed: number
  /** How rare that is, as the standard errors of a normal. */
  readonly errors: number
}

function binsOf(cases: readonly Case[]): readonly Bin[] {
  const open = cases.filter(isOpen).sort((a, b) => a.stated - b.stated)
  const count = Math.min(binCount, Math.floor(open.length / least))
  return Array.from({ length: count }, (_, b) => {
    const bin = open.slice(Math.floor((b * open.length) / count), Math.floor(((b + 1) * open.length) / count))
    const stated = bin.reduce((sum, one) => sum + one.stated, 0) / bin.length
    const observed = bin.filter(({ inside }) => inside).length / bin.length
    return { stated, observed, errors: rarity(bin) }
  })
}

/**
 * Distance of the count from what was stated, in standard errors of a normal as rare as it. Near 0 and 1 counts lean to
 * one side, so the count's own distribution is used: cases of different chances, one added after the other.
 */
function rarity(bin: readonly Case[]): number {
  let counts = Float64Array.of(1)
  for (const { stated } of bin) {
    const next = new Float64Array(counts.length + 1)
    for (let k = 0; k < counts.length; k++) {
      next[k]! += counts[k]! * (1 - stated)
      next[k + 1]! += counts[k]! * stated
    }
    counts = next
  }
  const seen = bin.filter(({ inside }) => inside).length
  const below = counts.subarray(0, seen).reduce((sum, p) => sum + p, 0) + counts[seen]! / 2
  // half of the count itself to either side
  const tail = Math.max(1e-15, Math.min(below, 1 - below))
  return normalQuantile(1 - tail)
}

function simulated(vehicle: Vehicle, count: number, halved: boolean): ReadonlyMap<string, readonly Bin[]> {
  const random = chance(seed)
  const byKind = new Map<string, Case[]>()
  for (let i = 0; i < count; i++)
    for (const one of asked(vehicle, random, { halved }))
      byKind.set(one.kind, [...(byKind.get(one.kind) ?? []), one])
  return new Map([...byKind].map(([kind, cases]) => [kind, binsOf(cases)]))
}

const isCalibrated = (bins: readonly Bin[]) =>
  bins.every(({ errors }) => errors <= 4) && bins.filter(({ errors }) => errors > 3).length <= 1
const line = (kind: string, bins: readonly Bin[]) =>
  `${kind}: ${bins.map((b) => `${b.stated.toFixed(2)}→${b.observed.toFixed(2)} (${b.errors.toFixed(1)})`).join(' ')}`

for (const vehicle of [fourWheels, solidAxle])
  describe(`AD27 stated chances come true, ${vehicle.name}`, () => {
    let whole: ReturnType<typeof simulated> | null = null
    const honest = () => {
      whole ??= simulated(vehicle, n, false)
      return whole
    }
    test('AD27 each kind of reading, each sum of readings, the steering wheel and all at once, now and after the moves', () => {
      const found = honest()
      const all = [...found.values()].flat()
      for (const [kind, bins] of found) {
        if (long) console.log(`${vehicle.name}, ${line(kind, bins)}`)
        expect(isCalibrated(bins), line(kind, bins)).toBe(true)
      }
      // of honest bins one in four hundred lies beyond three standard errors
      expect(all.length).toBeGreaterThan(30)
      expect(all.filter(({ errors }) => errors > 3).length).toBeLessThanOrEqual(
        Math.max(1, 0.015 * all.length),
      )
      for (const kind of [
        'thrust, now',
        'front total toe, now',
        'steering wheel, after',
        'all at once, after',
      ])
        expect(found.get(kind)!.length, kind).toBeGreaterThan(0)
    })
    test('AD27 the same test fails when every spread of the readings is halved', () => {
      const [right, half] = [honest(), simulated(vehicle, few, true)].map((found) => {
        const all = [...found.values()].flat()
        return all.reduce((sum, { errors }) => sum + errors ** 2, 0) / all.length
      }) as [number, number]
      if (long)
        console.log(
          `${vehicle.name}: mean square of the errors ${right.toFixed(2)}, halved ${half.toFixed(2)}`,
        )
      // 1 for honest chances
      expect(right).toBeLessThan(1.5)
      expect(half).toBeGreaterThan(1.5)
      expect(half).toBeGreaterThan(1.5 * right)
    })
  })
