import type { Point } from '../linkage/index.ts'
import { Refusal } from '../quantity/index.ts'
import type { Corner } from './corner-schema.ts'
import type { CornerRefusal } from './parse-clock.ts'

/**
 * A point that the layout of a corner needs.
 *
 * @throws {Refusal} `no-such-point` when a corner that was made by hand lacks it
 * @source definition
 */
export function pointOf(corner: Corner, name: string): Point {
  const point = corner.points[name]
  if (point) return point.at
  throw new Refusal<CornerRefusal>({
    code: 'no-such-point',
    at: `points.${name}`,
    sentence: `The corner model "${corner.name}" has no point "${name}", which its layout needs.`,
    remedy: 'Add the point to the model, measured or typical with a spread.',
  })
}
