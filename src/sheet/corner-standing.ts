import { type Corner, cornerPoints, familyOf, isWholeAxle, pointNames } from '../corner/index.ts'
import { type JobState, type Round, type WheelName, wheelPlace } from '../job/index.ts'
import { mechanism, type Point, poseAt } from '../linkage/index.ts'
import { metre, rad } from '../quantity/index.ts'
import { adjustersStanding, displacementStanding, heightIn, travelOf } from './wheel-setups.ts'

/**
 * A corner model as its wheel stands in a round: at the height that was measured, with its adjusters where they are. The floor
 * stays where it is; what is lower is the body. So what is measured on it is held against this and not against the drawing.
 * A whole axle stays as drawn.
 *
 * @throws {Refusal} what the linkage says when the model cannot stand so
 * @source own derivation: docs/methods/fit.md
 */
export function cornerStanding(
  corner: Corner,
  state: JobState,
  round: Round | null,
  wheel: WheelName,
): Corner {
  if (isWholeAxle(corner.layout)) return corner
  const points = cornerPoints(corner)
  const { adjusters, settings } = adjustersStanding(
    corner,
    round?.settings ?? state.settings,
    wheelPlace(wheel).side,
  )
  const by = displacementStanding({ points, adjusters, settings })
  const travel = travelOf(corner, heightIn(state, round, wheel))
  const pose = poseAt(mechanism(points, by), { travel: metre(travel), rack: metre(0) })
  const standing = { ...corner.points }
  for (const [name, inside] of Object.entries(pointNames[familyOf(corner.layout)])) {
    const point = standing[name]!
    const carried = inside === 'wheelCentre' ? pose.wheelCentre : pose.points[inside]
    const [x, y, z] = carried ?? plus(point.at, by.body?.[inside])
    standing[name] = { ...point, at: [metre(x), metre(y), metre(z - travel)] }
  }
  const wheelStands = { ...corner.wheel, camber: rad(pose.camber), toe: rad(pose.toe) }
  return { ...corner, points: standing, wheel: wheelStands }
}

const plus = ([x, y, z]: Point, [dx, dy, dz]: Point = [0, 0, 0]): Point => [x + dx, y + dy, z + dz]
