import { type Direction, displaceable, type Point } from '../../linkage/index.ts'
import { linkNames, pointNames } from '../point-names.ts'
import type { CornerAt } from './corner-at.ts'

const unit = (axis: number, by = 1): Point => [axis === 0 ? by : 0, axis === 1 ? by : 0, axis === 2 ? by : 0]

/** Names that the linkage room has for a point carried by the knuckle where the body's point is meant, too. */
const twins: Readonly<Record<string, string>> = {
  topMount: 'strutTop',
  innerFront: 'eyeFront',
  innerRear: 'eyeRear',
}

/**
 * Each unknown as a direction of the linkage: when a point truly lies elsewhere its links are that much longer, the wheel's
 * own height goes with its centre, and the design pose stays what it is.
 *
 * @source own derivation: docs/methods/fit.md
 */
export function pointDirections(corner: CornerAt): readonly Direction[] {
  const { unknowns, values } = corner
  const { points } = corner.linkage()
  const { body } = displaceable(points)
  const all: Direction[] = []
  for (const [i, name] of unknowns.points.entries()) {
    const inside = pointNames[unknowns.family][name]!
    for (let axis = 0; axis < 3; axis++) {
      const length: Record<string, number> = {}
      for (const [from, to, link] of linkNames[unknowns.family]) {
        if (from !== name && to !== name) continue
        const [a, b] = [3 * unknowns.points.indexOf(from), 3 * unknowns.points.indexOf(to)]
        const apart = [0, 1, 2].map((k) => values[b + k]! - values[a + k]!)
        length[link] = ((to === name ? 1 : -1) * apart[axis]!) / Math.hypot(...apart)
      }
      const shift = unit(axis)
      const twin = twins[inside]
      all[3 * i + axis] = {
        ...(body.includes(inside) ? { body: { [inside]: shift } } : { knuckle: { [inside]: shift } }),
        ...(twin ? { knuckle: { [twin]: shift } } : {}),
        ...(Object.keys(length).length > 0 ? { length } : {}),
        ...(inside === 'wheelCentre' && axis === 2 ? { travel: 1 } : {}),
      }
    }
  }
  const { toe } = points
  all[unknowns.camber] = { spin: [-Math.cos(toe), Math.sin(toe), 0] }
  all[unknowns.toe] = { spin: [0, 0, -1] }
  return all
}
