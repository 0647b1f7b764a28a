import {
  angleRead,
  type CornerMeasurement,
  distanceBetween,
  type Observable,
  offsetOf,
  otherWheelTurned,
  slopeOf,
  type UsualMeasuring,
  usualMeasuring,
} from '../corner/index.ts'
import type { JobState, WheelName } from '../job/index.ts'
import { normal } from '../measure/index.ts'

type MeasuredFact = JobState['measured'][number]

/** A measurement with the entry that says it. */
export interface MeasuredOnWheel {
  readonly entry: number | null
  readonly measurement: CornerMeasurement
}

/**
 * What the log's "measured" entries say of one wheel, as the fit takes it. Where no spread was written the usual one
 * stands; repeats give their mean and no smaller spread, since what a tape lacks is the middle of the pivot.
 *
 * @source own derivation: docs/methods/fit.md
 */
export function measuredOnWheel(state: JobState, wheel: WheelName): readonly MeasuredOnWheel[] {
  return state.measured
    .filter((fact) => fact.wheel === wheel)
    .map((fact) => {
      const { of, usual } = observed(fact)
      const value = fact.readings.reduce((sum, { value: one }) => sum + one, 0) / fact.readings.length
      const spread = fact.spread?.value ?? usual.spread
      return {
        entry: fact.entry,
        measurement: { of, read: { ...normal(spread, `entry ${fact.entry}`), value } },
      }
    })
}

function observed(fact: MeasuredFact): { readonly of: Observable; readonly usual: UsualMeasuring } {
  switch (fact.what) {
    case 'distance':
      return { of: distanceBetween(fact.from, fact.to), usual: usualMeasuring.tape }
    case 'height':
      return { of: offsetOf({ point: fact.point, way: 'up' }), usual: usualMeasuring.rule }
    case 'offset':
      return {
        of: offsetOf({
          point: fact.point,
          way: fact.way,
          ...(fact.from === undefined ? {} : { from: fact.from }),
        }),
        usual: usualMeasuring.across,
      }
    case 'slope':
      return {
        of: slopeOf({ from: fact.from, to: fact.to, ...(fact.seen ? { seen: fact.seen } : {}) }),
        usual: usualMeasuring.slope,
      }
    case 'angle': {
      const of = angleRead(fact.angle, {
        ...(fact.travel ? { travel: fact.travel.value } : {}),
        ...(fact.outward ? { outward: fact.outward.value } : {}),
      })
      const still =
        fact.angle === 'camber' || fact.angle === 'toe' ? usualMeasuring[fact.angle] : usualMeasuring.axis
      return { of, usual: fact.outward ? usualMeasuring.lock : still }
    }
    case 'outer wheel':
      return { of: otherWheelTurned(fact.inner.value), usual: usualMeasuring.lock }
  }
}
