import type { Corner } from '../corner/index.ts'
import type { HeightFact, JobState, Round } from '../job/index.ts'
import type { Side } from '../linkage/index.ts'
import { formatLength, metre, type UnitChoice } from '../quantity/index.ts'
import { heightIn } from './wheel-setups.ts'

/** How far past its stops a wheel may be read: stops give, arch edges are bent. m. @source own choice */
const room = 0.015

/**
 * Ride heights at which the corner model's wheel cannot stand, each said with what to do: those that the angles of a
 * round were read at, and those of the wheels hanging.
 */
export function impossibleHeights(
  corner: Corner,
  state: JobState,
  round: Round | null,
  units: UnitChoice,
): { readonly standing: readonly string[]; readonly hanging: Readonly<Partial<Record<Side, string>>> } {
  const { rideHeight, travel } = corner
  if (!rideHeight || !travel) return { standing: [], hanging: {} }
  const low = rideHeight.at - travel.bump
  const high = rideHeight.at + travel.droop
  const said = (value: number) => formatLength(metre(value), { unit: units.length, digits: 0 })
  const sentence = (fact: HeightFact | null | undefined, side: Side, then: string): string[] => {
    if (!fact || (heightOf(fact) > low - room && heightOf(fact) < high + room)) return []
    return [
      `The ${corner.axle} ${side} wheel ${fact.when === 'hanging' ? 'hangs' : 'stands'} at ${said(heightOf(fact))} by the log, and between its stops it stands at ${said(low)} to ${said(high)}. Read the height again and correct the entry; until then there ${then}.`,
    ]
  }
  const sides: readonly Side[] = ['left', 'right']
  return {
    standing: sides.flatMap((side) =>
      sentence(heightIn(state, round, `${corner.axle} ${side}`), side, 'are no moves for this axle'),
    ),
    hanging: Object.fromEntries(
      sides.flatMap((side) =>
        sentence(
          state.heights.findLast((h) => h.wheel === `${corner.axle} ${side}` && h.when === 'hanging'),
          side,
          'is no clamp pose for this wheel',
        ).map((told) => [side, told]),
      ),
    ),
  }
}

const heightOf = ({ observation: { readings } }: HeightFact): number =>
  readings.reduce((sum, r) => sum + r, 0) / readings.length
