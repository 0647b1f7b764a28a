import { type Adjuster, checkAdjuster, displacementOf, strokeOf } from '../adjust/index.ts'
import { mechanism, solidAxle, twistBeamReadings } from '../linkage/index.ts'
import { metre, Refusal } from '../quantity/index.ts'
import { adjustersOf } from './adjusters-of.ts'
import { axleAdjustersOf } from './axle-adjusters-of.ts'
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
  const { geometry, turn } = isWholeAxle(corner.layout) ? wholeAxle(corner) : oneCorner(corner)
  const faults = refused(geometry, (at) => placeOf(corner, at))
  const adjusters = [...adjustersOf(corner), ...axleAdjustersOf(corner)].flatMap((adjuster) =>
    refused(
      () => {
        checkAdjuster(adjuster)
        if (faults.length === 0) for (const end of adjuster.range) turn(adjuster, end)
      },
      (at) => `adjusters.${at.startsWith(adjuster.id) ? at : adjuster.id}`,
    ),
  )
  return [...faults, ...adjusters]
}

/** What has to be computable of a layout: its design pose, and an adjuster at a setting. */
interface Works {
  readonly geometry: () => unknown
  readonly turn: (adjuster: Adjuster, setting: number) => unknown
}

function oneCorner(corner: Corner): Works {
  const points = cornerPoints(corner)
  return {
    geometry: () => mechanism(points),
    turn: (adjuster, setting) => displacementOf(adjuster, points, setting),
  }
}

function wholeAxle(corner: Corner): Works {
  const axle = wholeAxlePoints(corner)
  if ('shearCentre' in axle)
    return {
      geometry: () => twistBeamReadings(axle, { left: metre(0), right: metre(0) }),
      turn: strokeOf,
    }
  return {
    geometry: () => solidAxle(axle),
    turn: (adjuster, setting) => {
      const longer = metre(strokeOf(adjuster, setting))
      if (adjuster.kind !== 'thread') return
      if (adjuster.length === 'tie-rod') solidAxle(axle, { tieRod: longer })
      if (adjuster.length === 'drag-link') solidAxle(axle, { dragLink: longer })
    },
  }
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
  if (/(^|\.)(camber|toe)$/.test(at)) return `wheel.${at.split('.').at(-1)}`
  const names = Object.entries(pointNames[familyOf(corner.layout)])
  const named =
    names.find(([, inside]) => at.split('.').includes(inside))?.[0] ??
    (isWholeAxle(corner.layout) ? axlePlaces.find(([shape]) => shape.test(at))?.[1] : undefined)
  return named ? fieldPath(['points', named]) : 'points'
}
