import { designPoint, partsOf } from './layout-parts.ts'
import type { AnyCornerPoints, Displacement, Point } from './points.ts'
import { minus, norm, plus } from './vector.ts'

// One corner as 38 numbers:
//   0…14  five knuckle points against the wheel centre, in the design attitude
//  15…29  five body points
//  30…34  five link lengths
//  35…37  strut only: second point of the strut's line against the wheel centre
// A strut has its three links first, then strutLower and topMount at place 3; place 4 is empty.
// A hinged arm is held like a strut: three links square to each other hold its front eye, and the line through both
// eyes runs through the rear bush.

/** Where the body points start. */
export const bodyAt = 15
/** Where the lengths start. */
export const lengthAt = 30
/** Where the strut line's second point starts. */
export const strutTopAt = 35
/** How many numbers a form has. */
export const formSize = 38

/** The numbers of a displaced corner. Lengths are design distances and change only where `length` names them. */
export function numericForm(points: AnyCornerPoints, by: Displacement): Float64Array {
  const form = new Float64Array(formSize)
  const parts = partsOf(points.layout)
  const [wx, wy, wz] = shifted(points, 'wheelCentre', by.knuckle)
  const put = (at: number, [x, y, z]: Point) => form.set([x, y, z], at)
  const onKnuckle = (name: string): Point => minus(shifted(points, name, by.knuckle), [wx, wy, wz])
  for (const [i, leg] of parts.legs.entries()) {
    put(3 * i, onKnuckle(leg.outer))
    put(bodyAt + 3 * i, shifted(points, leg.inner, by.body))
    form[lengthAt + i] =
      norm(minus(designPoint(points, leg.outer), designPoint(points, leg.inner))) +
      (by.length?.[leg.name] ?? 0)
  }
  if (points.layout === 'semi-trailing arm') {
    const front = shifted(points, 'innerFront', by.body)
    for (const [i, way] of square.entries()) {
      put(3 * i, onKnuckle('eyeFront'))
      put(bodyAt + 3 * i, plus(front, way))
      form[lengthAt + i] = 1
    }
    put(9, onKnuckle('eyeFront'))
    put(bodyAt + 9, shifted(points, 'innerRear', by.body))
    put(strutTopAt, onKnuckle('eyeRear'))
  }
  if (points.layout === 'strut') {
    put(9, onKnuckle('strutLower'))
    put(bodyAt + 9, shifted(points, 'topMount', by.body))
    put(strutTopAt, onKnuckle('strutTop'))
  }
  return form
}

const square: readonly Point[] = [
  [1, 0, 0],
  [0, 1, 0],
  [0, 0, 1],
]

function shifted(
  points: AnyCornerPoints,
  name: string,
  by: Readonly<Record<string, Point>> | undefined,
): Point {
  const [x, y, z] = designPoint(points, name)
  const [dx, dy, dz] = by?.[name] ?? [0, 0, 0]
  return [x + dx, y + dy, z + dz]
}
