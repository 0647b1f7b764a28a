import type { AxleSetup, WheelSetup, WholeAxleSetup } from '../adjust/index.ts'
import { type Corner, familyOf, jointLetters, pointNames } from '../corner/index.ts'
import { mechanism, type Point, poseAt, type Side } from '../linkage/index.ts'
import { metre, rad } from '../quantity/index.ts'
import { axleFigure } from './axle-figure.ts'
import { axleStanding } from './axle-standing.ts'
import { figureOf, type LetteredJoint } from './figure.ts'
import type { SheetCorner } from './sheet.ts'
import { displacementStanding } from './wheel-setups.ts'

/** Both corners of an axle as line drawings: the ride pose, and as they stand with adjusters and height. */
export function sheetCorners(corner: Corner, setup: AxleSetup): readonly SheetCorner[] {
  if ('axle' in setup) return wholeAxle(corner, setup)
  const joints = letteredJoints(corner)
  return (['left', 'right'] as const).flatMap((side): readonly SheetCorner[] => {
    const wheel = setup[side]
    const { points } = wheel
    const common = { points, side, joints, tyreWidth: corner.wheel.width }
    const design = poseAt(mechanism(points), { travel: metre(0), rack: metre(0) })
    const { displacement, bodyAt } = standing(wheel)
    const present = poseAt(mechanism(points, displacement), wheel.drive)
    return [
      {
        side,
        title: titleOf(corner, side),
        ride: figureOf({ ...common, pose: design }),
        present: figureOf({ ...common, pose: present, bodyAt }),
      },
    ]
  })
}

/** Both halves of an axle that is one body. */
function wholeAxle(corner: Corner, setup: WholeAxleSetup): readonly SheetCorner[] {
  const drawn = axleStanding(setup, { heave: metre(0), roll: rad(0), drop: rad(0) }, 'drawn')
  const present = axleStanding(setup, setup.drive)
  return (['left', 'right'] as const).map(
    (side): SheetCorner => ({
      side,
      title: titleOf(corner, side),
      ride: axleFigure({ corner, setup, stands: drawn, side }),
      present: axleFigure({ corner, setup, stands: present, side }),
    }),
  )
}

const titleOf = ({ axle }: Corner, side: Side): string =>
  `${side === 'left' ? 'Left' : 'Right'} ${axle}, from its points`

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
