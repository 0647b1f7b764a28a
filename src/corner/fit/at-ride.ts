import type { WheelAngle } from '../../linkage/index.ts'
import { Refusal } from '../../quantity/index.ts'
import type { CornerRefusal } from '../parse-clock.ts'
import { type CornerAt, placeOf } from './corner-at.ts'
import type { Seen } from './seen-lazily.ts'

/** The ends of the joint axis, lower and upper, by layout. */
const axisEnds: Readonly<Partial<Record<CornerAt['unknowns']['family'], readonly [string, string]>>> = {
  'double wishbone': ['lower-outer', 'upper-outer'],
  strut: ['lower-outer', 'strut-top'],
  'solid axle': ['kingpin-lower', 'kingpin-upper'],
}

/**
 * An angle at the design pose, from the points alone: camber and toe are unknowns themselves, caster and SAI lie in the
 * joint axis.
 *
 *     caster = atan(−x / z),  SAI = atan(−y / z) of the axis, lower end to upper
 *
 * @throws {Refusal} `not-for-this-layout` for caster or SAI where there is no joint axis
 */
export function atRide(corner: CornerAt, angle: WheelAngle): Seen {
  const { unknowns, values } = corner
  const slopes = new Float64Array(unknowns.count)
  if (angle === 'camber' || angle === 'toe') {
    slopes[unknowns[angle]] = 1
    return { value: values[unknowns[angle]]!, slopes }
  }
  const ends = axisEnds[unknowns.family]
  if (!ends || !unknowns.points.includes(ends[0]))
    throw new Refusal<CornerRefusal>({
      code: 'not-for-this-layout',
      at: angle,
      given: unknowns.corner.layout,
      sentence: `A ${unknowns.corner.layout} has no joint axis, so it has no ${angle} that could be fitted.`,
      remedy: 'Leave this reading out.',
    })
  const [lower, upper] = ends.map((name) => placeOf(unknowns, name)) as [number, number]
  const axis = angle === 'caster' ? 0 : 1
  const side = values[upper + axis]! - values[lower + axis]!
  const up = values[upper + 2]! - values[lower + 2]!
  const square = side * side + up * up
  slopes[upper + axis] = -up / square
  slopes[lower + axis] = up / square
  slopes[upper + 2] = side / square
  slopes[lower + 2] = -side / square
  return { value: Math.atan2(-side, up), slopes }
}
