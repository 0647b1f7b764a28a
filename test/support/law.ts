import fc from 'fast-check'
import { expect, test } from 'vitest'
import { Refusal } from '../../src/quantity/index.ts'

/** A property that holds for every draw. The seed is printed when it fails; keep it as a named test. */
export function law<T>(
  name: string,
  any: fc.Arbitrary<T>,
  holds: (value: T) => boolean | undefined,
  { runs = 200, seed = 20261125 } = {},
): void {
  test(name, () => {
    let ran = 0
    fc.assert(
      fc.property(any, (value) => {
        ran++
        return holds(value)
      }),
      { seed, numRuns: runs },
    )
    expect(ran).toBeGreaterThanOrEqual(Math.min(runs, 10))
  })
}

/** Equal within an absolute or relative tolerance; there is no default. */
export function near(got: number, want: number, within: { abs?: number; rel?: number }): boolean {
  const room = Math.max(within.abs ?? 0, (within.rel ?? 0) * Math.abs(want))
  if (!(Math.abs(got - want) <= room)) throw new Error(`got ${got}, want ${want}, within ${room}`)
  return true
}

/** The call must refuse with this code (and place, when given). */
export function refuses(code: string, call: () => unknown, at?: string): void {
  test(`refuses ${code}${at ? ` at ${at}` : ''}: ${String(call).replace(/\s+/g, ' ').slice(0, 90)}`, () => {
    let caught: unknown
    try {
      call()
    } catch (error) {
      caught = error
    }
    expect(caught, `no refusal, ${code} was due`).toBeInstanceOf(Refusal)
    const refusal = caught as Refusal
    expect(refusal.code).toBe(code)
    if (at !== undefined) expect(refusal.at).toBe(at)
    expect(refusal.sentence.length).toBeGreaterThan(10)
    expect(refusal.remedy.length).toBeGreaterThan(10)
  })
}
