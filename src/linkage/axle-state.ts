import { angleOnCircle } from './angle-on-circle.ts'
import { type AxlePlace, inAxle, inBody, onLeaves, onLinks } from './axle-place.ts'
import { onKnuckle, type RodOnPin, rodOnPin } from './knuckle-on-axle.ts'
import type { Point } from './points.ts'
import { noTurn, turnAbout, turnedBy } from './quaternion.ts'
import type { SolidAxle } from './solid-axle.ts'
import type { AxleDrive } from './solid-axle-points.ts'
import { minus, plus, unit } from './vector.ts'

/** An axle in a place with its knuckles turned. */
export interface AxleState {
  readonly place: AxlePlace
  readonly steer: { readonly left: number; readonly right: number }
}

/** What keeps an axle from a drive. A rod has a length it would need; `location` may be the links or the roll. */
export type AxleBar =
  | { readonly at: 'location' }
  | { readonly at: 'dragLink' | 'tieRod'; readonly rod: RodOnPin; readonly length: number }

/** The design place. */
export const designPlace = (a: SolidAxle): AxlePlace => ({ middle: a.middle, turn: noTurn })

/** End of the drop arm in the body. */
export function dropEnd(a: SolidAxle, drop: number): Point {
  const { dropAxis, dragInner } = a.points.steering!
  const [from, to] = dropAxis
  return plus(from, turnedBy(turnAbout(unit(minus(to, from)), drop), minus(dragInner, from)))
}

/** The axle at a drive, near a place of which it is the neighbour; or what bars it. */
export function axleState(
  a: SolidAxle,
  { heave, roll, drop }: AxleDrive,
  near: AxlePlace,
): AxleState | AxleBar {
  // the tilt of a line goes no further than upright
  if (Math.abs(a.tilt + roll) >= Math.PI / 2) return { at: 'location' }
  const place = a.leaf ? onLeaves(a, heave, roll) : onLinks(a, heave, roll, near)
  if (!place) return { at: 'location' }
  const { steering } = a.points
  if (!steering || !a.steering) return { place, steer: { left: 0, right: 0 } }
  const { drags, dragOuter, tieLeft, tieRight } = steering
  const [driven, other] = drags === 'left' ? [a.left, a.right] : [a.right, a.left]
  const [near1, far] = drags === 'left' ? [tieLeft, tieRight] : [tieRight, tieLeft]
  const drag = rodOnPin(driven, dragOuter, inAxle(a, place, dropEnd(a, drop)), a.steering.drag)
  const first = angleOnCircle(drag.p, drag.q, drag.value, a.steering.dragRising)
  if (first === null) return { at: 'dragLink', rod: drag, length: a.steering.drag }
  const tie = rodOnPin(other, far, onKnuckle(driven, first, near1), a.steering.tie)
  const second = angleOnCircle(tie.p, tie.q, tie.value, a.steering.tieRising)
  if (second === null) return { at: 'tieRod', rod: tie, length: a.steering.tie }
  return {
    place,
    steer: drags === 'left' ? { left: first, right: second } : { left: second, right: first },
  }
}

/** Present places of a knuckle's point in the body. */
export const knuckleInBody = (
  a: SolidAxle,
  { place, steer }: AxleState,
  side: 'left' | 'right',
  point: Point,
): Point => inBody(a, place, onKnuckle(a[side], steer[side], point))
