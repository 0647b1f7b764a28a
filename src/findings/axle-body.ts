import type { AxleSettings, AxleWheel, Point, SolidAxlePoints, TwistBeam } from '../linkage/index.ts'
import { metre, rad } from '../quantity/index.ts'
import type { WholeWay } from './axle-model.ts'

/** A whole axle as it is: its points, and what its settings are. */
export interface AxleBody {
  readonly points: SolidAxlePoints | TwistBeam
  readonly settings: AxleSettings
}

/**
 * A whole axle with some ways gone, each by so much.
 *
 * @source definition; the drag link keeps its length when the axle is moved in the body
 */
export function bodyWith(
  drawn: SolidAxlePoints | TwistBeam,
  ...gone: readonly (readonly [WholeWay, number])[]
): AxleBody {
  const sum = (pick: (way: WholeWay) => number | undefined): number =>
    gone.reduce((total, [way, k]) => total + k * (pick(way) ?? 0), 0)
  const yaw = sum((way) => way.yaw)
  const shift: Point = [0, 1, 2].map((i) => sum((way) => way.shift?.[i])) as unknown as Point
  const points = yaw === 0 && shift.every((x) => x === 0) ? drawn : moved(drawn, yaw, shift)
  const shim = { left: shimOf('left'), right: shimOf('right') }
  const tilt = { left: tiltOf('left'), right: tiltOf('right') }
  function shimOf(side: 'left' | 'right') {
    return {
      camber: rad(sum((way) => way.shim?.[side]?.camber)),
      toe: rad(sum((way) => way.shim?.[side]?.toe)),
    }
  }
  function tiltOf(side: 'left' | 'right') {
    return {
      camber: rad(sum((way) => way.tilt?.[side]?.camber)),
      caster: rad(sum((way) => way.tilt?.[side]?.caster)),
    }
  }
  if (!('location' in points)) return { points, settings: { shim } }
  const links = [0, 1, 2, 3].map((i) => metre(sum((way) => way.links?.[i as 0 | 1 | 2 | 3])))
  const dragged = dragLength(drawn as SolidAxlePoints) - dragLength(points)
  const steered = points.left.kingpin !== null
  return {
    points,
    settings: {
      shim,
      ...(steered ? { tilt } : {}),
      ...(points.location.kind === 'links'
        ? { links: links as unknown as NonNullable<AxleSettings['links']> }
        : {}),
      ...(points.steering
        ? {
            tieRod: metre(sum((way) => way.tieRod)),
            dragLink: metre(sum((way) => way.dragLink) + dragged),
          }
        : {}),
    },
  }
}

function dragLength({ steering }: SolidAxlePoints): number {
  if (!steering) return 0
  const { dragInner: a, dragOuter: b } = steering
  return Math.hypot(b[0] - a[0], b[1] - a[1], b[2] - a[2])
}

/** Axle turned (seen from above, to the left) about the middle between its hubs, and shifted. */
function moved(drawn: SolidAxlePoints | TwistBeam, yaw: number, by: Point): SolidAxlePoints | TwistBeam {
  const middle = (drawn.left.wheelCentre[0] + drawn.right.wheelCentre[0]) / 2
  const [c, s] = [Math.cos(yaw), Math.sin(yaw)]
  const at = ([x, y, z]: Point): Point => [
    middle + c * (x - middle) - s * y + by[0],
    s * (x - middle) + c * y + by[1],
    z + by[2],
  ]
  if (!('location' in drawn)) {
    const side = (one: TwistBeam['left'], out: 1 | -1) => ({
      ...one,
      pivot: at(one.pivot),
      wheelCentre: at(one.wheelCentre),
      toe: rad(one.toe - out * yaw),
    })
    return {
      ...drawn,
      left: side(drawn.left, 1),
      right: side(drawn.right, -1),
      shearCentre: at(drawn.shearCentre),
    }
  }
  const side = (one: AxleWheel, out: 1 | -1): AxleWheel => ({
    ...one,
    wheelCentre: at(one.wheelCentre),
    toe: rad(one.toe - out * yaw),
    kingpin: one.kingpin && { lower: at(one.kingpin.lower), upper: at(one.kingpin.upper) },
  })
  const { steering } = drawn
  return {
    ...drawn,
    left: side(drawn.left, 1),
    right: side(drawn.right, -1),
    steering: steering && {
      ...steering,
      dragOuter: at(steering.dragOuter),
      tieLeft: at(steering.tieLeft),
      tieRight: at(steering.tieRight),
    },
  }
}
