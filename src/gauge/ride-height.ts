import { combine, rectangular } from '../measure/index.ts'
import type { GaugeContext } from './gauge-context.ts'
import type { GaugeReading } from './gauge-reading.ts'
import { instrumentOf } from './instrument-of.ts'
import { meanReading } from './mean-reading.ts'
import type { RideHeightObservation } from './observation.ts'
import { sourceName } from './source-name.ts'

/**
 * Ride height from a rule: the mean, with the rule's zero end as an error common to all it reads.
 *
 * @throws {Refusal} `no-instrument`; `wrong-instrument`; `too-few`; `not-finite`
 * @source own derivation: docs/methods/height.md
 */
export function rideHeight(
  { wheel, rule: id, readings, id: occasion }: RideHeightObservation,
  context: GaugeContext,
): GaugeReading {
  const rule = instrumentOf(context.instruments, id, ['rule'])
  const mean = meanReading(readings, rule, `${wheel} height, ${occasion}`)
  return {
    name: `${wheel} ride height`,
    measured: combine([
      { of: mean.measured, times: 1 },
      { of: rectangular(rule.zeroError, sourceName('zero', rule.id)), times: 1 },
    ]),
    corrections: [],
    notes: mean.notes,
    formula: 'mean of the readings',
    source: 'docs/methods/height.md',
  }
}
