import type { CornersSetup, WheelSetup } from '../adjust/index.ts'
import { type Corner, familyOf, jointLetters, pointNames } from '../corner/index.ts'
import { mechanism, type Point, poseAt } from '../linkage/index.ts'
import { metre } from '../quantity/index.ts'
import { figureOf, type LetteredJoint } from './figure.ts'
import type { SheetCorner } from './sheet.ts'
import { displacementStanding } from './wheel-setups.ts'

/** Both corners of an axle as line drawings: the ride pose, and as they stand with adjusters and height. */
export function sheetCorners(corner: Corner, setup: CornersSetup): readonly SheetCorner[] {
  const joints = letteredJoints(corner)
  return (['left', 'right'] as const).flatMap((side): readonly SheetCorner[] => {
    const wheel = setup[side]
    const { points } = wheel
    // an arm that turns about one hinge has no links to draw
    if (points.layout === 'semi-trailing arm') return []
    const common = { points, side, joints, tyreWidth: corner.wheel.width }
    const design = poseAt(mechanism(points), { travel: metre(0), rack: metre(0) })
    const { displacement, bodyAt } = standing(wheel)
    const present = poseAt(mechanism(points, displacement), wheel.drive)
    return [
      {
        side,
        title: `${side === 'left' ? 'Left' : 'Right'} ${corner.axle}, from its points`,
        ride: figureOf({ ...common, pose: design }),
        present: figureOf({ ...common, pose: present, bodyAt }),
      },
    ]
  })
}

function letteredJoints(corner: Corner): readonly LetteredJoint[] {
  const letters = jointLetters(corner)
  const names = pointNames[familyOf(corner.layout)]
  return Object.entries(corner.joints).flatMap(([id, joint]): LetteredJoint[] => {
    const point = joint.at === undefined ? undefined : names[joint.at]
    if (point === undefined || point === 'wheelCentre') return []
    return [
      {
        letter: letters[id] ?? '',
        name: joint.name ?? id.replaceAll('-', ' '),
        point,
        adjuster: joint.adjuster ?? null,
      },
    ]
  })
}

/** What the adjusters do to a wheel, and where its body points lie then. */
function standing(wheel: WheelSetup) {
  const { points } = wheel
  const displacement = displacementStanding(wheel)
  const bodyAt: Record<string, Point> = {}
  for (const [name, [dx, dy, dz]] of Object.entries(displacement.body ?? {})) {
    const at = (points as unknown as Record<string, Point | undefined>)[name]
    if (at) bodyAt[name] = [at[0] + dx, at[1] + dy, at[2] + dz]
  }
  return { displacement, bodyAt }
}
