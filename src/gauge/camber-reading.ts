import type { AxleEnd, Side } from '../linkage/index.ts'
import { combine, rectangular } from '../measure/index.ts'
import { floorCorrection } from './floor-correction.ts'
import { floorTilt } from './floor-tilt.ts'
import type { GaugeContext } from './gauge-context.ts'
import type { GaugeReading } from './gauge-reading.ts'
import { instrumentOf } from './instrument-of.ts'
import { meanReading } from './mean-reading.ts'
import type { InclinometerObservation } from './observation.ts'
import { differentPlaces, runOutFit } from './run-out-fit.ts'
import { runOutLeft } from './run-out-left.ts'
import { sourceName } from './source-name.ts'
import { wheelTilt } from './wheel-tilt.ts'
import { widenedByKnownPlay } from './widened-by-play.ts'
import { withoutZero } from './without-zero.ts'

const PLACES_FOR_FIT = 3

/**
 * Camber of one wheel from an inclinometer on rim or hub: run-out out by a sine (three places), by halves (two), or
 * left in the spread (one); zero and floor taken off.
 *
 * @throws {Refusal} `no-instrument`; `wrong-instrument`; `too-few`; `not-finite`; `not-level`; `no-floor-size`
 * @assumes the gauge is held with its face to the person at every wheel, so its zero error has one sign in camber
 * @source own derivation: docs/methods/camber-inclinometer.md
 */
export function camberReading(observation: InclinometerObservation, context: GaugeContext): GaugeReading {
  const { wheel, readings, id } = observation
  const gauge = instrumentOf(context.instruments, observation.gauge, ['inclinometer'])
  const [axle, side] = wheel.split(' ') as [AxleEnd, Side]
  const what = `${wheel} camber, ${id}`
  const values = readings.map(({ reading }) => wheelTilt(reading, what))
  const places = differentPlaces(readings)
  // Run-out moves the reading across the steps, so from two places on each step is an error of its own.
  const steady = places < 2 && gauge.placing < gauge.resolution / 2
  const fit = places >= PLACES_FOR_FIT ? runOutFit(readings) : undefined
  const mean = meanReading(values, gauge, what, {
    steady,
    ...(fit ? { weights: fit.weights, residual: fit.residual } : places > 1 ? { residual: NONE } : {}),
  })
  const left = runOutLeft(context.runOut?.[wheel], {
    wheel,
    share: fit ? 0 : leftOf(readings),
    where: `${id}, camber`,
  })
  const zeroed = withoutZero(mean.measured, gauge, context)
  const tilt = floorTilt(context)
  const { measured, correction } = floorCorrection(
    combine([
      { of: zeroed.measured, times: 1 },
      { of: left.measured, times: 1 },
      { of: rectangular(gauge.accuracy, sourceName('scale', gauge.id)), times: 1 },
    ]),
    { angle: 'camber', axle, side },
    tilt,
  )
  const widened = widenedByKnownPlay(measured, context.plays, { wheel, moves: 'camber' })
  return {
    name: `${wheel} camber`,
    measured: widened.measured,
    corrections: [...zeroed.corrections, correction],
    notes: [...mean.notes, ...left.notes, ...tilt.notes, ...widened.notes],
    formula: fit
      ? 'mean of a sine fitted to the readings around the wheel, ± floor roll'
      : 'mean of the readings, ± floor roll',
    source: 'docs/methods/camber-inclinometer.md',
  }
}

/** With two places the difference is run-out, not scatter. */
const NONE = { squares: 0, dof: 0 }

/** Length of the mean unit vector: how much of a first harmonic the mean keeps at worst. */
function leftOf(readings: InclinometerObservation['readings']): number {
  const mean = (f: (x: number) => number) =>
    readings.reduce((sum, { wheelTurn }) => sum + f(wheelTurn), 0) / readings.length
  return readings.length === 0 ? 0 : Math.hypot(mean(Math.cos), mean(Math.sin))
}
