import { combine, propagate, rectangular } from '../measure/index.ts'
import type { GaugeContext } from './gauge-context.ts'
import type { GaugeReading } from './gauge-reading.ts'
import { aboveZero } from './gauge-refusal.ts'
import { instrumentOf } from './instrument-of.ts'
import { meanReading } from './mean-reading.ts'
import type { PlayObservation } from './observation.ts'
import { sourceName } from './source-name.ts'

/**
 * Play as an angle: full swing of the dial over the arm from the pivot.
 *
 * @returns whole swing, rad
 * @throws {Refusal} `no-instrument`; `wrong-instrument`; `too-few`; `not-finite`; `not-positive`
 * @source geometry: atan(swing/arm)
 */
export function playReading(
  { wheel, gauge, moves, swings, arm, id }: PlayObservation,
  context: GaugeContext,
): GaugeReading {
  const dial = instrumentOf(context.instruments, gauge, ['dial indicator'])
  const mean = meanReading(swings, dial, `${wheel} ${moves} play, ${id}`)
  const swing = combine([
    { of: mean.measured, times: 1 },
    { of: rectangular(dial.accuracy, sourceName('scale', dial.id)), times: 1 },
  ])
  const length = aboveZero(arm, 'arm')
  return {
    name: `${wheel} ${moves} play`,
    measured: propagate(([s]) => Math.atan(s! / length), [swing]),
    corrections: [],
    notes: mean.notes,
    formula: 'atan(swing/arm)',
    source: 'geometry',
  }
}
