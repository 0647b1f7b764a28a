import { checkAxle } from './check-axle.ts'
import type { AxleKnuckle } from './knuckle-on-axle.ts'
import { axleKnuckle, middleOf, rodOnPin } from './knuckle-on-axle.ts'
import type { Point } from './points.ts'
import type { AxleSettings, SolidAxlePoints } from './solid-axle-points.ts'
import { cross, minus, norm, times, unit } from './vector.ts'

/** A rod between two points with its length, as set. */
interface Rod {
  readonly inner: Point
  readonly outer: Point
  readonly length: number
}

/** A solid axle made ready for computing. Make it with `solidAxle`; the numbers inside are for this room only. @source definition */
export interface SolidAxle {
  readonly points: SolidAxlePoints
  readonly settings: AxleSettings
  /** Middle between the hubs at design. */
  readonly middle: Point
  /** Unit, right hub → left hub at design, and its tilt against the horizontal, left up. */
  readonly hubLine: Point
  readonly tilt: number
  /** Half the distance of the hubs: makes turns and shifts comparable, m. */
  readonly size: number
  /** Roll axis on leaf springs, its direction such that a turn lifts the left hub; null on links. */
  readonly leaf: { readonly through: Point; readonly axis: Point } | null
  readonly links: readonly Rod[]
  /** Sign of the links' determinant at design. */
  readonly sign: number
  readonly left: AxleKnuckle
  readonly right: AxleKnuckle
  /** Present length of drag link and tie rod; and whether p cos + q sin grows with the steer angle at design. */
  readonly steering: {
    readonly drag: number
    readonly tie: number
    readonly dragRising: boolean
    readonly tieRising: boolean
  } | null
}

/**
 * Checks a solid axle and makes it ready. Rods keep their design lengths unless the settings change them.
 *
 * @param points in vehicle axes: the right wheel has negative y
 * @throws {Refusal} `not-finite`; `bad-input`; `zero-length-link`; `coincident-pivots`; `singular`: first in this order
 * @source own derivation: docs/methods/solid-axle.md
 * @example inDegrees(axlePoseAt(solidAxle(axlePoints), straight).left.caster) // 3.718994
 */
export function solidAxle(points: SolidAxlePoints, settings: AxleSettings = {}): SolidAxle {
  const sign = checkAxle(points, settings)
  const { location, steering } = points
  const across = minus(points.left.wheelCentre, points.right.wheelCentre)
  const hubLine = unit(across)
  const left = axleKnuckle(points, settings, 'left')
  const right = axleKnuckle(points, settings, 'right')
  const rod = (inner: Point, outer: Point, more: number): number => norm(minus(outer, inner)) + more
  return {
    points,
    settings,
    middle: middleOf(points),
    hubLine,
    tilt: Math.asin(hubLine[2]),
    size: norm(across) / 2,
    leaf: location.kind === 'leaf' ? leafOf(location.rollAxis, hubLine) : null,
    links:
      location.kind === 'leaf'
        ? []
        : location.links.map(({ inner, outer }, i) => ({
            inner,
            outer,
            length: rod(inner, outer, settings.links?.[i] ?? 0),
          })),
    sign,
    left,
    right,
    steering: steering && {
      drag: rod(steering.dragInner, steering.dragOuter, settings.dragLink ?? 0),
      tie: rod(steering.tieLeft, steering.tieRight, settings.tieRod ?? 0),
      ...risings(points),
    },
  }
}

function leafOf([rear, front]: readonly [Point, Point], e: Point): { through: Point; axis: Point } {
  const axis = unit(minus(front, rear))
  return { through: rear, axis: cross(axis, e)[2] < 0 ? times(-1, axis) : axis }
}

/** On which side of their dead centres the rods stand at design. */
function risings(points: SolidAxlePoints): { dragRising: boolean; tieRising: boolean } {
  const { dragInner, dragOuter, drags, tieLeft, tieRight } = points.steering!
  const driven = axleKnuckle(points, {}, drags)
  const other = axleKnuckle(points, {}, drags === 'left' ? 'right' : 'left')
  const [near, far] = drags === 'left' ? [tieLeft, tieRight] : [tieRight, tieLeft]
  return {
    dragRising: rodOnPin(driven, dragOuter, dragInner, 1).q > 0,
    tieRising: rodOnPin(other, far, near, 1).q > 0,
  }
}
