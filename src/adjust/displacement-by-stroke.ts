import { type AnyCornerPoints, type Displacement, displaceable, type Point } from '../linkage/index.ts'
import { Refusal } from '../quantity/index.ts'
import type { Adjuster, AdjustRefusal, SlottedBolt, Wedge } from './adjuster.ts'

/**
 * What a stroke of an adjuster (see `strokeOf`) does to the points of a corner. The same as
 * `displacementOf`, for whoever counts in strokes; a stroke is not held to the range.
 *
 * @param stroke m, or rad for a wedge; of a sub-frame shift what a LEFT corner sees, so the right one's is minus it
 * @throws {Refusal} `no-such-point` when the corner lacks the point or the link
 * @source definition; slotted bolt, wedge: own derivation: docs/methods/adjusters.md
 */
export function displacementByStroke(
  adjuster: Adjuster,
  points: AnyCornerPoints,
  stroke: number,
): Displacement {
  switch (adjuster.kind) {
    case 'eccentric':
    case 'top plate':
      return { body: shifted(adjuster, [adjuster.moves], points, stroke, adjuster.along) }
    case 'shims':
    case 'slide':
      return { body: shifted(adjuster, adjuster.moves, points, stroke, adjuster.along) }
    case 'sub-frame shift':
      return { body: shifted(adjuster, adjuster.moves, points, stroke, [0, 1, 0]) }
    case 'thread':
      if (!displaceable(points).length.includes(adjuster.length))
        throw missing(adjuster, adjuster.length, 'link')
      return { length: { [adjuster.length]: stroke } }
    case 'slotted bolt':
      return turned(adjuster, points, stroke / adjuster.boltSpacing)
    case 'wedge':
      return { spin: tilted(adjuster, points, stroke) }
    case 'offset sleeve':
      throw missing(adjuster, 'kingpin', 'pin')
  }
}

/** Rotation vector that adds exactly this much camber, or toe, to the wheel at design. */
function tilted({ tilts }: Wedge, { toe }: AnyCornerPoints, angle: number): Point {
  return tilts === 'toe' ? [0, 0, -angle] : [-angle * Math.cos(toe), angle * Math.sin(toe), 0]
}

function shifted(
  adjuster: Adjuster,
  names: readonly string[],
  points: AnyCornerPoints,
  stroke: number,
  along: Point,
): Readonly<Record<string, Point>> {
  const known = displaceable(points).body
  const shift: Point = [stroke * along[0], stroke * along[1], stroke * along[2]]
  const body: Record<string, Point> = {}
  for (const name of names) {
    if (!known.includes(name)) throw missing(adjuster, name, 'body point')
    body[name] = shift
  }
  return body
}

function turned(bolt: SlottedBolt, points: AnyCornerPoints, angle: number): Displacement {
  if (bolt.turns === 'stub')
    return {
      spin: [angle * bolt.axis[0], angle * bolt.axis[1], angle * bolt.axis[2]],
      knuckle: { wheelCentre: carried(points.wheelCentre, bolt, angle) },
    }
  if (points.layout !== 'strut') throw missing(bolt, 'strutLower', 'strut')
  return {
    knuckle: {
      strutLower: carried(points.strutLower, bolt, -angle),
      strutTop: carried(points.topMount, bolt, -angle),
    },
  }
}

/** Shift of a point that turns about the bolt: Rodrigues' rotation, minus where it was. */
function carried(at: Point, bolt: SlottedBolt, angle: number): Point {
  const [x, y, z] = [at[0] - bolt.pivot[0], at[1] - bolt.pivot[1], at[2] - bolt.pivot[2]]
  const length = Math.hypot(bolt.axis[0], bolt.axis[1], bolt.axis[2])
  const [a, b, c] = [bolt.axis[0] / length, bolt.axis[1] / length, bolt.axis[2] / length]
  const s = Math.sin(angle)
  // 1 − cos, without the cancellation at small angles
  const v = 2 * Math.sin(angle / 2) ** 2
  const along = a * x + b * y + c * z
  return [
    s * (b * z - c * y) + v * (a * along - x),
    s * (c * x - a * z) + v * (b * along - y),
    s * (a * y - b * x) + v * (c * along - z),
  ]
}

const missing = (adjuster: Adjuster, name: string, what: string) =>
  new Refusal<AdjustRefusal>({
    code: 'no-such-point',
    at: adjuster.id,
    given: name,
    sentence: `"${adjuster.name}" moves the ${what} "${name}", which this corner does not have.`,
    remedy: 'Name a point or a link of this layout, or choose the layout that the vehicle has.',
  })
