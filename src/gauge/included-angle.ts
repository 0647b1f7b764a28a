import { combine, type Measured } from '../measure/index.ts'
import type { GaugeReading } from './gauge-reading.ts'

/**
 * Included angle of a front wheel: SAI + camber. A tilted floor leaves it, and so does its uncertainty.
 *
 * @source engineering definition: docs/methods/signs.md
 * @example includedAngle('left', { sai: exact(0.2), camber: exact(-0.01) }).measured.value // 0.19
 */
export function includedAngle(
  side: 'left' | 'right',
  { sai, camber }: { readonly sai: Measured; readonly camber: Measured },
): GaugeReading {
  return {
    name: `front ${side} included angle`,
    measured: combine([
      { of: sai, times: 1 },
      { of: camber, times: 1 },
    ]),
    corrections: [],
    notes: [],
    formula: 'SAI + camber',
    source: 'docs/methods/steer-sweep.md',
  }
}
