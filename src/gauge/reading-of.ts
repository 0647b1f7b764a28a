import { camberReading } from './camber-reading.ts'
import type { GaugeContext } from './gauge-context.ts'
import type { GaugeReading } from './gauge-reading.ts'
import type { Observation } from './observation.ts'
import { playReading } from './play-reading.ts'
import { rideHeight } from './ride-height.ts'
import { runOutReading } from './run-out-reading.ts'
import { sweepReading } from './sweep-reading.ts'
import { toeByStrings } from './toe-by-strings.ts'
import { totalToeByTape } from './total-toe-by-tape.ts'

/**
 * Everything one observation says: each reading with its spread, what was corrected and what was assumed.
 *
 * @throws {Refusal} `not-with-this-kit`; `no-instrument`; `wrong-instrument`; `too-few`; `not-finite`; `not-positive`; `no-sweep`; `not-level`; `no-floor-size`
 * @source the page named in each reading
 */
export function readingOf(observation: Observation, context: GaugeContext): readonly GaugeReading[] {
  switch (observation.method) {
    case 'inclinometer':
      return [camberReading(observation, context)]
    case 'strings and rule':
      return toeByStrings(observation, context)
    case 'tape on a scribed line':
      return [totalToeByTape(observation, context)]
    case 'steer sweep':
      return sweepReading(observation, context)
    case 'run-out':
      return [runOutReading(observation, context)]
    case 'ride height by rule':
      return [rideHeight(observation, context)]
    case 'dial indicator':
      return [playReading(observation, context)]
  }
}
