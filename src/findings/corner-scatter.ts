import type { AnyCornerPoints, Direction, Point } from '../linkage/index.ts'
import { makingCamber, makingSpread, modelCamber, modelToe } from './scatter.ts'

const axes: readonly Point[] = [
  [1, 0, 0],
  [0, 1, 0],
  [0, 0, 1],
]

/** Ways in which the points of a corner may differ from its model, each at one standard deviation. */
export interface CornerScatter {
  /** Link lengths go with their points: it is another model. */
  readonly ofModel: readonly Direction[]
  /** Parts keep their lengths: it is the same model, made with tolerances. */
  readonly ofMaking: readonly Direction[]
}

/**
 * What is not known of a corner's points.
 *
 * @param spreads standard uncertainty of each coordinate by point, m; what is missing is known
 * @source own derivation: docs/methods/findings.md
 */
export function cornerScatter(
  points: AnyCornerPoints,
  spreads: Readonly<Record<string, number>>,
): CornerScatter {
  const links = linksOf(points)
  const list = Object.keys(pointsOf(points))
  const ofModel = list.flatMap((name) => {
    const spread = spreads[name] ?? 0
    return spread > 0 ? axes.map((axis) => modelShift(points, name, scaled(axis, spread), links)) : []
  })
  const ofMaking = list.flatMap((name) => axes.map((axis) => shift(points, name, scaled(axis, makingSpread))))
  const typical = Object.values(spreads).some((spread) => spread > 0.005)
  return {
    ofModel: [
      ...ofModel,
      ...(typical ? [{ spin: [-modelCamber, 0, 0] as const }, { spin: [0, 0, -modelToe] as const }] : []),
    ],
    ofMaking: [...ofMaking, { spin: [-makingCamber, 0, 0] }, { spin: [0, 0, -makingCamber] }],
  }
}

const scaled = ([x, y, z]: Point, k: number): Point => [k * x, k * y, k * z]

/** Points of a corner by the linkage's names. */
export function pointsOf(points: AnyCornerPoints): Readonly<Record<string, Point>> {
  if (points.layout === 'five-link') {
    const all: Record<string, Point> = { wheelCentre: points.wheelCentre }
    points.links.forEach(({ inner, outer }, i) => {
      all[`inner${i}`] = inner
      all[`outer${i}`] = outer
    })
    return all
  }
  return Object.fromEntries(Object.entries(points).filter(([, value]) => Array.isArray(value)))
}

/** Links of a corner: their name, inner and outer point. */
export function linksOf(points: AnyCornerPoints): readonly (readonly [string, string, string])[] {
  const lower = [
    ['lowerFront', 'lowerFrontInner', 'lowerOuter'],
    ['lowerRear', 'lowerRearInner', 'lowerOuter'],
    ['tie', 'tieInner', 'tieOuter'],
  ] as const
  switch (points.layout) {
    case 'double wishbone':
      return [
        ['upperFront', 'upperFrontInner', 'upperOuter'],
        ['upperRear', 'upperRearInner', 'upperOuter'],
        ...lower,
      ]
    case 'strut':
      return lower
    case 'five-link':
      return points.links.map((_, i) => [`link${i}`, `inner${i}`, `outer${i}`] as const)
    case 'semi-trailing arm':
      return []
  }
}

const bodyPoint = /Inner$|^inner|^topMount$/

/** One point shifted, the parts' lengths kept. */
function shift(points: AnyCornerPoints, name: string, by: Point): Direction {
  if (points.layout === 'semi-trailing arm' && name !== 'wheelCentre') return { body: { [name]: by } }
  return bodyPoint.test(name) ? { body: { [name]: by } } : { knuckle: { [name]: by } }
}

/** One point shifted in the drawing: the links and the strut's line go along. */
function modelShift(
  points: AnyCornerPoints,
  name: string,
  by: Point,
  links: readonly (readonly [string, string, string])[],
): Direction {
  const bare = shift(points, name, by)
  // the hub's height counts from the drawing: drawn higher, it stands higher
  if (name === 'wheelCentre') return { ...bare, travel: by[2] }
  if (points.layout === 'semi-trailing arm')
    return name === 'innerFront'
      ? { ...bare, knuckle: { eyeFront: by } }
      : name === 'innerRear'
        ? { ...bare, knuckle: { eyeRear: by } }
        : bare
  const at = pointsOf(points)
  const length: Record<string, number> = {}
  for (const [link, inner, outer] of links) {
    if (inner !== name && outer !== name) continue
    const [a, b] = [at[inner]!, at[outer]!]
    const far = Math.hypot(b[0] - a[0], b[1] - a[1], b[2] - a[2])
    const along = ((b[0] - a[0]) * by[0] + (b[1] - a[1]) * by[1] + (b[2] - a[2]) * by[2]) / far
    length[link] = outer === name ? along : -along
  }
  const top = points.layout === 'strut' && name === 'topMount' ? { knuckle: { strutTop: by } } : {}
  return { ...bare, ...top, length }
}
