import type { Corner } from '../corner/index.ts'
import type { HeightFact, JobState, Round } from '../job/index.ts'
import type { Side } from '../linkage/index.ts'
import { formatLength, metre, type UnitChoice } from '../quantity/index.ts'
import { heightIn } from './wheel-setups.ts'

/** How far past its stops a wheel may be read: stops give, arch edges are bent. m. @source own choice */
const room = 0.015

/** Ride heights of a round at which the corner model's wheel cannot stand, each said with what to do. */
export function impossibleHeights(
  corner: Corner,
  state: JobState,
  round: Round | null,
  units: UnitChoice,
): readonly string[] {
  const { rideHeight, travel } = corner
  if (!rideHeight || !travel) return []
  const low = rideHeight.at - travel.bump
  const high = rideHeight.at + travel.droop
  const said = (value: number) => formatLength(metre(value), { unit: units.length, digits: 0 })
  return (['left', 'right'] as const).flatMap((side: Side) => {
    const fact = heightIn(state, round, `${corner.axle} ${side}`)
    if (!fact || (heightOf(fact) > low - room && heightOf(fact) < high + room)) return []
    return [
      `The ${corner.axle} ${side} wheel stands at ${said(heightOf(fact))} by the log, and between its stops it stands at ${said(low)} to ${said(high)}. Read the height again and correct the entry; until then there are no moves for this axle.`,
    ]
  })
}

const heightOf = ({ observation: { readings } }: HeightFact): number =>
  readings.reduce((sum, r) => sum + r, 0) / readings.length
