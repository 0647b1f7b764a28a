import { Refusal } from '../quantity/index.ts'
import type { LinkageRefusal } from './linkage-refusal.ts'
import type { Displacement, Point, SemiTrailingArm } from './points.ts'
import { cross, dot, minus, norm, plus, unit } from './vector.ts'

/** Shorter than this is no length, m; below this part of a length there is no lever. */
const nothing = 1e-6

const no = (code: LinkageRefusal, at: string, sentence: string, remedy: string): Refusal<LinkageRefusal> =>
  new Refusal<LinkageRefusal>({ code, at, given: '', sentence, remedy })
const still: Point = [0, 0, 0]

/** The arm's own eyes, as displaced, lie apart, and the hinge is not turned round. */
export function checkEyes(points: SemiTrailingArm, by: Displacement): void {
  const eye = minus(
    plus(points.innerFront, by.knuckle?.['eyeFront'] ?? still),
    plus(points.innerRear, by.knuckle?.['eyeRear'] ?? still),
  )
  if (norm(eye) < nothing)
    throw no(
      'coincident-pivots',
      'eyeFront',
      'The trailing arm has no axis: its two bush eyes are one point.',
      'Measure the front and the rear eye apart.',
    )
  const bush = minus(
    plus(points.innerFront, by.body?.['innerFront'] ?? still),
    plus(points.innerRear, by.body?.['innerRear'] ?? still),
  )
  if (!(dot(eye, bush) > 0))
    throw no(
      'bad-input',
      'body.innerRear',
      'What displaces the bushes turns the hinge by a right angle or more against the arm.',
      'Give the shift of each bush in metres.',
    )
  const hub = minus(
    plus(points.wheelCentre, by.knuckle?.['wheelCentre'] ?? still),
    plus(points.innerRear, by.knuckle?.['eyeRear'] ?? still),
  )
  if (norm(cross(unit(eye), hub)) < Math.max(nothing, nothing * norm(hub)))
    throw no(
      'degenerate',
      'wheelCentre',
      "The wheel centre lies on the arm's own axis, so the arm cannot move it.",
      'Measure the wheel centre again.',
    )
}

/** At the design pose the hinge lifts the wheel when it turns. */
export function checkLift(points: SemiTrailingArm): void {
  const axis = unit(minus(points.innerFront, points.innerRear))
  const out = minus(points.wheelCentre, points.innerRear)
  const way = cross(axis, out)
  if (Math.abs(way[2]) < nothing * norm(way))
    throw no(
      'singular',
      'wheelCentre',
      'At the design pose the hinge does not lift the wheel when it turns: the axis stands upright, or the wheel is at the top or bottom of its circle.',
      'Measure both bushes and the wheel centre again.',
    )
}
