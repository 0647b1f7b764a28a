import { type Corner, cornerPoints, familyOf, pointNames } from '../corner/index.ts'
import type { AnyCornerPoints, AxleEnd, Displacement, Point, Side } from '../linkage/index.ts'
import { linksOf, pointsOf } from './corner-scatter.ts'
import type { Family, SideWay } from './family.ts'
import { givingOf } from './giving-way.ts'
import type { SuspectKind } from './suspect-kind.ts'
import { playName } from './vehicle-vector.ts'
import type { VehicleWay } from './vehicle-way.ts'

const mm = 0.001
const degree = Math.PI / 180
/** A joint that stands off by so much swings by a little more when it is levered. @source from memory, common practice, no source */
const swingPerShift = 1.35

/** The wheel leans and toes by so much against the joints of its knuckle. */
const spun = (camber: number, toe: number): Displacement => ({ spin: [-camber, 0, -toe] })

/**
 * What can be wrong with one wheel of an axle whose wheels hang by themselves.
 *
 * @source own derivation: docs/methods/findings.md; ways: from memory
 */
export function familiesOfCorner(corner: Corner, end: AxleEnd, side: Side): readonly Family[] {
  const points = cornerPoints(corner)
  const names = pointNames[familyOf(corner.layout)]
  const list: Family[] = []
  const on = (displacement: Displacement): VehicleWay => ({ axles: { [end]: { [side]: displacement } } })
  const put = (
    kind: SuspectKind,
    at: string | null,
    main: Displacement,
    also: readonly { readonly way: Displacement; readonly spread: number; readonly mean?: number }[] = [],
    share = 1,
    play: VehicleWay['play'] | null = null,
  ): void => {
    const suspect = { kind, axle: end, side, at }
    list.push({
      suspect,
      share,
      main: { ...on(main), ...(play ? { play } : {}) },
      also: also.map((one): SideWay => ({ ...one, way: on(one.way) })),
    })
  }
  const armNames = (['lower', 'upper'] as const).filter((arm) => `${arm}Outer` in points)
  for (const arm of armNames) {
    const end_ = (by: Point) => armEnd(points, arm, by)
    put(`bent ${arm} arm`, null, end_([0, -1, 0]), [
      { way: end_([-1, 0, 0]), spread: 5 * mm, mean: 1.5 * mm },
    ])
    put('wrong part', `${arm}-arm`, end_([0, -1, 0]))
  }
  if (corner.parts['radius-rod']) put('bent link', 'radius-rod', { length: { lowerFront: -1 } })
  if (points.layout === 'semi-trailing arm')
    put('bent lower arm', null, spun(3, 0), [{ way: spun(0, 1), spread: 0.8 * degree }])
  for (const [part, link] of rodsOf(corner, points)) {
    put('bent link', part, { length: { [link]: -1 } })
    put('wrong part', part, { length: { [link]: -1 } })
  }
  if (points.layout !== 'semi-trailing arm') {
    put('bent knuckle', null, spun(1, 0), [{ way: spun(0, 1), spread: 0.5 * degree }])
    put('wrong part', 'knuckle', spun(4, 0), [{ way: spun(0, 1), spread: 0.3 * degree }])
  }
  if (points.layout === 'strut') {
    put('bent strut tube', null, bentTube(points, [-1, 0, 0]), [
      { way: bentTube(points, [0, 1, 0]), spread: 0.3 * degree },
    ])
    put('shifted tower', null, { body: { topMount: [0, -1, 0] } }, [
      { way: { body: { topMount: [1, 0, 0] } }, spread: 5 * mm },
    ])
  }
  if ('tieOuter' in points)
    put('bent steering arm or tie rod', null, { length: { tie: -1 } }, [
      { way: { knuckle: { tieOuter: [1, 0, 0] } }, spread: 2 * mm },
      { way: { knuckle: { tieOuter: [0, 1, 0] } }, spread: 2 * mm },
    ])
  const bushes = Object.entries(corner.joints).filter(([, joint]) => {
    const inside = names[joint.at ?? '']
    return joint.bush && inside !== undefined && inside in pointsOf(points)
  })
  for (const [id, joint] of bushes) {
    const pivot = names[joint.at!]!
    const gives = givingOf(corner.layout, pivot)
    const way = (by: Point): Displacement => ({ body: { [pivot]: by } })
    put(
      'collapsed bush',
      id,
      way(gives),
      [
        { way: way([0, -gives[2], gives[1]]), spread: 1.2 * mm },
        { way: way([1, 0, 0]), spread: 0.7 * mm },
      ],
      1 / bushes.length,
    )
  }
  for (const [id, joint] of Object.entries(corner.joints)) {
    const point = names[joint.at ?? '']
    if (point === undefined || !/^tapered stud|^pinch bolt/.test(joint.kind)) continue
    const wear = wornWay(corner, points, point)
    if (wear)
      put('worn ball joint', id, wear.main, wear.also, wear.share, {
        [playName(`${end} ${side}`, id)]: swingPerShift,
      })
  }
  put('loose wheel bearing', null, spun(-1, 0), [{ way: spun(0, 1), spread: 0.1 * degree }])
  return list
}

/** An arm's outer end elsewhere in the arm's plane: both of its legs change by what they see of it. */
function armEnd(points: AnyCornerPoints, arm: 'lower' | 'upper', by: Point): Displacement {
  const at = pointsOf(points)
  const leg = (name: string): number => {
    const [a, b] = [at[`${arm}${name}Inner`]!, at[`${arm}Outer`]!]
    const d: Point = [b[0] - a[0], b[1] - a[1], b[2] - a[2]]
    return (d[0] * by[0] + d[1] * by[1] + d[2] * by[2]) / Math.hypot(...d)
  }
  return { length: { [`${arm}Front`]: leg('Front'), [`${arm}Rear`]: leg('Rear') } }
}

/** Rods of a five-link by their part, with the link that each is. */
function rodsOf(corner: Corner, points: AnyCornerPoints): readonly (readonly [string, string])[] {
  if (points.layout !== 'five-link') return []
  const names = pointNames['five-link']
  return Object.values(corner.joints).flatMap((joint): (readonly [string, string])[] => {
    const inside = names[joint.at ?? '']
    const part = joint.joins.find((one) => ['rod', 'arm'].includes(corner.parts[one]!.kind))
    return inside?.startsWith('inner') && part ? [[part, `link${inside.slice(5)}`]] : []
  })
}

/** The tube bends above its clamp: the piston's line leaves the knuckle at another angle, the wheel leans the other way. */
function bentTube(points: Extract<AnyCornerPoints, { layout: 'strut' }>, axis: Point): Displacement {
  const [low, top] = [points.strutLower, points.topMount]
  const share = 0.15
  const at: Point = [0, 1, 2].map((i) => low[i]! + share * (top[i]! - low[i]!)) as unknown as Point
  const turned = (p: Point): Point => {
    const [x, y, z] = [p[0] - at[0], p[1] - at[1], p[2] - at[2]]
    // against the wheel: camber grows by as much as the line is turned
    return [-(axis[1] * z - axis[2] * y), -(axis[2] * x - axis[0] * z), -(axis[0] * y - axis[1] * x)]
  }
  return { knuckle: { strutLower: turned(low), strutTop: turned(top) } }
}

/**
 * How a ball joint gives: the standing wheel presses the knuckle's lower end out and its top in, and a spring on the arm
 * presses its joint down; rolling drags the wheel to toe-out.
 */
function wornWay(
  { layout }: Corner,
  points: AnyCornerPoints,
  point: string,
): {
  readonly main: Displacement
  readonly also: readonly { readonly way: Displacement; readonly spread: number }[]
  readonly share: number
} | null {
  if (point === 'lowerOuter' || point === 'upperOuter') {
    const y = point === 'lowerOuter' ? -0.75 : 0.75
    const loaded =
      (point === 'lowerOuter' && /coil on lower|torsion/.test(layout)) ||
      (point === 'upperOuter' && /coil on upper/.test(layout))
    const way = (by: Point): Displacement => ({ knuckle: { [point]: by } })
    return {
      main: way([0, y, loaded ? -0.6 : 0]),
      also: [{ way: way([0, 1, 0]), spread: 0.25 * mm }],
      share: 1,
    }
  }
  if (point === 'tieOuter') {
    const at = pointsOf(points)
    const behind = at.tieOuter![0] < at.wheelCentre![0]
    return { main: { length: { tie: behind ? -1 : 1 } }, also: [], share: 0.7 }
  }
  const link = linksOf(points).find(([, , outer]) => outer === point)
  return link ? { main: { length: { [link[0]]: -1 } }, also: [], share: 0.7 } : null
}
