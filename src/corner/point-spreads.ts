import type { Metre } from '../quantity/index.ts'
import type { Corner } from './corner-schema.ts'
import { familyOf } from './layouts.ts'
import { pointNames } from './point-names.ts'

/**
 * Standard uncertainty of each coordinate of the linkage's points, by the linkage room's names; points
 * that were measured well (no spread in the file) are left out.
 *
 * @returns m, one figure for x, y and z of a point
 * @source definition
 */
export function pointSpreads(corner: Corner): Readonly<Record<string, Metre>> {
  const spreads: Record<string, Metre> = {}
  for (const [name, inside] of Object.entries(pointNames[familyOf(corner.layout)])) {
    const spread = corner.points[name]?.spread
    if (spread !== undefined && spread > 0) spreads[inside] = spread
  }
  return spreads
}
