import { type AxleReading, axleReadings, type ReadingName } from '../linkage/index.ts'
import { combine, type Measured } from '../measure/index.ts'
import type { MovesProblem } from './problem.ts'

/**
 * A reading as given, or put together from the wheel readings it is the sum of; shared errors stay shared.
 *
 * @returns null when it was neither read nor follows from what was read
 * @source definition (`axleReadings`)
 */
export function readingOf(readings: MovesProblem['readings'], name: ReadingName): Measured | null {
  const given = readings[name]
  if (given) return given
  if (!(name in axleReadings)) return null
  const parts = axleReadings[name as AxleReading].map(([wheel, by]) => ({ of: readings[wheel], times: by }))
  if (parts.some((part) => !part.of)) return null
  return combine(parts.map(({ of, times }) => ({ of: of!, times })))
}
