import {
  type AxleLink,
  type AxleWheel,
  mirrorPoint,
  type Point,
  type SolidAxlePoints,
  type TwistBeam,
  type WheelAtDesign,
} from '../linkage/index.ts'
import { Refusal } from '../quantity/index.ts'
import type { Corner } from './corner-schema.ts'
import { isWholeAxle } from './layouts.ts'
import type { CornerRefusal } from './parse-clock.ts'
import { pointOf } from './point-of.ts'

/**
 * The points of an axle as the linkage room takes them, for layouts that are computed as a whole axle: the file's
 * left half with its mirror image, and what stands only once (roll axis, middle link, track bar, drop arm, drag
 * link, shear centre) as it is. The drag link moves the knuckle on whose side its outer end lies.
 *
 * @throws {Refusal} `not-a-whole-axle` for a layout that is computed corner by corner (`cornerPoints` has those);
 *   `no-such-point` when a corner that was made by hand lacks a point of its layout
 * @source own derivation: docs/methods/formats.md
 */
export function wholeAxlePoints(corner: Corner): SolidAxlePoints | TwistBeam {
  if (!isWholeAxle(corner.layout))
    throw new Refusal<CornerRefusal>({
      code: 'not-a-whole-axle',
      at: 'layout',
      given: corner.layout,
      sentence: `“${corner.name}” has the layout “${corner.layout}”, which is computed corner by corner.`,
      remedy: 'Ask for one corner of it.',
    })
  return corner.layout === 'twist beam' ? twistBeam(corner) : solidAxle(corner)
}

const both = (point: Point): readonly [left: Point, right: Point] => [point, mirrorPoint(point)]

function wheels(corner: Corner): readonly [left: WheelAtDesign, right: WheelAtDesign] {
  const [left, right] = both(pointOf(corner, 'wheel-centre'))
  const same = {
    camber: corner.wheel.camber,
    toe: corner.wheel.toe,
    tyreRadius: corner.wheel.loadedRadius,
  }
  return [
    { ...same, wheelCentre: left },
    { ...same, wheelCentre: right },
  ]
}

function twistBeam(corner: Corner): TwistBeam {
  const [left, right] = wheels(corner)
  const [leftPivot, rightPivot] = both(pointOf(corner, 'beam-pivot'))
  return {
    left: { ...left, pivot: leftPivot },
    right: { ...right, pivot: rightPivot },
    shearCentre: pointOf(corner, 'shear-centre'),
    shape: corner.beamShape ?? 1,
  }
}

function solidAxle(corner: Corner): SolidAxlePoints {
  const steered = corner.axle === 'front' || corner.points['kingpin-lower'] !== undefined
  const [left, right] = wheels(corner)
  const [leftPin, rightPin] = steered ? pins(corner) : [null, null]
  return {
    location: location(corner),
    left: { ...left, kingpin: leftPin },
    right: { ...right, kingpin: rightPin },
    steering: steered ? steering(corner) : null,
  }
}

type Pin = AxleWheel['kingpin']

function pins(corner: Corner): readonly [left: Pin, right: Pin] {
  const [leftLower, rightLower] = both(pointOf(corner, 'kingpin-lower'))
  const [leftUpper, rightUpper] = both(pointOf(corner, 'kingpin-upper'))
  return [
    { lower: leftLower, upper: leftUpper },
    { lower: rightLower, upper: rightUpper },
  ]
}

function location(corner: Corner): SolidAxlePoints['location'] {
  if (corner.layout === 'solid axle, leaf springs')
    return {
      kind: 'leaf',
      rollAxis: [pointOf(corner, 'roll-axis-rear'), pointOf(corner, 'roll-axis-front')],
    }
  const once = (rod: string): AxleLink => ({
    inner: pointOf(corner, `${rod}-inner`),
    outer: pointOf(corner, `${rod}-outer`),
  })
  const pairOf = (rod: string): readonly [AxleLink, AxleLink] => {
    const { inner, outer } = once(rod)
    return [
      { inner, outer },
      { inner: mirrorPoint(inner), outer: mirrorPoint(outer) },
    ]
  }
  const single = corner.points['middle-link-inner'] !== undefined
  const upper = single ? ([once('middle-link'), once('track-bar')] as const) : pairOf('upper-link')
  return { kind: 'links', links: [...pairOf('lower-link'), ...upper] }
}

function steering(corner: Corner): SolidAxlePoints['steering'] {
  const dragOuter = pointOf(corner, 'drag-outer')
  const [tieLeft, tieRight] = both(pointOf(corner, 'tie-outer'))
  return {
    dropAxis: [pointOf(corner, 'drop-axis-from'), pointOf(corner, 'drop-axis-to')],
    dragInner: pointOf(corner, 'drag-inner'),
    dragOuter,
    drags: dragOuter[1] < 0 ? 'right' : 'left',
    tieLeft,
    tieRight,
  }
}
