import type { Adjuster } from '../src/adjust/index.ts'
import {
  type Corner,
  type CornerMeasurement,
  changeByMove,
  type FittedCorner,
  fitCorner,
  foreseenOf,
  nextMeasurements,
  type Observable,
  type WorkshopMeasurement,
  workshopMeasurements,
} from '../src/corner/index.ts'
import type { WheelAngle } from '../src/linkage/index.ts'
import { normal, type SeededRandom } from '../src/measure/index.ts'

/** What an observable is on a corner whose points are known: the corner that a fit to nothing gives back. */
export function onVehicle(vehicle: Corner): (of: Observable) => number {
  const drawn = fitCorner({ corner: vehicle, measurements: [] })
  // nothing is uncertain of a vehicle that was drawn
  const known: FittedCorner = { ...drawn, covariance: drawn.covariance.map((row) => row.map(() => 0)) }
  return (of) => foreseenOf(known, of).value
}

/** A measurement taken with its usual error; without random numbers, taken without any. */
export const taken = (
  { of, spread }: WorkshopMeasurement,
  value: number,
  index: number,
  random?: SeededRandom,
): CornerMeasurement => ({
  of,
  read: {
    ...normal(spread, `measurement ${index + 1}`),
    value: value + (random ? spread * random.normal() : 0),
  },
})

/**
 * The move that an adjuster is there for: from the middle of its range to where the typical corner's angle has changed by half
 * a degree, or to the end of the range.
 */
export function moveOf(corner: Corner, adjuster: Adjuster): { angle: WheelAngle; question: Observable } {
  const angle = adjuster.sets ?? 'camber'
  const [low, high] = adjuster.range
  const from = (low + high) / 2
  const on = onVehicle(corner)
  const whole = Math.abs(on(changeByMove(angle, { adjuster, from, to: high })))
  const share = Math.min(1, (0.5 * Math.PI) / 180 / whole)
  return { angle, question: changeByMove(angle, { adjuster, from, to: from + share * (high - from) }) }
}

/** The twelve measurements that shrink the spread of an answer most on the typical corner, without a trial move. */
export function twelveFor(corner: Corner, question: Observable): readonly WorkshopMeasurement[] {
  const on = onVehicle(corner)
  const all = workshopMeasurements(corner).filter(({ of }) => !of.says.includes(' by '))
  const chosen: WorkshopMeasurement[] = []
  while (chosen.length < 12 && chosen.length < all.length) {
    const fit = fitCorner({ corner, measurements: chosen.map((one, i) => taken(one, on(one.of), i)) })
    const left = all.filter((one) => !chosen.includes(one))
    chosen.push(nextMeasurements(fit, question, left)[0]!.measurement)
  }
  return chosen
}
