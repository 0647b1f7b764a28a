import { combine, propagate } from '../measure/index.ts'
import type { GaugeContext } from './gauge-context.ts'
import type { GaugeReading } from './gauge-reading.ts'
import { aboveZero } from './gauge-refusal.ts'
import { instrumentOf } from './instrument-of.ts'
import { meanReading } from './mean-reading.ts'
import type { RunOutObservation } from './observation.ts'
import { runOutFit } from './run-out-fit.ts'

/**
 * Run-out of a rim as an angle: total of the fitted sine over the diameter at which the dial stood. Half of it is
 * the amplitude that camber and toe swing by.
 *
 * @returns whole swing, rad
 * @throws {Refusal} `no-instrument`; `wrong-instrument`; `too-few`; `not-finite`; `not-positive`
 * @source own derivation: docs/methods/run-out.md
 */
export function runOutReading(
  { wheel, gauge, readings, diameter, id }: RunOutObservation,
  context: GaugeContext,
): GaugeReading {
  const dial = instrumentOf(context.instruments, gauge, ['dial indicator'])
  const across = aboveZero(diameter, 'diameter')
  const fit = runOutFit(readings)
  // Each reading's share in the amplitude, along the fitted phase; even places give 2/n·cos(θ − φ).
  const shares = readings.map(({ wheelTurn }) => Math.cos(wheelTurn - fit.phase))
  const scale = 1 / shares.reduce((sum, share) => sum + share ** 2, 0)
  const noise = meanReading(
    readings.map(() => 0),
    dial,
    `${wheel} run-out, ${id}`,
    {
      weights: shares.map((share) => share * scale),
      residual: fit.residual,
    },
  )
  const amplitude = combine([{ of: noise.measured, times: 1 }], fit.amplitude)
  return {
    name: `${wheel} run-out`,
    measured: propagate(([a]) => 2 * Math.atan(a! / across), [amplitude]),
    corrections: [],
    notes: noise.notes,
    formula: '2·atan(amplitude/diameter), amplitude of the sine fitted around the wheel',
    source: 'docs/methods/run-out.md',
  }
}
