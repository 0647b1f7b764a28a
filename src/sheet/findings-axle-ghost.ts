import type { Corner } from '../corner/index.ts'
import type { RankedSuspect } from '../findings/index.ts'
import type { Point, Side } from '../linkage/index.ts'
import type { SheetFigure } from './sheet.ts'

/** Of a spring that is shorter, what its own wheel comes up by. @source docs/methods/findings.md, Heights */
export const ownShare = 0.75

type Move = (point: Point) => Point

/**
 * One half of a whole axle with what a suspect at its best size does to it: the wheel leans on its end of the axle, or
 * the whole axle is turned, shifted or higher against the body. Vehicle axes.
 *
 * @returns null for what moves nothing that is drawn here
 * @source own derivation: docs/methods/findings.md, what each suspect does
 */
export function axleGhost(
  { suspect, size }: Pick<RankedSuspect, 'suspect' | 'size'>,
  corner: Corner,
  side: Side,
  figure: SheetFigure,
): SheetFigure | null {
  const by = size.value
  const { wheel } = figure
  const [hubX] = wheel.centre
  switch (suspect.kind) {
    case 'bent knuckle':
      return leaning(figure, side, by)
    case 'worn kingpin':
    case 'loose wheel bearing':
      return leaning(figure, side, -by)
    case 'bent axle or beam':
      return leaning(figure, side, by)
    case 'axle turned': {
      // a longer lower link pushes its end of the axle away from the body's end
      const [inner, outer] = ['lower-link-inner', 'lower-link-outer'].map(
        (name) => corner.points[name]?.at[0],
      )
      const ahead = inner === undefined || outer === undefined || inner > outer
      return everywhere(figure, about([hubX, 0, 0], ahead ? by : -by))
    }
    case 'axle shifted': {
      const [inner, outer] = ['track-bar-inner', 'track-bar-outer'].map((name) => corner.points[name]?.at[1])
      const way = inner === undefined || outer === undefined || outer > inner ? 1 : -1
      return everywhere(figure, along(corner.layout === 'twist beam' ? [by, 0, 0] : [0, way * by, 0]))
    }
    case 'sagged spring':
      return everywhere(figure, along([0, 0, ownShare * by]))
    case 'bush clamped hanging':
      return everywhere(figure, along([0, 0, -ownShare * by]))
    default:
      return null
  }
}

const along =
  ([x, y, z]: Point): Move =>
  (p) => [p[0] + x, p[1] + y, p[2] + z]

/** Turned to the left, seen from above. */
function about(middle: Point, angle: number): Move {
  const [c, s] = [Math.cos(angle), Math.sin(angle)]
  return ([x, y, z]) => {
    const [dx, dy] = [x - middle[0], y - middle[1]]
    return [middle[0] + c * dx - s * dy, middle[1] + s * dx + c * dy, z]
  }
}

const carried = /^(axle beam|kingpin|knuckle|tie rod|trailing arm|beam)$/
const heldByBody = /(link|track bar)$/

/** All that the axle carries goes along; links keep their end on the body, what only stands between stays undrawn. */
function everywhere(figure: SheetFigure, move: Move): SheetFigure {
  const { wheel } = figure
  const [a, b] = [move(wheel.centre), move(sum(wheel.centre, wheel.spinAxis))]
  return {
    ...figure,
    strokes: figure.strokes.map((stroke) =>
      carried.test(stroke.part)
        ? { ...stroke, from: move(stroke.from), to: move(stroke.to) }
        : heldByBody.test(stroke.part)
          ? { ...stroke, to: move(stroke.to) }
          : stroke,
    ),
    wheel: { ...wheel, centre: a, spinAxis: [b[0] - a[0], b[1] - a[1], b[2] - a[2]] },
  }
}

/** The wheel's top further out by so much of camber; the axle stays. */
function leaning(figure: SheetFigure, side: Side, camber: number): SheetFigure {
  const { wheel } = figure
  const angle = side === 'left' ? -camber : camber
  const [c, s] = [Math.cos(angle), Math.sin(angle)]
  const [x, y, z] = wheel.spinAxis
  return { ...figure, wheel: { ...wheel, spinAxis: [x, c * y - s * z, s * y + c * z] } }
}

const sum = (a: Point, b: Point): Point => [a[0] + b[0], a[1] + b[1], a[2] + b[2]]
