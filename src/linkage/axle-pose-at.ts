import { metre, rad } from '../quantity/index.ts'
import { axleBarred } from './axle-barred.ts'
import { inBody, linkRows } from './axle-place.ts'
import type { AxlePose, AxleWheelPose } from './axle-pose.ts'
import { type AxleState, dropEnd, knuckleInBody } from './axle-state.ts'
import { checkDrive } from './check-drive.ts'
import { checkKinds } from './check-kinds.ts'
import { checkFinite } from './check-points.ts'
import { followAxle } from './follow-axle.ts'
import { knuckleTurn, onKnuckle } from './knuckle-on-axle.ts'
import { mirrorPoint } from './mirror-point.ts'
import type { Point } from './points.ts'
import { contactOf, steeringAxisOf } from './pose-of-state.ts'
import { turnedBy } from './quaternion.ts'
import type { SolidAxle } from './solid-axle.ts'
import type { AxleDrive } from './solid-axle-points.ts'
import { minus, norm, plus } from './vector.ts'
import type { Side } from './wheel-angles.ts'

const design = { heave: 0, roll: 0, drop: 0 } as AxleDrive

/**
 * The pose of a solid axle: on leaf springs in closed form, on links followed from the design pose; then its knuckles
 * about their pins, first the one that the drag link holds, then the other by the tie rod.
 *
 * @throws {Refusal} `not-finite`; `unreachable` past the end of the straight way from the design pose; `degenerate`
 *   when a wheel would lie flat
 * @source own derivation: docs/methods/solid-axle.md
 * @example inDegrees(axlePoseAt(solidAxle(axlePoints), { ...straight, roll: deg(2) }).left.camber) // -0.999326
 */
export function axlePoseAt(a: SolidAxle, drive: AxleDrive): AxlePose {
  return axlePoseOf(a, drive, axleStateAt(a, drive))
}

/** State of an axle at a drive, followed from design. */
export function axleStateAt(a: SolidAxle, drive: AxleDrive): AxleState {
  const { heave, roll, drop } = drive
  checkKinds({ heave, roll, drop }, { heave: 'number', roll: 'number', drop: 'number' }, '')
  checkFinite({ heave, roll, drop }, '')
  checkDrive({ heave }, { roll, drop })
  const to = { heave, roll, drop }
  const end = followAxle(a, design, to)
  if (end.bar || !end.state) throw axleBarred(a, design, to, end)
  return end.state
}

/** Everything an axle's pose says. */
export function axlePoseOf(a: SolidAxle, { heave, roll, drop }: AxleDrive, state: AxleState): AxlePose {
  return {
    heave,
    roll,
    drop,
    left: wheelPose(a, state, 'left'),
    right: wheelPose(a, state, 'right'),
    middle: state.place.middle,
    turn: state.place.turn,
    residual: metre(residualOf(a, { heave, roll, drop }, state)),
  }
}

function residualOf(a: SolidAxle, { heave, roll, drop }: AxleDrive, state: AxleState): number {
  const errors = a.leaf ? [] : [...linkRows(a, state.place, heave, roll).error]
  const hub = (side: Side): Point => inBody(a, state.place, a.points[side].wheelCentre)
  errors.push((hub('left')[2] + hub('right')[2]) / 2 - a.middle[2] - heave)
  if (a.points.steering && a.steering) {
    const { drags, dragOuter, tieLeft, tieRight } = a.points.steering
    const drag = minus(knuckleInBody(a, state, drags, dragOuter), dropEnd(a, drop))
    const tie = minus(
      onKnuckle(a.left, state.steer.left, tieLeft),
      onKnuckle(a.right, state.steer.right, tieRight),
    )
    errors.push(norm(drag) - a.steering.drag, norm(tie) - a.steering.tie)
  }
  return Math.max(...errors.map(Math.abs))
}

/** One wheel; the right one's angles are read from its mirror image. */
function wheelPose(a: SolidAxle, state: AxleState, side: Side): AxleWheelPose {
  const knuckle = a[side]
  const steer = state.steer[side]
  const mirrored = (p: Point): Point => (side === 'left' ? p : mirrorPoint(p))
  const hub = knuckleInBody(a, state, side, a.points[side].wheelCentre)
  const spinAxis = turnedBy(state.place.turn, turnedBy(knuckleTurn(knuckle, steer), knuckle.spin))
  const s = mirrored(spinAxis)
  const toe = Math.atan2(s[0], s[1])
  const contact = contactOf(mirrored(hub), s, a.points[side].tyreRadius)
  const { pin } = knuckle
  const ends = pin && {
    lower: mirrored(inBody(a, state.place, pin.lower)),
    upper: mirrored(inBody(a, state.place, plus(pin.lower, pin.k))),
  }
  return {
    camber: rad(-Math.asin(Math.min(1, Math.max(-1, s[2])))),
    toe: rad(toe),
    ...steeringAxisOf(ends, contact, toe),
    steer: rad(steer),
    wheelCentre: hub,
    spinAxis,
    contact: mirrored(contact),
  }
}
