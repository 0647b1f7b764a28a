import type { Adjuster } from '../../adjust/index.ts'
import type { WheelAngle } from '../../linkage/index.ts'
import { deg, metre, mm } from '../../quantity/index.ts'
import { adjustersOf } from '../adjusters-of.ts'
import type { Corner } from '../corner-schema.ts'
import { familyOf, isWholeAxle } from '../layouts.ts'
import { linkNames } from '../point-names.ts'
import { angleRead } from './angle-read.ts'
import { changeByMove } from './change-by-move.ts'
import { changeOf } from './change-of.ts'
import { distanceBetween } from './distance-between.ts'
import type { Observable } from './observable.ts'
import { offsetOf } from './offset-of.ts'
import { otherWheelTurned } from './other-wheel-turned.ts'
import { slopeOf } from './slope-of.ts'
import { unknownsOf } from './unknowns.ts'
import { usualMeasuring as usual } from './usual-measuring.ts'

/** Something that a workshop can measure, how well, and how long it takes. @source definition */
export interface WorkshopMeasurement {
  readonly of: Observable
  /** Usual standard uncertainty, m or rad. */
  readonly spread: number
  readonly minutes: number
}

/** A pair of points further apart is not measured with a tape in one go, m. */
const longest = 0.9

/**
 * What a workshop can measure on one corner with a tape, a rule, an inclinometer, turn plates and a toe gauge: links and
 * other distances between pivots, heights, slopes of arms, readings at ride height and away from it, and a trial move of
 * each adjuster.
 *
 * @source own choice, after common practice; spreads and minutes: docs/methods/fit.md
 */
export function workshopMeasurements(corner: Corner): readonly WorkshopMeasurement[] {
  const family = familyOf(corner.layout)
  const { points } = unknownsOf(corner)
  const held = points.filter((name) => name !== 'shear-centre' && !/roll-axis|drop-axis/.test(name))
  const pivots = held.filter((name) => name !== 'wheel-centre')
  const apart = (a: string, b: string) =>
    Math.hypot(...[0, 1, 2].map((k) => corner.points[a]!.at[k]! - corner.points[b]!.at[k]!))
  const pairs = pivots.flatMap((a, i) =>
    pivots
      .slice(i + 1)
      .filter((b) => apart(a, b) < longest)
      .map((b) => ({ of: distanceBetween(a, b), ...usual.tape })),
  )
  const heights = held.map((point) => ({ of: offsetOf({ point, way: 'up' }), ...usual.rule }))
  const breadths = held.map((point) => ({ of: offsetOf({ point, way: 'across' }), ...usual.across }))
  const lengths = pivots.map((point) => ({
    of: offsetOf({ point, way: 'lengthways', from: 'wheel-centre' }),
    ...usual.across,
  }))
  const slopes = linkNames[family]
    .filter(([from, to]) => from !== to && points.includes(from) && points.includes(to))
    .map(([from, to]) => ({ of: slopeOf({ from, to }), ...usual.slope }))
  return [...pairs, ...heights, ...breadths, ...lengths, ...slopes, ...readings(corner), ...moved(corner)]
}

/** Height to which a corner is lifted or pressed for a second reading, m. */
const lift = mm(40)

function readings(corner: Corner): readonly WorkshopMeasurement[] {
  const angles = anglesOf(corner)
  const still = angles.map((angle) => ({
    of: angleRead(angle),
    ...(angle === 'camber' || angle === 'toe' ? usual[angle] : usual.axis),
  }))
  if (isWholeAxle(corner.layout)) return still
  const lifted = (['camber', 'toe'] as const).flatMap((angle) =>
    [lift, metre(-lift)].map((travel) => ({
      of: changeOf(
        angleRead(angle),
        angleRead(angle, { travel }),
        `change of ${angleRead(angle, { travel }).says}`,
      ),
      ...usual.change,
    })),
  )
  return [...still, ...lifted, ...turned(corner)]
}

function turned(corner: Corner): readonly WorkshopMeasurement[] {
  if (corner.axle === 'rear' || !angleIsSteered(corner)) return []
  const plate = deg(20)
  return [
    { of: otherWheelTurned(plate), ...usual.lock },
    ...[plate, deg(-20)].map((outward) => ({ of: angleRead('camber', { outward }), ...usual.lock })),
  ]
}

const angleIsSteered = ({ layout, steeredLink }: Corner): boolean =>
  familyOf(layout) === 'double wishbone' || layout === 'strut' || steeredLink !== undefined

const anglesOf = (corner: Corner): readonly WheelAngle[] => {
  const family = familyOf(corner.layout)
  const axis =
    family === 'double wishbone' || family === 'strut' || corner.points['kingpin-lower'] !== undefined
  return axis ? ['camber', 'toe', 'caster', 'sai'] : ['camber', 'toe']
}

function moved(corner: Corner): readonly WorkshopMeasurement[] {
  if (isWholeAxle(corner.layout)) return []
  return adjustersOf(corner).flatMap((adjuster) =>
    (['camber', 'toe'] as const).map((angle) => ({
      of: changeByMove(angle, { adjuster, ...trial(adjuster) }),
      ...usual.moved,
    })),
  )
}

/** A trial move: half way to the upper end of the range and back. */
function trial({ range: [low, high] }: Adjuster): { from: number; to: number } {
  const middle = (low + high) / 2
  return { from: middle, to: (middle + high) / 2 }
}
