import {
  type AdjusterSet,
  type AxleSetup,
  type CornersSetup,
  displacementOf,
  type WheelSetup,
  type WholeAxleSetup,
} from '../adjust/index.ts'
import {
  adjustersOf,
  axleAdjustersOf,
  type Corner,
  cornerPoints,
  isWholeAxle,
  pointSpreads,
  wholeAxlePoints,
} from '../corner/index.ts'
import {
  type HeightFact,
  type JobState,
  type Round,
  type Setting,
  standOf,
  standOfAxle,
  type WheelName,
} from '../job/index.ts'
import { type AxleEnd, type Displacement, type Side, sumOfDisplacements } from '../linkage/index.ts'
import { metre, rad } from '../quantity/index.ts'

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

/** Adjusters of one wheel as they are fitted, and where they stand; null where the log does not say. */
export function adjustersStanding(
  corner: Corner,
  settings: readonly Setting[],
  side: Side,
): Pick<WheelSetup, 'adjusters' | 'settings'> {
  const stands = standOf({ settings, adjusters: adjustersOf(corner), wheel: `${corner.axle} ${side}` })
  return {
    adjusters: stands.map(({ adjuster }) => adjuster),
    settings: Object.fromEntries(stands.map(({ adjuster, setting }) => [adjuster.id, setting])),
  }
}

/** What a wheel's adjusters do to its points; those of unknown setting stay as drawn. */
export const displacementStanding = ({
  points,
  adjusters,
  settings,
}: Pick<WheelSetup, 'points' | 'adjusters' | 'settings'>): Displacement =>
  sumOfDisplacements(
    adjusters.flatMap((adjuster) => {
      const setting = settings[adjuster.id]
      return typeof setting === 'number' ? [displacementOf(adjuster, points, setting)] : []
    }),
  )

/** Adjusters that the axle has once, as `adjustersStanding`; null where it has none. */
function axleAdjustersStanding(corner: Corner, settings: readonly Setting[]): AdjusterSet | null {
  const adjusters = axleAdjustersOf(corner)
  if (adjusters.length === 0) return null
  const stands = standOfAxle({ settings, adjusters, axle: corner.axle })
  return {
    adjusters,
    settings: Object.fromEntries(stands.map(({ adjuster, setting }) => [adjuster.id, setting])),
  }
}

/** Both wheels of an axle as they stood in a round, whether each hangs by itself or both on one body. */
export function axleSetup(corner: Corner, state: JobState, round: Round): AxleSetup {
  return isWholeAxle(corner.layout)
    ? wholeAxleSetup(corner, state, round)
    : cornersSetup(corner, state, round)
}

/** An axle whose wheels hang by themselves. */
export function cornersSetup(corner: Corner, state: JobState, round: Round): CornersSetup {
  const end: AxleEnd = corner.axle
  const wheel = (side: Side): WheelSetup => ({
    points: cornerPoints(corner),
    drive: { travel: metre(travelOf(corner, heightIn(state, round, `${end} ${side}`))), rack: metre(0) },
    ...adjustersStanding(corner, round.settings, side),
  })
  const both = axleAdjustersStanding(corner, round.settings)
  return { end, left: wheel('left'), right: wheel('right'), ...(both ? { both } : {}) }
}

function wholeAxleSetup(corner: Corner, state: JobState, round: Round): WholeAxleSetup {
  const end: AxleEnd = corner.axle
  const axle = wholeAxlePoints(corner)
  const travel = (side: Side) => travelOf(corner, heightIn(state, round, `${end} ${side}`))
  const [left, right] = [travel('left'), travel('right')]
  const across = axle.left.wheelCentre[1] - axle.right.wheelCentre[1]
  const both = axleAdjustersStanding(corner, round.settings)
  return {
    end,
    axle,
    drive: {
      heave: metre((left + right) / 2),
      roll: rad(Math.asin(Math.max(-1, Math.min(1, (left - right) / across)))),
      drop: rad(0),
    },
    left: adjustersStanding(corner, round.settings, 'left'),
    right: adjustersStanding(corner, round.settings, 'right'),
    ...(both ? { both } : {}),
  }
}
