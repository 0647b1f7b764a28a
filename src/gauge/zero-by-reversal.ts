import { combine, type Measured } from '../measure/index.ts'
import type { Inclinometer } from './instruments.ts'
import { meanReading } from './mean-reading.ts'

/**
 * Zero of an inclinometer, and slope of the face, from readings taken one way and turned about end for end.
 *
 *     zero = (one + other)/2     slope = (one − other)/2
 *
 * @param one readings with the gauge one way round
 * @param other readings on the same face, gauge turned
 * @throws {Refusal} `too-few`; `not-finite`
 * @source own derivation: docs/methods/camber-inclinometer.md
 * @example zeroByReversal({ one: [0.3], other: [-0.1] }, { id: 'a', resolution: 0, placing: 0 }, 'morning').zero.value // 0.1
 */
export function zeroByReversal(
  { one, other }: { readonly one: readonly number[]; readonly other: readonly number[] },
  gauge: Pick<Inclinometer, 'id' | 'resolution' | 'placing'>,
  occasion: string,
): { zero: Measured; slope: Measured } {
  const first = meanReading(one, gauge, `${gauge.id} zero, ${occasion}, one way`).measured
  const second = meanReading(other, gauge, `${gauge.id} zero, ${occasion}, turned`).measured
  return {
    zero: combine([
      { of: first, times: 1 / 2 },
      { of: second, times: 1 / 2 },
    ]),
    slope: combine([
      { of: first, times: 1 / 2 },
      { of: second, times: -1 / 2 },
    ]),
  }
}
