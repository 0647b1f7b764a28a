import { checkAdjuster, displacementOf } from '../adjust/index.ts'
import { type CornerPoints, mechanism, solidAxle, twistBeamReadings } from '../linkage/index.ts'
import { metre, Refusal } from '../quantity/index.ts'
import { adjustersOf } from './adjusters-of.ts'
import { cornerPoints } from './corner-points.ts'
import type { Corner } from './corner-schema.ts'
import { fieldPath } from './field-path.ts'
import { familyOf, isWholeAxle } from './layouts.ts'
import { pointNames } from './point-names.ts'
import type { Problem } from './reading.ts'
import { wholeAxlePoints } from './whole-axle-points.ts'

/**
 * What only the computation can see in a corner model whose every member is sound: links that do not hold
 * the wheel, pivots in one place, an adjuster that cannot work.
 *
 * @source definition
 */
export function cornerWorks(corner: Corner): readonly Problem[] {
  if (isWholeAxle(corner.layout)) return axleWorks(corner)
  const points = cornerPoints(corner)
  const geometry = refused(
    () => mechanism(points),
    (at) => placeOf(corner, at),
  )
  const adjusters = adjustersOf(corner).flatMap((adjuster) =>
    refused(
      () => {
        checkAdjuster(adjuster)
        if (geometry.length === 0)
          for (const end of adjuster.range) displacementOf(adjuster, points as CornerPoints, end)
      },
      (at) => `adjusters.${at.startsWith(adjuster.id) ? at : adjuster.id}`,
    ),
  )
  return [...geometry, ...adjusters]
}

function axleWorks(corner: Corner): readonly Problem[] {
  const axle = wholeAxlePoints(corner)
  return refused(
    () =>
      'shearCentre' in axle ? twistBeamReadings(axle, { left: metre(0), right: metre(0) }) : solidAxle(axle),
    (at) => placeOf(corner, at),
  )
}

function refused(work: () => unknown, place: (at: string) => string): readonly Problem[] {
  try {
    work()
    return []
  } catch (refusal) {
    if (!(refusal instanceof Refusal)) throw refusal
    return [{ field: place(refusal.at), wrong: refusal.sentence, right: refusal.remedy }]
  }
}

/** Where the linkage room's members of a whole axle stand in a file. */
const axlePlaces: readonly (readonly [RegExp, string])[] = [
  [/kingpin/, 'kingpin-upper'],
  [/rollAxis/, 'roll-axis-front'],
  [/dropAxis/, 'drop-axis-to'],
  [/^dragLink/, 'drag-outer'],
  [/^tieRod/, 'tie-outer'],
  [/links/, 'lower-link-outer'],
]

/** The file's name of what the linkage room complains of, where it has one. */
function placeOf(corner: Corner, at: string): string {
  if (/tyreRadius$/.test(at)) return 'wheel.loadedRadius'
  if (/\.(camber|toe)$/.test(at)) return `wheel.${at.split('.').at(-1)}`
  const names = Object.entries(pointNames[familyOf(corner.layout)])
  const named =
    names.find(([, inside]) => at.split('.').includes(inside))?.[0] ??
    (isWholeAxle(corner.layout) ? axlePlaces.find(([shape]) => shape.test(at))?.[1] : undefined)
  return named ? fieldPath(['points', named]) : 'points'
}
