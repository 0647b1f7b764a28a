import { combine, type Measured, rectangular } from '../measure/index.ts'
import type { GaugeContext } from './gauge-context.ts'
import type { Correction } from './gauge-reading.ts'
import { sourceName } from './source-name.ts'

/** Takes off what the gauge shows at true zero; without such a reading its zero error is an error of that gauge. */
export function withoutZero(
  read: Measured,
  gauge: { readonly id: string; readonly zeroError: number },
  { zeros }: GaugeContext,
): { measured: Measured; corrections: readonly Correction[] } {
  const zero = zeros?.[gauge.id]
  if (!zero) {
    const error = rectangular(gauge.zeroError, sourceName('zero', gauge.id))
    return {
      measured: combine([
        { of: read, times: 1 },
        { of: error, times: 1 },
      ]),
      corrections: [],
    }
  }
  return {
    measured: combine([
      { of: read, times: 1 },
      { of: zero, times: -1 },
    ]),
    corrections: [{ name: 'zero', by: -zero.value }],
  }
}
