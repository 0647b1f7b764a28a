import type { AxleSetup, WheelSetup } from '../adjust/index.ts'
import { adjustersOf, type Corner, cornerPoints, pointSpreads } from '../corner/index.ts'
import type { HeightFact, JobState, Round, WheelName } from '../job/index.ts'
import type { AxleEnd, Side } from '../linkage/index.ts'
import { metre } from '../quantity/index.ts'
import { asFitted, settingsNow } from './settings-now.ts'

/** Points are taken as measured when none is less sure than this; else as typical of the layout. @source own choice */
const measuredWithin = 0.005

/** Whether a corner's points were measured on the vehicle or only stand for its layout. */
export const pointsKnown = (corner: Corner): 'measured' | 'typical' =>
  Math.max(0, ...Object.values(pointSpreads(corner))) <= measuredWithin ? 'measured' : 'typical'

/** The ride height of one wheel that holds for a round: settled in it, else the newest before it. */
export function heightIn(state: JobState, round: Round | null, wheel: WheelName): HeightFact | null {
  const standing = state.heights.filter((h) => h.wheel === wheel && h.when !== 'hanging')
  const until = round ? standing.filter((h) => h.round <= round.number) : standing
  return until.at(-1) ?? standing[0] ?? null
}

/** How far a wheel stands above its design height, m; 0 where no height was measured or the model gives none. */
export function travelOf(corner: Corner, height: HeightFact | null): number {
  if (!height || !corner.rideHeight) return 0
  const { readings } = height.observation
  const mean = readings.reduce((sum, r) => sum + r, 0) / readings.length
  return corner.rideHeight.at - mean
}

/** Both wheels of an axle as they stood in a round. */
export function axleSetup(corner: Corner, state: JobState, round: Round): AxleSetup {
  const end: AxleEnd = corner.axle
  const wheel = (side: Side): WheelSetup => {
    const place = { end, side }
    const adjusters = asFitted(adjustersOf(corner), round.settings, place)
    return {
      points: cornerPoints(corner),
      drive: { travel: metre(travelOf(corner, heightIn(state, round, `${end} ${side}`))), rack: metre(0) },
      adjusters,
      settings: settingsNow(adjusters, round.settings, place),
    }
  }
  return { end, left: wheel('left'), right: wheel('right') }
}
