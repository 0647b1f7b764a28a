import { type Corner, familyOf, pointNames } from '../corner/index.ts'

/** Points that a whole axle is computed with: the file's name and the linkage's. */
export const wholePointNames = (corner: Corner): readonly (readonly [string, string])[] =>
  Object.entries(pointNames[familyOf(corner.layout)]).filter(([name]) => corner.points[name] !== undefined)
