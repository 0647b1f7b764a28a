import { type Corner, cornerPoints, familyOf, isWholeAxle, pointNames } from '../corner/index.ts'
import type { AxleEnd, Displacement, Point } from '../linkage/index.ts'
import { pointsOf } from './corner-scatter.ts'
import { familiesOfCorner } from './families-of-corner.ts'
import { familiesOfWholeAxle } from './families-of-whole-axle.ts'
import type { Family } from './family.ts'
import type { ExaminedAxle, ExaminedWheel } from './findings-problem.ts'
import type { Suspect } from './suspect.ts'
import type { VehicleWay } from './vehicle-way.ts'

const sides = ['left', 'right'] as const

/** What can be wrong with an axle: with each wheel, with its cross-member, its steering, its springs. @source own derivation: docs/methods/findings.md */
export function familiesOfAxle({ end, corner }: ExaminedAxle): readonly Family[] {
  const bonded = Object.values(corner.joints).some((joint) => joint.bush?.bonded)
  const springs = sides.flatMap((side): Family[] => {
    const wheel: ExaminedWheel = `${end} ${side}`
    const suspect = (kind: Suspect['kind']): Suspect => ({ kind, axle: end, side, at: null })
    return [
      { suspect: suspect('sagged spring'), share: 1, main: { springs: { [wheel]: 1 } }, also: [] },
      // rubber that is twisted at ride height holds the body up
      ...(bonded
        ? [
            {
              suspect: suspect('bush clamped hanging'),
              share: 1,
              main: { springs: { [wheel]: -1 } },
              also: [],
            },
          ]
        : []),
    ]
  })
  const own = isWholeAxle(corner.layout)
    ? familiesOfWholeAxle(corner, end)
    : [
        ...sides.flatMap((side) => familiesOfCorner(corner, end, side)),
        ...frameFaults(corner, end),
        ...rackFaults(corner, end),
      ]
  return [...own, ...springs]
}

function rackFaults(corner: Corner, end: AxleEnd): readonly Family[] {
  if (end !== 'front' || !('tieInner' in pointsOf(cornerPoints(corner)))) return []
  const suspect: Suspect = { kind: 'rack off centre', axle: end, side: null, at: null }
  return [{ suspect, share: 1, main: { axles: { [end]: { rack: 1 } } }, also: [] }]
}

/** A cross-member takes along the pivots that sit on it, and the rack where that does too. */
function frameFaults(corner: Corner, end: AxleEnd): readonly Family[] {
  const points = pointsOf(cornerPoints(corner))
  const names = pointNames[familyOf(corner.layout)]
  const isFrame = (part: string): boolean => corner.parts[part]?.kind === 'sub-frame'
  const pivots = Object.values(corner.joints).flatMap((joint) => {
    const inside = names[joint.at ?? '']
    return inside !== undefined && points[inside] && joint.bush && joint.joins.some(isFrame) ? [inside] : []
  })
  const steered = Object.values(corner.adjusters).some(
    (one) => one.kind === 'sub-frame shift' && one.moves.includes('tie-inner'),
  )
  const carried = [...new Set([...pivots, ...(steered ? ['tieInner'] : [])])]
  if (carried.length < 2) return []
  const middle = carried.reduce((sum, name) => sum + points[name]![0], 0) / carried.length
  const way = (by: (at: Point, out: 1 | -1) => Point): VehicleWay => {
    const of = (out: 1 | -1): Displacement => ({
      body: Object.fromEntries(carried.map((name) => [name, by(points[name]!, out)])),
    })
    return { axles: { [end]: { left: of(1), right: of(-1) } } }
  }
  const family = (kind: Suspect['kind'], main: VehicleWay): Family => ({
    suspect: { kind, axle: end, side: null, at: null },
    share: 1,
    main,
    also: [],
  })
  return [
    family(
      'cross-member shifted sideways',
      way((_, out) => [0, out, 0]),
    ),
    family(
      'cross-member shifted up or down',
      way(() => [0, 0, 1]),
    ),
    // to the left, seen from above: what is left goes back, what is ahead goes left
    family(
      'cross-member turned',
      way(([x, y], out) => [-out * y, out * (x - middle), 0]),
    ),
  ]
}
