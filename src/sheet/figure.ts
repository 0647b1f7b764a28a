import type { AnyCornerPoints, Point, Pose, Side } from '../linkage/index.ts'
import type { SheetFigure } from './sheet.ts'

type Stroke = SheetFigure['strokes'][number]
type Joint = SheetFigure['joints'][number]

/** A joint to letter on the drawing: where it sits is a named point of the corner. */
export interface LetteredJoint {
  readonly letter: string
  readonly name: string
  /** Name of the point in `CornerPoints` (camelCase; outer0 … for a five-link). */
  readonly point: string
  readonly adjuster: string | null
}

/** What a figure is drawn from. */
export interface FigureJob {
  readonly points: AnyCornerPoints
  readonly pose: Pose
  readonly side: Side
  readonly joints: readonly LetteredJoint[]
  readonly tyreWidth: number
  /** Places of body points that adjusters have moved, by name. */
  readonly bodyAt?: Readonly<Record<string, Point>>
}

const bodyPoints = (points: AnyCornerPoints): Record<string, Point> => {
  if (points.layout === 'semi-trailing arm')
    return { innerFront: points.innerFront, innerRear: points.innerRear }
  if (points.layout === 'five-link')
    return Object.fromEntries(points.links.map((link, i) => [`inner${i}`, link.inner]))
  const inner = {
    lowerFrontInner: points.lowerFrontInner,
    lowerRearInner: points.lowerRearInner,
    tieInner: points.tieInner,
  }
  return points.layout === 'strut'
    ? { ...inner, topMount: points.topMount }
    : { ...inner, upperFrontInner: points.upperFrontInner, upperRearInner: points.upperRearInner }
}

/** Part, kind, from, to: which points are joined by a line. `wheel` is the wheel centre. */
const strokesOf = (
  layout: AnyCornerPoints['layout'],
): readonly (readonly [string, Stroke['kind'], string, string])[] => {
  if (layout === 'semi-trailing arm')
    return [
      ['trailing arm', 'arm', 'innerFront', 'wheel'],
      ['trailing arm', 'arm', 'innerRear', 'wheel'],
    ]
  const lower = [
    ['lower arm', 'arm', 'lowerFrontInner', 'lowerOuter'],
    ['lower arm', 'arm', 'lowerRearInner', 'lowerOuter'],
    ['tie rod', 'rod', 'tieInner', 'tieOuter'],
    ['knuckle', 'knuckle', 'lowerOuter', 'wheel'],
    ['knuckle', 'knuckle', 'tieOuter', 'wheel'],
  ] as const
  if (layout === 'double wishbone')
    return [
      ['upper arm', 'arm', 'upperFrontInner', 'upperOuter'],
      ['upper arm', 'arm', 'upperRearInner', 'upperOuter'],
      ...lower,
      ['knuckle', 'knuckle', 'upperOuter', 'lowerOuter'],
    ]
  if (layout === 'strut')
    return [
      ...lower,
      ['strut', 'strut', 'topMount', 'strutLower'],
      ['knuckle', 'knuckle', 'strutLower', 'lowerOuter'],
    ]
  return [0, 1, 2, 3, 4].flatMap((i) => [
    [`link ${i + 1}`, 'arm', `inner${i}`, `outer${i}`] as const,
    ['knuckle', 'knuckle', `outer${i}`, 'wheel'] as const,
  ])
}

/**
 * The strokes of a corner in a pose, in vehicle axes on its own side (a right corner is mirrored back).
 *
 * @source own derivation: docs/methods/signs.md
 */
export function figureOf({ points, pose, side, joints, tyreWidth, bodyAt = {} }: FigureJob): SheetFigure {
  const flip = side === 'left' ? 1 : -1
  const place = ([x, y, z]: Point): Point => [x, flip * y, z]
  const body = bodyPoints(points)
  if (body['tieInner']) {
    const [x, y, z] = body['tieInner']
    body['tieInner'] = [x, y + pose.rack, z]
  }
  const at: Record<string, Point> = { ...body, ...bodyAt, ...pose.points, wheel: pose.wheelCentre }
  const strokes = strokesOf(points.layout).flatMap(([part, kind, from, to]): Stroke[] => {
    const a = at[from]
    const b = at[to]
    return a && b ? [{ part, kind, from: place(a), to: place(b) }] : []
  })
  return {
    strokes,
    joints: joints.flatMap(({ point, ...joint }): Joint[] => {
      const p = at[point]
      return p ? [{ ...joint, at: place(p) }] : []
    }),
    wheel: {
      centre: place(pose.wheelCentre),
      spinAxis: place(pose.spinAxis),
      radius: points.tyreRadius,
      width: tyreWidth,
    },
    ground: pose.contact[2],
  }
}
